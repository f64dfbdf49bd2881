using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Undoes an ending by which nothing was sold, for a short while: the fitting is open again, just as it lay, and the ending stays as a withdrawn row.</summary>
public sealed class ReopenFitting(ShopWrites writes, TimeProvider clock)
{
    /// <summary>How long after its ending a fitting may be opened again: as long as it is offered, and the way to the shop's computer.</summary>
    public static readonly TimeSpan Within = TimeSpan.FromMinutes(1);

    public Task<ReopenFittingOutcome> RunAsync(Actor actor, Guid commandId, Guid fittingId, CancellationToken cancellationToken) =>
        writes.RunAsync<ReopenFittingOutcome>(actor, commandId, nameof(ReopenFitting), async (db, ct) =>
        {
            var now = clock.GetUtcNow();
            var fitting = await db.Fittings.SingleOrDefaultAsync(row => row.Id == fittingId, ct);
            var standing = await db.FittingDecisions.Where(row => row.FittingId == fittingId && row.WithdrawnAt == null).ToListAsync(ct);
            if (fitting?.ClosedAt is not { } closedAt
                || now - closedAt > Within
                || standing.Exists(decision => decision.Kind == DecisionKinds.Sold)
                || await db.Sales.AnyAsync(sale => sale.FittingId == fittingId && sale.VoidedAt == null, ct))
            {
                return new ReopenFittingOutcome.TooLate();
            }

            standing.ForEach(decision => decision.Withdraw(now));
            fitting.Reopen();
            return new ReopenFittingOutcome.Reopened();
        }, cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Reopened), "reopened")]
[JsonDerivedType(typeof(TooLate), "too-late")]
public abstract record ReopenFittingOutcome
{
    private ReopenFittingOutcome()
    {
    }

    /// <summary>It is open again.</summary>
    public sealed record Reopened : ReopenFittingOutcome;

    /// <summary>Its time is over, something was sold, or it is not closed.</summary>
    public sealed record TooLate : ReopenFittingOutcome, IRefusal;
}
