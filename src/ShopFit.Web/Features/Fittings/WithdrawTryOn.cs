using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Takes back that a pair was tried on: it counts no longer, and the belief is what it was without it. The rows stay.</summary>
public sealed class WithdrawTryOn(ShopWrites writes, TimeProvider clock)
{
    public Task<WithdrawTryOnOutcome> RunAsync(Actor actor, Guid commandId, Guid fittingId, Guid sizeId, CancellationToken cancellationToken) =>
        writes.RunAsync<WithdrawTryOnOutcome>(actor, commandId, nameof(WithdrawTryOn), async (db, ct) =>
        {
            if (!await db.Fittings.AnyAsync(row => row.Id == fittingId && row.ClosedAt == null, ct))
            {
                return new WithdrawTryOnOutcome.NotOpen();
            }

            var now = clock.GetUtcNow();
            var standing = await db.FittingTryOns.Where(row => row.FittingId == fittingId && row.SizeId == sizeId && row.WithdrawnAt == null).ToListAsync(ct);
            standing.ForEach(row => row.Withdraw(now));
            return new WithdrawTryOnOutcome.Withdrawn([.. standing.Select(row => row.Id)]);
        }, cancellationToken);
}

/// <summary>How taking it back ended.</summary>
[JsonDerivedType(typeof(Withdrawn), "withdrawn")]
[JsonDerivedType(typeof(NotOpen), "not-open")]
public abstract record WithdrawTryOnOutcome
{
    private WithdrawTryOnOutcome()
    {
    }

    /// <summary>It counts no longer.</summary>
    /// <param name="TryOnIds">Keys of the rows, for <see cref="RestoreTryOn"/>.</param>
    public sealed record Withdrawn(IReadOnlyList<Guid> TryOnIds) : WithdrawTryOnOutcome;

    /// <summary>The fitting is closed, or there is none.</summary>
    public sealed record NotOpen : WithdrawTryOnOutcome, IRefusal;
}
