using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Beliefs;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Undoes the withdrawing of readings: they count again, at the time at which they were taken.</summary>
/// <remarks>A word that was said meanwhile in the place of one that comes back is withdrawn, since only one word stands for a trait of a foot.</remarks>
public sealed class RestoreReading(ShopWrites writes, TimeProvider clock)
{
    public Task<RestoreReadingOutcome> RunAsync(Actor actor, Guid commandId, Guid fittingId, IReadOnlyList<Guid> readingIds, CancellationToken cancellationToken) =>
        writes.RunAsync<RestoreReadingOutcome>(actor, commandId, nameof(RestoreReading), async (db, ct) =>
        {
            if (!await db.Fittings.AnyAsync(row => row.Id == fittingId && row.ClosedAt == null, ct))
            {
                return new RestoreReadingOutcome.NotOpen();
            }

            var now = clock.GetUtcNow();
            var words = await db.FittingReadings.Where(row => row.FittingId == fittingId && row.Unit == ReadingUnit.Word && row.WithdrawnAt == null).ToListAsync(ct);
            var back = await db.FittingReadings.Where(row => row.FittingId == fittingId && readingIds.Contains(row.Id)).ToListAsync(ct);
            foreach (var row in back)
            {
                if (row.Unit is ReadingUnit.Word)
                {
                    words.Where(word => word.Id != row.Id && word.Trait == row.Trait && word.Foot == row.Foot).ToList().ForEach(word => word.Withdraw(now));
                }

                row.Restore();
            }

            return new RestoreReadingOutcome.Restored();
        }, cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Restored), "restored")]
[JsonDerivedType(typeof(NotOpen), "not-open")]
public abstract record RestoreReadingOutcome
{
    private RestoreReadingOutcome()
    {
    }

    /// <summary>They count again.</summary>
    public sealed record Restored : RestoreReadingOutcome;

    /// <summary>The fitting is closed, or there is none.</summary>
    public sealed record NotOpen : RestoreReadingOutcome, IRefusal;
}
