using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Sales;

/// <summary>What goes into the bag of a sale, priced and taxed, or why it cannot.</summary>
internal sealed record SaleBag(IReadOnlyList<BagLine> Lines, SellFittingOutcome? Refused = null)
{
    /// <summary>The pair, a packet of each pad, and the extras; the same thing asked for twice is one line.</summary>
    /// <remarks>
    /// Pads are sold by the packet, which does for both feet; who needs more takes it as an extra. A pad that the shop does
    /// not sell goes on the sheet and not into the bag: wool may come from home.
    /// </remarks>
    public static async Task<SaleBag> PackAsync(ShopDbContext db, Shop shop, ShoeDetails pair, SellFittingRequest request, CancellationToken cancellationToken)
    {
        var padIds = request.Pads.Select(pad => pad.Pad).Distinct(StringComparer.Ordinal).ToList();
        var padItems = await db.Items.AsNoTracking().Where(item => item.PadId != null && padIds.Contains(item.PadId)).OrderBy(item => item.Code).ToListAsync(cancellationToken);
        var wanted = new Dictionary<Guid, int> { [pair.SizeId] = 1 };
        foreach (var padId in padIds)
        {
            if (padItems.FirstOrDefault(item => item.PadId == padId) is { } padItem)
            {
                Want(padItem.Id, 1);
            }
        }

        foreach (var extra in request.Extras)
        {
            if (extra.Quantity is < 1 or > SellFittingRequest.MostPieces)
            {
                return Refuse(SellProblem.Quantity);
            }

            Want(extra.ItemId, extra.Quantity);
        }

        var ids = wanted.Keys.ToList();
        var items = await db.Items.AsNoTracking().Where(item => ids.Contains(item.Id)).ToDictionaryAsync(item => item.Id, cancellationToken);
        var rates = await db.TaxRates.AsNoTracking().ToDictionaryAsync(rate => rate.Category, rate => rate.RateBasisPoints, StringComparer.Ordinal, cancellationToken);
        var lines = new List<BagLine>();
        foreach (var (id, quantity) in wanted)
        {
            if (!items.TryGetValue(id, out var item))
            {
                return Refuse(SellProblem.ItemMissing);
            }

            if (quantity > SellFittingRequest.MostPieces)
            {
                return Refuse(SellProblem.Quantity, item.Code);
            }

            if (item.PriceMinor is not { } price)
            {
                return Refuse(SellProblem.PriceMissing, item.Code);
            }

            var rate = rates.GetValueOrDefault(item.Category);
            lines.Add(new BagLine(item, quantity, price, rate, LineAmount.Of(quantity, price, discountMinor: 0, rate, shop.PricesIncludeTax)));
        }

        return new SaleBag(lines);

        void Want(Guid itemId, int quantity) => wanted[itemId] = wanted.GetValueOrDefault(itemId) + quantity;
    }

    private static SaleBag Refuse(SellProblem problem, string about = "") => new([], new SellFittingOutcome.Invalid(problem, about));
}

/// <summary>One thing in the bag.</summary>
internal sealed record BagLine(Item Item, int Quantity, long UnitPriceMinor, int RateBasisPoints, LineAmount Amount)
{
    public SaleLine ToSaleLine(Guid shopId, Guid saleId) => SaleLine.Of(
        Guid.CreateVersion7(), shopId, saleId, Item.Id, Item.Name, Quantity, UnitPriceMinor, discountMinor: 0, RateBasisPoints, Amount.TaxMinor, Amount.TotalMinor);
}
