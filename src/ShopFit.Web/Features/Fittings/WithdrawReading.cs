using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Takes readings back. The rows stay, marked with the time; they count no longer.</summary>
public sealed class WithdrawReading(ShopWrites writes, TimeProvider clock)
{
    public Task<WithdrawReadingOutcome> RunAsync(Actor actor, Guid commandId, Guid fittingId, IReadOnlyList<Guid> readingIds, CancellationToken cancellationToken) =>
        writes.RunAsync<WithdrawReadingOutcome>(actor, commandId, nameof(WithdrawReading), async (db, ct) =>
        {
            if (!await db.Fittings.AnyAsync(row => row.Id == fittingId && row.ClosedAt == null, ct))
            {
                return new WithdrawReadingOutcome.NotOpen();
            }

            var now = clock.GetUtcNow();
            var rows = await db.FittingReadings.Where(row => row.FittingId == fittingId && readingIds.Contains(row.Id)).ToListAsync(ct);
            rows.ForEach(row => row.Withdraw(now));
            return new WithdrawReadingOutcome.Withdrawn();
        }, cancellationToken);
}

/// <summary>How taking readings back ended.</summary>
[JsonDerivedType(typeof(Withdrawn), "withdrawn")]
[JsonDerivedType(typeof(NotOpen), "not-open")]
public abstract record WithdrawReadingOutcome
{
    private WithdrawReadingOutcome()
    {
    }

    /// <summary>They count no longer.</summary>
    public sealed record Withdrawn : WithdrawReadingOutcome;

    /// <summary>The fitting is closed, or there is none.</summary>
    public sealed record NotOpen : WithdrawReadingOutcome, IRefusal;
}
