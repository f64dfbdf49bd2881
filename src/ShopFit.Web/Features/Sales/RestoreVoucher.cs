using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

/// <summary>Undoes the ending of a voucher that was a slip. Only managers do; later a new one is made.</summary>
public sealed class RestoreVoucher(ShopWrites writes, TimeProvider clock)
{
    // The way back stands open for ten seconds; the rest is for a slow line, and for a hand that stays at the key.
    private static readonly TimeSpan LongestSlip = TimeSpan.FromMinutes(5);

    public Task<RestoreVoucherOutcome> RunAsync(Actor actor, Guid commandId, Guid voucherId, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<RestoreVoucherOutcome>(actor, commandId, nameof(RestoreVoucher), async (db, stop) =>
        {
            if (await db.Vouchers.SingleOrDefaultAsync(row => row.Id == voucherId, stop) is not { EndedAt: { } endedAt } voucher || clock.GetUtcNow() - endedAt > LongestSlip)
            {
                return new RestoreVoucherOutcome.TooLate();
            }

            voucher.Restore();
            return new RestoreVoucherOutcome.Restored();
        }, cancellationToken);
}

/// <summary>How undoing it ended.</summary>
[JsonDerivedType(typeof(Restored), "restored")]
[JsonDerivedType(typeof(TooLate), "too-late")]
public abstract record RestoreVoucherOutcome
{
    private RestoreVoucherOutcome()
    {
    }

    /// <summary>It can be used again.</summary>
    public sealed record Restored : RestoreVoucherOutcome;

    /// <summary>It was ended too long ago, or not at all.</summary>
    public sealed record TooLate : RestoreVoucherOutcome, IRefusal;
}
