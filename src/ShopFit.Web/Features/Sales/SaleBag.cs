using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Sales;

/// <summary>What goes into the bag of a sale, priced, discounted and taxed, or why it cannot.</summary>
internal sealed record SaleBag(IReadOnlyList<BagLine> Lines, Voucher? Voucher = null, BagRefusal? Refused = null)
{
    /// <summary>What the lines come to before the discount, counted as the prices are.</summary>
    public long FullMinor => Lines.Sum(line => line.Quantity * line.UnitPriceMinor);

    public long DiscountMinor => Lines.Sum(line => line.DiscountMinor);

    public long TaxMinor => Lines.Sum(line => line.Amount.TaxMinor);

    public long TotalMinor => Lines.Sum(line => line.Amount.TotalMinor);

    /// <summary>The pair of a fitting, a packet of each pad, and the extras.</summary>
    /// <remarks>
    /// Pads are sold by the packet, which does for both feet; who needs more takes it as an extra. A pad that the shop does
    /// not sell goes on the sheet and not into the bag: wool may come from home.
    /// </remarks>
    public static async Task<SaleBag> PackAsync(
        ShopDbContext db, Actor actor, Shop shop, DateTimeOffset now, ShoeDetails pair, SellFittingRequest request, CancellationToken cancellationToken)
    {
        var padIds = request.Pads.Select(pad => pad.Pad).Distinct(StringComparer.Ordinal).ToList();
        var padItems = await db.Items.AsNoTracking().Where(item => item.PadId != null && padIds.Contains(item.PadId)).OrderBy(item => item.Code).ToListAsync(cancellationToken);
        var pads = padIds.Select(padId => padItems.FirstOrDefault(item => item.PadId == padId)).OfType<Item>().Select(item => new SaleExtra(item.Id, 1));
        return await PackAsync(db, actor, shop, now, [new SaleExtra(pair.SizeId, 1), .. pads, .. request.Extras], request.Discount, cancellationToken);
    }

    /// <summary>Any things; the same thing asked for twice is one line.</summary>
    public static async Task<SaleBag> PackAsync(
        ShopDbContext db, Actor actor, Shop shop, DateTimeOffset now, IReadOnlyList<SaleExtra> things, AskedDiscount? asked, CancellationToken cancellationToken)
    {
        if (things.Any(thing => thing.Quantity is < 1 or > SellFittingRequest.MostPieces))
        {
            return Refuse(new BagRefusal(SellProblem.Quantity));
        }

        var ids = things.Select(thing => thing.ItemId).Distinct().ToList();
        var items = await db.Items.AsNoTracking().Where(item => ids.Contains(item.Id)).ToDictionaryAsync(item => item.Id, cancellationToken);
        var rates = await db.TaxRates.AsNoTracking().ToDictionaryAsync(rate => rate.Category, rate => rate.RateBasisPoints, StringComparer.Ordinal, cancellationToken);
        var packed = new List<(Item Item, BagGood Good)>();
        foreach (var id in ids)
        {
            if (!items.TryGetValue(id, out var item))
            {
                return Refuse(new BagRefusal(SellProblem.ItemMissing));
            }

            var quantity = things.Where(thing => thing.ItemId == id).Sum(thing => thing.Quantity);
            if (quantity > SellFittingRequest.MostPieces)
            {
                return Refuse(new BagRefusal(SellProblem.Quantity, item.Code));
            }

            if (item.PriceMinor is not { } price)
            {
                return Refuse(new BagRefusal(SellProblem.PriceMissing, item.Code));
            }

            packed.Add((item, new BagGood(quantity, price, rates.GetValueOrDefault(item.Category))));
        }

        var discount = await BagDiscount.OfAsync(db, actor, shop, now, [.. packed.Select(one => (one.Item.Category, one.Good.FullMinor))], asked, cancellationToken);
        if (discount.Refused is { } refused)
        {
            return Refuse(refused);
        }

        var amounts = BagAmounts.Of(
            [.. packed.Select(one => one.Good with { TakesDiscount = discount.Voucher?.IsGivenOn(one.Item.Category) ?? true })], discount.Minor, shop.PricesIncludeTax);
        return new SaleBag(
            [.. packed.Zip(amounts, (one, amount) => new BagLine(one.Item, one.Good.Quantity, one.Good.UnitPriceMinor, one.Good.RateBasisPoints, amount.DiscountMinor, amount.Line))],
            discount.Voucher);
    }

    private static SaleBag Refuse(BagRefusal refused) => new([], Refused: refused);
}

/// <summary>One thing in the bag.</summary>
internal sealed record BagLine(Item Item, int Quantity, long UnitPriceMinor, int RateBasisPoints, long DiscountMinor, LineAmount Amount)
{
    public SaleLine ToSaleLine(Guid shopId, Guid saleId) => SaleLine.Of(
        Guid.CreateVersion7(), shopId, saleId, Item.Id, Item.Name, Quantity, UnitPriceMinor, DiscountMinor, RateBasisPoints, Amount.TaxMinor, Amount.TotalMinor);
}
