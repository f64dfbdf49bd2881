using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What can go into the bag at the end of a fitting, and what it comes to. Reads only.</summary>
public sealed class DecisionQueries(ShopContexts contexts, CatalogueQueries catalogue, FitNumbers numbers)
{
    /// <summary>All that is sold beside shoes and pads, by kind and name.</summary>
    public async Task<IReadOnlyList<ExtraRow>> ExtrasAsync(CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var currency = await db.Shops.Where(row => row.Id == db.ShopId).Select(row => row.Currency).SingleAsync(cancellationToken);
        var items = await db.Items.AsNoTracking()
            .Where(item => item.Category != ItemCategories.Shoes && item.PadId == null && item.PriceMinor != null)
            .OrderBy(item => item.Category).ThenBy(item => item.Name)
            .ToListAsync(cancellationToken);
        return [.. items.Select(item => new ExtraRow(item.Id, item.Name, new Money(item.PriceMinor!.Value, currency)))];
    }

    /// <summary>Ids of all pads that may be put under a foot, those that correct first.</summary>
    public async Task<IReadOnlyList<string>> PadsAsync(CancellationToken cancellationToken) =>
        [.. (await numbers.SeeAsync(cancellationToken)).Pads.OrderByDescending(pad => pad.Corrects).Select(pad => pad.Id)];

    /// <summary>What a bag comes to, tax and all, just as selling it would count; null where something in it cannot be sold.</summary>
    public async Task<PricedBag?> PriceAsync(SellFittingRequest request, CancellationToken cancellationToken)
    {
        var pair = (await catalogue.ShoesOnFileAsync(cancellationToken)).Find(request.SizeId);
        await using var db = await contexts.OpenAsync(cancellationToken);
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        var bag = pair is null ? null : await SaleBag.PackAsync(db, shop, pair, request, cancellationToken);
        return bag is not { Refused: null }
            ? null
            : new PricedBag(
                [.. bag.Lines.Select(line => new PricedLine(line.Item.Name, line.Quantity, new Money(line.Amount.TotalMinor, shop.Currency)))],
                new Money(bag.Lines.Sum(line => line.Amount.TotalMinor), shop.Currency));
    }
}

/// <summary>Something that may go into the bag.</summary>
public sealed record ExtraRow(Guid ItemId, string Name, Money Price);

/// <summary>A bag with its price.</summary>
public sealed record PricedBag(IReadOnlyList<PricedLine> Lines, Money Total);

/// <summary>One line of a bag.</summary>
public sealed record PricedLine(string Name, int Quantity, Money Total);
