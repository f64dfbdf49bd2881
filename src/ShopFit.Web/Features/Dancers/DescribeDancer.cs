using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Changes what is known of a dancer. A yes that was given stays; one that is now needed is asked for before the next fitting.</summary>
public sealed class DescribeDancer(ShopWrites writes, TimeProvider clock)
{
    /// <param name="actor">Who writes it down.</param>
    /// <param name="commandId">Key of the command.</param>
    /// <param name="dancerId">Whom it is about.</param>
    /// <param name="version">The version that was on the screen.</param>
    /// <param name="request">What is known now, all of it.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    public Task<DescribeDancerOutcome> RunAsync(Actor actor, Guid commandId, Guid dancerId, int version, RegisterDancerRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<DescribeDancerOutcome>(actor, commandId, nameof(DescribeDancer), async (db, ct) =>
        {
            var dancer = await db.Dancers.SingleOrDefaultAsync(row => row.Id == dancerId, ct);
            if (dancer is null || dancer.Version != version)
            {
                return new DescribeDancerOutcome.ChangedMeanwhile();
            }

            var now = clock.GetUtcNow();
            var shop = await db.Shops.SingleAsync(row => row.Id == actor.ShopId, ct);
            if (DancerWriting.Check(request, ShopTime.Of(shop).Day(now)) is { Count: > 0 } problems)
            {
                return new DescribeDancerOutcome.Invalid(problems);
            }

            await DancerWriting.WriteAsync(db, dancer, request, now, ct);
            await DancersInMemory.RaiseVersionAsync(db, ct);
            return new DescribeDancerOutcome.Kept();
        }, cancellationToken);
}

/// <summary>How changing it ended.</summary>
[JsonDerivedType(typeof(Kept), "kept")]
[JsonDerivedType(typeof(Invalid), "invalid")]
[JsonDerivedType(typeof(ChangedMeanwhile), "changed-meanwhile")]
public abstract record DescribeDancerOutcome
{
    private DescribeDancerOutcome()
    {
    }

    /// <summary>It is kept.</summary>
    public sealed record Kept : DescribeDancerOutcome;

    /// <summary>Something is missing or cannot be.</summary>
    public sealed record Invalid(IReadOnlyList<DancerProblem> Problems) : DescribeDancerOutcome, IRefusal;

    /// <summary>Another tablet changed her since she was shown, or she is no longer on file.</summary>
    public sealed record ChangedMeanwhile : DescribeDancerOutcome, IRefusal;
}
