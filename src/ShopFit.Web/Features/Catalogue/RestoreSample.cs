using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Undoes the taking back of a sample that was a slip: the forms of its model follow from it again.</summary>
public sealed class RestoreSample(ShopWrites writes, TimeProvider clock)
{
    // The way back stands open for ten seconds; the rest is for a slow line, and for a hand that stays at the key.
    private static readonly TimeSpan LongestSlip = TimeSpan.FromMinutes(5);

    /// <exception cref="NotPermittedException">The actor is no manager.</exception>
    public Task<RestoreSampleOutcome> RunAsync(Actor actor, Guid commandId, Guid sampleId, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<RestoreSampleOutcome>(actor, commandId, nameof(RestoreSample), async (db, ct) =>
        {
            if (await db.MeasuredSamples.SingleOrDefaultAsync(row => row.Id == sampleId, ct) is not { WithdrawnAt: { } withdrawnAt } sample || clock.GetUtcNow() - withdrawnAt > LongestSlip)
            {
                return new RestoreSampleOutcome.TooLate();
            }

            sample.Restore();
            await CatalogueVersion.RaiseAsync(db, ct);
            return new RestoreSampleOutcome.Restored();
        }, cancellationToken);
}

/// <summary>How undoing it ended.</summary>
[JsonDerivedType(typeof(Restored), "restored")]
[JsonDerivedType(typeof(TooLate), "too-late")]
public abstract record RestoreSampleOutcome
{
    private RestoreSampleOutcome()
    {
    }

    /// <summary>It counts again.</summary>
    public sealed record Restored : RestoreSampleOutcome;

    /// <summary>It was taken back too long ago, or not at all.</summary>
    public sealed record TooLate : RestoreSampleOutcome, IRefusal;
}
