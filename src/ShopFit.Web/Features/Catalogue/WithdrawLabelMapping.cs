using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Takes back what was said of a maker's labels: what was said before holds again.</summary>
public sealed class WithdrawLabelMapping(ShopWrites writes, TimeProvider clock)
{
    /// <exception cref="NotPermittedException">The actor is no manager.</exception>
    public Task<WithdrawLabelMappingOutcome> RunAsync(Actor actor, Guid commandId, Guid mappingId, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<WithdrawLabelMappingOutcome>(actor, commandId, nameof(WithdrawLabelMapping), async (db, ct) =>
        {
            if (await db.LabelMappings.SingleOrDefaultAsync(row => row.Id == mappingId && row.WithdrawnAt == null, ct) is not { } mapping)
            {
                return new WithdrawLabelMappingOutcome.NotInForce();
            }

            mapping.Withdraw(clock.GetUtcNow());
            await CatalogueVersion.RaiseAsync(db, ct);
            return new WithdrawLabelMappingOutcome.Withdrawn();
        }, cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Withdrawn), "withdrawn")]
[JsonDerivedType(typeof(NotInForce), "not-in-force")]
public abstract record WithdrawLabelMappingOutcome
{
    private WithdrawLabelMappingOutcome()
    {
    }

    /// <summary>It counts no longer.</summary>
    public sealed record Withdrawn : WithdrawLabelMappingOutcome;

    /// <summary>There is no such mapping, or it was taken back before.</summary>
    public sealed record NotInForce : WithdrawLabelMappingOutcome, IRefusal;
}
