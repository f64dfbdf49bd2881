using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Takes a walk back, or lets it count again. The row stays; what was tried on of its pairs stays too.</summary>
public sealed class WithdrawWalk(ShopWrites writes, TimeProvider clock)
{
    public Task<WithdrawWalkOutcome> RunAsync(Actor actor, Guid commandId, Guid walkId, bool countsAgain, CancellationToken cancellationToken) =>
        writes.RunAsync<WithdrawWalkOutcome>(actor, commandId, nameof(WithdrawWalk), async (db, ct) =>
        {
            if (await db.FittingWalks.SingleOrDefaultAsync(row => row.Id == walkId, ct) is not { } walk
                || !await db.Fittings.AnyAsync(row => row.Id == walk.FittingId && row.ClosedAt == null, ct))
            {
                return new WithdrawWalkOutcome.NotOpen();
            }

            if (countsAgain)
            {
                walk.Restore();
            }
            else
            {
                walk.Withdraw(clock.GetUtcNow());
            }

            return new WithdrawWalkOutcome.Done();
        }, cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Done), "done")]
[JsonDerivedType(typeof(NotOpen), "not-open")]
public abstract record WithdrawWalkOutcome
{
    private WithdrawWalkOutcome()
    {
    }

    /// <summary>It counts no longer, or again.</summary>
    public sealed record Done : WithdrawWalkOutcome;

    /// <summary>Its fitting is closed, or there is no such walk.</summary>
    public sealed record NotOpen : WithdrawWalkOutcome, IRefusal;
}
