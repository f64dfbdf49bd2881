using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>One model with all that its page shows. Reads only.</summary>
public sealed class ModelQueries(ShopContexts contexts, ShoesInMemory shoes)
{
    private const int MostPriceChanges = 20;

    /// <summary>The model; null where there is none.</summary>
    public async Task<SeenModel?> SeeAsync(Guid modelId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var model = await (
            from row in db.ShoeModels.AsNoTracking()
            join maker in db.Makers.AsNoTracking() on row.MakerId equals maker.Id
            where row.Id == modelId
            select new { Row = row, Maker = maker.Name }).SingleOrDefaultAsync(cancellationToken);
        if (model is null)
        {
            return null;
        }

        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        var sizes = (await shoes.SeeAsync(db, cancellationToken)).OfModel(modelId);
        var ids = sizes.Select(size => size.SizeId).ToList();
        var levels = await StockOfAsync(db, ids, cancellationToken);
        return new SeenModel(
            modelId,
            model.Row.MakerId,
            model.Maker,
            model.Row.Name,
            model.Row.Kind,
            model.Row.Construction,
            model.Row.Discontinued,
            shop.Currency,
            ShopTime.Of(shop),
            [.. sizes.Select(size => new SeenModelSize(
                size.SizeId,
                size.Sku,
                size.Label,
                size.SizeSystem,
                size.PriceMinor,
                size.OnFile.Form[FormPart.Length],
                CatalogueIndex.SourceOf(size.OnFile.Form.Source),
                [.. levels[size.SizeId]]))],
            await SamplesAsync(db, modelId, sizes, cancellationToken),
            await PricesAsync(db, ids, cancellationToken));
    }

    /// <summary>Where things stand, by key of the item.</summary>
    internal static async Task<ILookup<Guid, SeenPlace>> StockOfAsync(ShopDbContext db, IReadOnlyCollection<Guid> itemIds, CancellationToken cancellationToken)
    {
        var levels = await (
            from level in db.StockLevels
            join place in db.ShelfPlaces on level.PlaceId equals place.Id
            where itemIds.Contains(level.ItemId) && level.OnHand > 0
            orderby place.Code
            select new { level.ItemId, place.Code, level.OnHand, level.Reserved }).ToListAsync(cancellationToken);
        return levels.ToLookup(level => level.ItemId, level => new SeenPlace(level.Code, level.OnHand, level.Reserved));
    }

    /// <summary>The latest prices that were set by hand, those set at once as one row.</summary>
    internal static async Task<IReadOnlyList<SeenPriceChange>> PricesAsync(ShopDbContext db, IReadOnlyCollection<Guid> itemIds, CancellationToken cancellationToken)
    {
        var changes = await db.PriceChanges.AsNoTracking().Where(change => itemIds.Contains(change.ItemId))
            .GroupBy(change => new { change.CommandId, change.ChangedAt, change.PersonId, change.ToMinor })
            .Select(group => new
            {
                group.Key,
                Sizes = group.Count(),
                From = group.Min(change => change.FromMinor),
                FromTo = group.Max(change => change.FromMinor),
                InForce = group.Count(change => change.WithdrawnAt == null),
            })
            .OrderByDescending(group => group.Key.ChangedAt)
            .Take(MostPriceChanges)
            .ToListAsync(cancellationToken);
        var names = await NamesAsync(db, changes.Select(change => change.Key.PersonId), cancellationToken);
        return
        [
            .. changes.Select(change => new SeenPriceChange(
                change.Key.CommandId, change.Key.ChangedAt, names.GetValueOrDefault(change.Key.PersonId, ""), change.Sizes, change.From, change.FromTo, change.Key.ToMinor, change.InForce == 0)),
        ];
    }

    internal static async Task<Dictionary<Guid, string>> NamesAsync(ShopDbContext db, IEnumerable<Guid> personIds, CancellationToken cancellationToken)
    {
        var people = personIds.Distinct().ToList();
        return await db.Users.Where(person => person.ShopId == db.ShopId && people.Contains(person.Id))
            .ToDictionaryAsync(person => person.Id, person => person.DisplayName, cancellationToken);
    }

