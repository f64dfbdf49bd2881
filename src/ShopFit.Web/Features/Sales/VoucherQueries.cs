using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Sales;

/// <summary>Vouchers as their page shows them. Reads only.</summary>
public sealed class VoucherQueries(ShopContexts contexts, TimeProvider clock)
{
    /// <summary>All vouchers, those that can be used first, then the newest.</summary>
    public async Task<SeenVouchers> SeeAsync(CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        var today = ShopTime.Of(shop).Day(clock.GetUtcNow());
        var vouchers = await db.Vouchers.AsNoTracking().ToListAsync(cancellationToken);
        var categories = await db.Items.Select(item => item.Category).Distinct().OrderBy(category => category).ToListAsync(cancellationToken);
        return new SeenVouchers(
            shop.Currency,
            shop.FitterDiscountLimitBasisPoints,
            categories,
            [.. vouchers.Select(row => new SeenVoucher(row, StateOf(row, today), shop.Currency))
                .OrderBy(row => row.State is VoucherState.Good or VoucherState.NotYet ? 0 : 1).ThenByDescending(row => row.Voucher.MadeAt)]);
    }

    private static VoucherState StateOf(Voucher voucher, DateOnly today) => voucher switch
    {
        { EndedAt: not null } => VoucherState.Ended,
        { ValidTo: { } to } when today > to => VoucherState.Over,
        { MostUses: { } most } when voucher.Used >= most => VoucherState.UsedUp,
        { ValidFrom: { } from } when today < from => VoucherState.NotYet,
        _ => VoucherState.Good,
    };
}

/// <summary>What the page of vouchers shows.</summary>
/// <param name="Currency">ISO 4217 code of the shop.</param>
/// <param name="FitterLimitBasisPoints">Most that a fitter may take off a bag, hundredths of a per cent.</param>
/// <param name="Categories">The categories of things on file.</param>
/// <param name="Rows">The vouchers.</param>
public sealed record SeenVouchers(string Currency, int FitterLimitBasisPoints, IReadOnlyList<string> Categories, IReadOnlyList<SeenVoucher> Rows);

/// <summary>A voucher and how it stands today.</summary>
public sealed record SeenVoucher(Voucher Voucher, VoucherState State, string Currency);

/// <summary>How a voucher stands today.</summary>
public enum VoucherState
{
    /// <summary>It can be used.</summary>
    Good,

    /// <summary>It begins on a later day.</summary>
    NotYet,

    /// <summary>It has been used as often as it can be.</summary>
    UsedUp,

    /// <summary>Its last day is over.</summary>
    Over,

    /// <summary>A manager ended it.</summary>
    Ended,
}
