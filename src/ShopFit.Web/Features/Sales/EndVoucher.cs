using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

/// <summary>Ends a voucher at once. Only managers do; sales that used it stand.</summary>
public sealed class EndVoucher(ShopWrites writes, TimeProvider clock)
{
    public Task<EndVoucherOutcome> RunAsync(Actor actor, Guid commandId, Guid voucherId, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<EndVoucherOutcome>(actor, commandId, nameof(EndVoucher), async (db, stop) =>
        {
            if (await db.Vouchers.SingleOrDefaultAsync(row => row.Id == voucherId, stop) is not { } voucher)
            {
                return new EndVoucherOutcome.Missing();
            }

            voucher.End(clock.GetUtcNow());
            return new EndVoucherOutcome.Ended();
        }, cancellationToken);
}

/// <summary>How ending a voucher ended.</summary>
[JsonDerivedType(typeof(Ended), "ended")]
[JsonDerivedType(typeof(Missing), "missing")]
public abstract record EndVoucherOutcome
{
    private EndVoucherOutcome()
    {
    }

    /// <summary>It is ended, now or before.</summary>
    public sealed record Ended : EndVoucherOutcome;

    /// <summary>There is none.</summary>
    public sealed record Missing : EndVoucherOutcome, IRefusal;
}
