using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Undoes the taking back of what a maker’s labels mean that was a slip: it holds again.</summary>
public sealed class RestoreLabelMapping(ShopWrites writes, TimeProvider clock)
{
    // The way back stands open for ten seconds; the rest is for a slow line, and for a hand that stays at the key.
    private static readonly TimeSpan LongestSlip = TimeSpan.FromMinutes(5);

    /// <exception cref="NotPermittedException">The actor is no manager.</exception>
    public Task<RestoreLabelMappingOutcome> RunAsync(Actor actor, Guid commandId, Guid mappingId, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<RestoreLabelMappingOutcome>(actor, commandId, nameof(RestoreLabelMapping), async (db, ct) =>
        {
            if (await db.LabelMappings.SingleOrDefaultAsync(row => row.Id == mappingId, ct) is not { WithdrawnAt: { } withdrawnAt } mapping || clock.GetUtcNow() - withdrawnAt > LongestSlip)
            {
                return new RestoreLabelMappingOutcome.TooLate();
            }

            mapping.Restore();
            await CatalogueVersion.RaiseAsync(db, ct);
            return new RestoreLabelMappingOutcome.Restored();
        }, cancellationToken);
}

/// <summary>How undoing it ended.</summary>
[JsonDerivedType(typeof(Restored), "restored")]
[JsonDerivedType(typeof(TooLate), "too-late")]
public abstract record RestoreLabelMappingOutcome
{
    private RestoreLabelMappingOutcome()
    {
    }

    /// <summary>It counts again.</summary>
    public sealed record Restored : RestoreLabelMappingOutcome;

    /// <summary>It was taken back too long ago, or not at all.</summary>
    public sealed record TooLate : RestoreLabelMappingOutcome, IRefusal;
}
