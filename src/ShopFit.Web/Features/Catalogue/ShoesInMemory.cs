using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Scoring;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Keeps the sizes of each shop in memory until catalogue, stock or fit numbers change, here or in another program.</summary>
/// <remarks>Their forms do not depend on stock: where only stock moved, as after every sale, the rest is kept.</remarks>
public sealed class ShoesInMemory
{
    private readonly ConcurrentDictionary<Guid, ShoesOnFile> _byShop = new();

    /// <summary>The sizes as they are on file now.</summary>
    /// <param name="db">An open context of the shop; inside an action it sees what the action did so far.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<ShoesOnFile> SeeAsync(ShopDbContext db, CancellationToken cancellationToken)
    {
        var shop = await db.Shops.Where(row => row.Id == db.ShopId).Select(row => new { row.ShelfVersion, row.FitOverridesJson }).SingleAsync(cancellationToken);
        var kept = _byShop.GetValueOrDefault(db.ShopId);
        if (kept?.Version == shop.ShelfVersion && kept.FitOverridesJson == shop.FitOverridesJson)
        {
            return kept;
        }

        var places = await PlacesAsync(db, cancellationToken);
        var onlyStockMoved = kept is not null && CatalogueVersion.Of(kept.Version) == CatalogueVersion.Of(shop.ShelfVersion) && kept.FitOverridesJson == shop.FitOverridesJson;
        var read = onlyStockMoved
            ? kept!.With(shop.ShelfVersion, places)
            : await ReadAsync(db, shop.ShelfVersion, shop.FitOverridesJson, places, cancellationToken);

        // An action that is undone later would leave here what never was: only what is committed is kept.
        if (db.Database.CurrentTransaction is null)
        {
            _byShop[db.ShopId] = read;
        }

        return read;
    }

    private static async Task<ILookup<Guid, PairsAtPlace>> PlacesAsync(ShopDbContext db, CancellationToken cancellationToken)
    {
        var places = await (
            from level in db.StockLevels
            join place in db.ShelfPlaces on level.PlaceId equals place.Id
            where place.Sells && level.OnHand > level.Reserved
            orderby place.Code
            select new { level.ItemId, place.Code, Free = level.OnHand - level.Reserved }).ToListAsync(cancellationToken);
        return places.ToLookup(place => place.ItemId, place => new PairsAtPlace(place.Code, place.Free));
    }

    private static async Task<ShoesOnFile> ReadAsync(
        ShopDbContext db, long version, string? fitOverridesJson, ILookup<Guid, PairsAtPlace> placesOf, CancellationToken cancellationToken)
    {
        var numbers = FitNumbers.Over(fitOverridesJson).Numbers;
        var forms = await FormsOnFile.ReadAsync(db, numbers, cancellationToken);
        var rows = await (
            from size in db.ShoeSizes.AsNoTracking()
            join item in db.Items.AsNoTracking() on size.Id equals item.Id
            join model in db.ShoeModels.AsNoTracking() on size.ModelId equals model.Id
            join maker in db.Makers.AsNoTracking() on model.MakerId equals maker.Id
            orderby item.Code
            select new { Size = size, item.Code, item.PriceMinor, item.Gtin, Model = model, Maker = maker.Name }).ToListAsync(cancellationToken);

        return new ShoesOnFile(version, fitOverridesJson, numbers, [.. rows.Select(row => new ShoeDetails
        {
            SizeId = row.Size.Id,
            ModelId = row.Model.Id,
            MakerId = row.Model.MakerId,
            Sku = row.Code,
            Gtin = row.Gtin,
            Maker = row.Maker,
            Model = row.Model.Name,
            Kind = row.Model.Kind,
            Construction = row.Model.Construction,
            Discontinued = row.Model.Discontinued,
            SizeSystem = row.Size.SizeSystem,
            Size = row.Size.Size,
            Label = SizeLabels.Of(row.Size.SizeSystem, row.Size.Size, row.Size.Width, row.Size.Option, row.Size.ShankName),
            LabelWithoutShank = SizeLabels.Of(row.Size.SizeSystem, row.Size.Size, row.Size.Width, row.Size.Option, ""),
            ShankName = row.Size.ShankName,
            PriceMinor = row.PriceMinor,
            LeadTimeDays = row.Size.LeadTimeDays,
            Places = [.. placesOf[row.Size.Id]],
            // By names, not by keys of rows: the same catalogue gives the same answer in any database.
            OnFile = new ShoeOnFile(row.Code, row.Maker, $"{row.Maker}\n{row.Model.Name}", forms.Of(row.Model.MakerId, row.Size).Form, placesOf[row.Size.Id].Any()),
        })]);
    }
}
