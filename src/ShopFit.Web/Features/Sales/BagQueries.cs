using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.Features.Sales;

/// <summary>What can go into a bag, and what a bag comes to. Reads only.</summary>
public sealed class BagQueries(ShopContexts contexts, CatalogueQueries catalogue)
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

    /// <summary>What the bag of a fitting comes to, tax and all, just as selling it would count; null where something in it cannot be sold.</summary>
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