    /// <summary>All samples of a model, the latest first, those that were taken back too.</summary>
    internal static async Task<IReadOnlyList<SeenSample>> SamplesAsync(ShopDbContext db, Guid modelId, IReadOnlyList<ShoeDetails> sizes, CancellationToken cancellationToken)
    {
        var samples = await db.MeasuredSamples.AsNoTracking().Where(sample => sample.ModelId == modelId).ToListAsync(cancellationToken);
        var names = await NamesAsync(db, samples.Select(sample => sample.PersonId), cancellationToken);
        var labels = sizes.ToDictionary(size => size.SizeId, size => size.Label);
        return
        [
            .. samples.OrderByDescending(sample => sample.EnteredAt).ThenByDescending(sample => sample.Id).Select(sample => new SeenSample(
                sample.Id,
                sample.SizeId,
                labels.GetValueOrDefault(sample.SizeId, ""),
                sample.MeasuredOn,
                sample.MeasuredBy,
                sample.EnteredAt,
                names.GetValueOrDefault(sample.PersonId, ""),
                sample.Parts,
                sample.WithdrawnAt)),
        ];
    }
}

/// <summary>A model as its page shows it.</summary>
/// <param name="Id">Its key.</param>
/// <param name="MakerId">Key of its maker.</param>
/// <param name="Maker">Its maker.</param>
/// <param name="Name">Its name.</param>
/// <param name="Kind">Its kind of footwear.</param>
/// <param name="Construction">"paste", "moulded" or "soft"; null where nobody has said.</param>
/// <param name="Discontinued">Whether it is made no longer.</param>
/// <param name="Currency">The currency of its prices.</param>
/// <param name="Time">The shop's own time.</param>
/// <param name="Sizes">Its sizes, the smallest first.</param>
/// <param name="Samples">Samples that were measured, the latest first.</param>
/// <param name="Prices">Prices that were set by hand, the latest first.</param>
public sealed record SeenModel(
    Guid Id,
    Guid MakerId,
    string Maker,
    string Name,
    string Kind,
    string? Construction,
    bool Discontinued,
    string Currency,
    ShopTime Time,
    IReadOnlyList<SeenModelSize> Sizes,
    IReadOnlyList<SeenSample> Samples,
    IReadOnlyList<SeenPriceChange> Prices);

/// <summary>One size of a model.</summary>
/// <param name="SizeId">Its key.</param>
/// <param name="Sku">Its code.</param>
/// <param name="Label">Its whole label.</param>
/// <param name="SizeSystem">Id of the size system of its label.</param>
/// <param name="PriceMinor">Its price in minor units; null where it has none.</param>
/// <param name="LengthMm">Its inner length.</param>
/// <param name="Source">"measured", "maker" or "label".</param>
/// <param name="Places">Where it stands.</param>
public sealed record SeenModelSize(Guid SizeId, string Sku, string Label, string SizeSystem, long? PriceMinor, double LengthMm, string Source, IReadOnlyList<SeenPlace> Places)
{
    /// <summary>Pairs on hand anywhere.</summary>
    public int OnHand => Places.Sum(place => place.OnHand);
}

/// <summary>What stands at a place.</summary>
/// <param name="Code">The place.</param>
/// <param name="OnHand">Pairs there.</param>
/// <param name="Reserved">Those of them that are put aside.</param>
public sealed record SeenPlace(string Code, int OnHand, int Reserved);

/// <summary>A sample that was measured.</summary>
/// <param name="Id">Its key.</param>
/// <param name="SizeId">The size that was measured.</param>
/// <param name="SizeLabel">That size's label.</param>
/// <param name="MeasuredOn">When.</param>
/// <param name="MeasuredBy">By whom.</param>
/// <param name="EnteredAt">When it was entered.</param>
/// <param name="EnteredBy">By whom it was entered.</param>
/// <param name="Parts">What was measured, in the order of <see cref="FormPart"/>.</param>
/// <param name="WithdrawnAt">When it was taken back; null while it counts.</param>
public sealed record SeenSample(
    Guid Id,
    Guid SizeId,
    string SizeLabel,
    DateOnly MeasuredOn,
    string MeasuredBy,
    DateTimeOffset EnteredAt,
    string EnteredBy,
    IReadOnlyList<double?> Parts,
    DateTimeOffset? WithdrawnAt);

/// <summary>A price that was set by hand, for one size or several at once.</summary>
/// <param name="CommandId">Key of the command that set it.</param>
/// <param name="ChangedAt">When.</param>
/// <param name="Person">By whom.</param>
/// <param name="Sizes">For how many sizes.</param>
/// <param name="FromMinor">The least that one of them cost before; null where none had a price.</param>
/// <param name="FromToMinor">The most that one of them cost before.</param>
/// <param name="ToMinor">What they cost from then on.</param>
/// <param name="Withdrawn">Whether it was taken back.</param>
public sealed record SeenPriceChange(Guid CommandId, DateTimeOffset ChangedAt, string Person, int Sizes, long? FromMinor, long? FromToMinor, long ToMinor, bool Withdrawn);
