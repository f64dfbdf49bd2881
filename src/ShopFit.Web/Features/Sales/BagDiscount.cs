using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Sales;

/// <summary>What a discount that was asked for comes to on a bag, or why it is not given.</summary>
internal sealed record BagDiscount(long Minor, Voucher? Voucher = null, BagRefusal? Refused = null)
{
    /// <summary>No discount at all.</summary>
    public static BagDiscount None { get; } = new(0);

    /// <param name="db">The context of the action or the query.</param>
    /// <param name="actor">Who gives it: a fitter up to the shop's limit, a manager any.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="now">The moment of the sale.</param>
    /// <param name="goods">What is in the bag: its category and what it comes to, counted as the prices are.</param>
    /// <param name="asked">What was asked for; null for none.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public static async Task<BagDiscount> OfAsync(
        ShopDbContext db, Actor actor, Shop shop, DateTimeOffset now, IReadOnlyList<(string Category, long FullMinor)> goods, AskedDiscount? asked, CancellationToken cancellationToken)
    {
        var full = goods.Sum(good => good.FullMinor);
        switch (asked)
        {
            case null:
                return None;
            case { Kind: DiscountKind.Voucher }:
                return await OfVoucherAsync(db, shop, now, goods, full, asked.Code, cancellationToken);
            case { Kind: DiscountKind.Percent, Value: < 1 or > LineAmount.WholeInBasisPoints }:
            case { Kind: DiscountKind.Amount, Value: < 1 }:
                return Refuse(SellProblem.DiscountOutOfRange);
            case { Kind: DiscountKind.Amount } when asked.Value > full:
                return Refuse(SellProblem.DiscountTooMuch, bound: new Money(full, shop.Currency));
        }

        var discount = asked.Kind is DiscountKind.Percent ? DiscountShares.PercentOf(full, asked.Value) : asked.Value;
        var most = DiscountShares.PercentOf(full, shop.FitterDiscountLimitBasisPoints);
        return discount > most && !actor.IsManager
            ? Refuse(SellProblem.DiscountOverLimit, bound: new Money(most, shop.Currency))
            : new BagDiscount(discount);
    }

    private static async Task<BagDiscount> OfVoucherAsync(
        ShopDbContext db, Shop shop, DateTimeOffset now, IReadOnlyList<(string Category, long FullMinor)> goods, long full, string typed, CancellationToken cancellationToken)
    {
        var code = Voucher.CodeOf(typed);
        var today = ShopTime.Of(shop).Day(now);
        var voucher = code.Length is 0 or > AskedDiscount.LongestCode ? null : await db.Vouchers.AsNoTracking().SingleOrDefaultAsync(row => row.Code == code, cancellationToken);
        var given = voucher is null ? 0 : goods.Where(good => voucher.IsGivenOn(good.Category)).Sum(good => good.FullMinor);
        return voucher switch
        {
            null => Refuse(SellProblem.VoucherUnknown, typed.Trim()),
            { EndedAt: not null } => Refuse(SellProblem.VoucherEnded, code),
            { ValidFrom: { } from } when today < from => Refuse(SellProblem.VoucherNotYet, code, from),
            { ValidTo: { } to } when today > to => Refuse(SellProblem.VoucherOver, code, to),
            { MostUses: { } most } when voucher.Used >= most => Refuse(SellProblem.VoucherUsedUp, code),
            _ when full < voucher.LeastTotalMinor => Refuse(SellProblem.VoucherLeastTotal, code, bound: new Money(voucher.LeastTotalMinor, shop.Currency)),
            _ when given == 0 => Refuse(SellProblem.VoucherOtherGoods, code),
            { PercentBasisPoints: { } percent } => new BagDiscount(DiscountShares.PercentOf(given, percent), voucher),
            // What the goods do not use of an amount is lost.
            _ => new BagDiscount(Math.Min(given, voucher.AmountMinor!.Value), voucher),
        };
    }

    private static BagDiscount Refuse(SellProblem problem, string about = "", DateOnly? day = null, Money? bound = null) =>
        new(0, Refused: new BagRefusal(problem, about, day, bound));
}
