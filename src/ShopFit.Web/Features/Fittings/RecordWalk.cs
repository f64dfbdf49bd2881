using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Writes down a walk to the shelf: the pairs that were fetched stand ready to be tried on.</summary>
public sealed class RecordWalk(ShopWrites writes, ShoesInMemory shoesInMemory, TimeProvider clock)
{
    /// <param name="actor">Who walked.</param>
    /// <param name="commandId">Key of the command; it becomes the key of the row.</param>
    /// <param name="fittingId">For which fitting.</param>
    /// <param name="sizeIds">The pairs fetched, 1 to <see cref="FittingWalk.MostPairs"/>, each once, in the order of the list.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    public Task<RecordWalkOutcome> RunAsync(Actor actor, Guid commandId, Guid fittingId, IReadOnlyList<Guid> sizeIds, CancellationToken cancellationToken) =>
        writes.RunAsync<RecordWalkOutcome>(actor, commandId, nameof(RecordWalk), async (db, ct) =>
        {
            if (sizeIds.Count is 0 or > FittingWalk.MostPairs || sizeIds.Distinct().Count() < sizeIds.Count)
            {
                return new RecordWalkOutcome.Invalid(WalkProblem.Count);
            }

            var fitting = await db.Fittings.AsNoTracking().SingleOrDefaultAsync(row => row.Id == fittingId, ct);
            if (fitting is not { ClosedAt: null })
            {
                return new RecordWalkOutcome.NotOpen();
            }

            if (TryOnToday.Bars(fitting) is { } bar)
            {
                return new RecordWalkOutcome.NotToday(bar);
            }

            var shoes = await shoesInMemory.SeeAsync(db, ct);
            if (sizeIds.Any(sizeId => shoes.Find(sizeId)?.Kind != fitting.Kind))
            {
                return new RecordWalkOutcome.Invalid(WalkProblem.NoSuchPair);
            }

            db.FittingWalks.Add(FittingWalk.Of(commandId, actor, fittingId, clock.GetUtcNow(), sizeIds));
            return new RecordWalkOutcome.Recorded();
        }, cancellationToken);
}

/// <summary>What is wrong with a walk.</summary>
public enum WalkProblem
{
    /// <summary>No pair, more than two hands carry, or one of them twice.</summary>
    Count,

    /// <summary>A pair that is not on file, or of another kind.</summary>
    NoSuchPair,
}

/// <summary>How writing it down ended.</summary>
[JsonDerivedType(typeof(Recorded), "recorded")]
[JsonDerivedType(typeof(NotOpen), "not-open")]
[JsonDerivedType(typeof(NotToday), "not-today")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record RecordWalkOutcome
{
    private RecordWalkOutcome()
    {
    }

    /// <summary>It is kept.</summary>
    public sealed record Recorded : RecordWalkOutcome;

    /// <summary>The fitting is closed, or there is none.</summary>
    public sealed record NotOpen : RecordWalkOutcome, IRefusal;

    /// <summary>Nothing is tried on today, so nothing is fetched.</summary>
    public sealed record NotToday(NoTryOn Why) : RecordWalkOutcome, IRefusal;

    /// <summary>It cannot have been.</summary>
    public sealed record Invalid(WalkProblem Problem) : RecordWalkOutcome, IRefusal;
}
