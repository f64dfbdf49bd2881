using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Takes a measured sample back: the forms of its model are again what they were without it.</summary>
public sealed class WithdrawSample(ShopWrites writes, TimeProvider clock)
{
    /// <exception cref="NotPermittedException">The actor is no manager.</exception>
    public Task<WithdrawSampleOutcome> RunAsync(Actor actor, Guid commandId, Guid sampleId, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<WithdrawSampleOutcome>(actor, commandId, nameof(WithdrawSample), async (db, ct) =>
        {
            if (await db.MeasuredSamples.SingleOrDefaultAsync(row => row.Id == sampleId && row.WithdrawnAt == null, ct) is not { } sample)
            {
                return new WithdrawSampleOutcome.NotInForce();
            }

            sample.Withdraw(clock.GetUtcNow());
            await CatalogueVersion.RaiseAsync(db, ct);
            return new WithdrawSampleOutcome.Withdrawn();
        }, cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Withdrawn), "withdrawn")]
[JsonDerivedType(typeof(NotInForce), "not-in-force")]
public abstract record WithdrawSampleOutcome
{
    private WithdrawSampleOutcome()
    {
    }

    /// <summary>It counts no longer.</summary>
    public sealed record Withdrawn : WithdrawSampleOutcome;

    /// <summary>There is no such sample, or it was taken back before.</summary>
    public sealed record NotInForce : WithdrawSampleOutcome, IRefusal;
}
