using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Undoes the taking back of a try-on. Where the pair was put on again meanwhile, what was said then stands, and nothing comes back.</summary>
public sealed class RestoreTryOn(ShopWrites writes)
{
    public Task<RestoreTryOnOutcome> RunAsync(Actor actor, Guid commandId, Guid fittingId, IReadOnlyList<Guid> tryOnIds, CancellationToken cancellationToken) =>
        writes.RunAsync<RestoreTryOnOutcome>(actor, commandId, nameof(RestoreTryOn), async (db, ct) =>
        {
            var back = await db.FittingTryOns.Where(row => row.FittingId == fittingId && tryOnIds.Contains(row.Id)).ToListAsync(ct);
            var sizes = back.Select(row => row.SizeId).ToList();
            if (!await db.Fittings.AnyAsync(row => row.Id == fittingId && row.ClosedAt == null, ct)
                || await db.FittingTryOns.AnyAsync(row => row.FittingId == fittingId && sizes.Contains(row.SizeId) && row.WithdrawnAt == null, ct))
            {
                return new RestoreTryOnOutcome.TooLate();
            }

            back.ForEach(row => row.Restore());
            return new RestoreTryOnOutcome.Restored();
        }, cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Restored), "restored")]
[JsonDerivedType(typeof(TooLate), "too-late")]
public abstract record RestoreTryOnOutcome
{
    private RestoreTryOnOutcome()
    {
    }

    /// <summary>It counts again.</summary>
    public sealed record Restored : RestoreTryOnOutcome;

    /// <summary>The fitting is closed, or the pair was put on again.</summary>
    public sealed record TooLate : RestoreTryOnOutcome, IRefusal;
}
