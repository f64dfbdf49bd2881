using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>One entry of a fitter: a row for each foot it was made for.</summary>
/// <remarks>Numbers add up, since each measure is a reading of its own. A word takes the place of the word before it.</remarks>
public sealed class RecordReading(ShopWrites writes, TimeProvider clock)
{
    public Task<RecordReadingOutcome> RunAsync(Actor actor, Guid commandId, RecordReadingRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<RecordReadingOutcome>(
            actor,
            commandId,
            nameof(RecordReading),
            (db, stop) => ApplyAsync(db, actor, request, clock.GetUtcNow(), stop),
            cancellationToken);

    /// <summary>Keeps it in the transaction of an action.</summary>
    internal static async Task<RecordReadingOutcome> ApplyAsync(
        ShopDbContext db, Actor actor, RecordReadingRequest request, DateTimeOffset now, CancellationToken cancellationToken)
    {
        if (Traits.Find(request.Trait) is not { } row)
        {
            return new RecordReadingOutcome.Invalid(new(ReadingProblemCode.WrongUnit));
        }

        var system = request.SizeSystem is null ? null : SizeSystem.Find(request.SizeSystem);
        var reading = new Reading(request.Feet[0], row.Trait, request.Value, request.Unit, system);
        if (reading.Check() is { } problem)
        {
            return new RecordReadingOutcome.Invalid(problem);
        }

        var fitting = await db.Fittings.SingleOrDefaultAsync(each => each.Id == request.FittingId, cancellationToken);
        if (fitting is not { ClosedAt: null })
        {
            return new RecordReadingOutcome.NotOpen();
        }

        if (request.Unit is ReadingUnit.Word)
        {
            var standing = await db.FittingReadings
                .Where(each => each.FittingId == request.FittingId && each.Trait == request.Trait && each.Unit == ReadingUnit.Word && each.WithdrawnAt == null)
                .ToListAsync(cancellationToken);
            standing.Where(each => request.Feet.Contains(each.Foot)).ToList().ForEach(each => each.Withdraw(now));
        }

        var rows = request.Feet
            .Select(foot => FittingReading.Of(Guid.CreateVersion7(now), actor, request.FittingId, now, foot, request.Trait, request.Value, request.Unit, request.SizeSystem, request.Method))
            .ToList();
        db.FittingReadings.AddRange(rows);
        return new RecordReadingOutcome.Recorded([.. rows.Select(each => each.Id)]);
    }
}

/// <summary>An entry as the fitter made it.</summary>
/// <param name="FittingId">At which fitting.</param>
/// <param name="Feet">For one foot, or for both.</param>
/// <param name="Trait">Id of the trait.</param>
/// <param name="Value">The number, in <paramref name="Unit"/>; a word is 0, 1 or 2.</param>
/// <param name="Unit">The unit it was given in.</param>
/// <param name="SizeSystem">Id of the size system; only with a size.</param>
/// <param name="Method">How it was taken; null where nobody said.</param>
public sealed record RecordReadingRequest(
    Guid FittingId, IReadOnlyList<Side> Feet, string Trait, double Value, ReadingUnit Unit, string? SizeSystem = null, string? Method = null);

/// <summary>How an entry ended.</summary>
[JsonDerivedType(typeof(Recorded), "recorded")]
[JsonDerivedType(typeof(NotOpen), "not-open")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record RecordReadingOutcome
{
    private RecordReadingOutcome()
    {
    }

    /// <summary>It is kept, a row a foot.</summary>
    public sealed record Recorded(IReadOnlyList<Guid> ReadingIds) : RecordReadingOutcome;

    /// <summary>The fitting is closed, or there is none.</summary>
    public sealed record NotOpen : RecordReadingOutcome, IRefusal;

    /// <summary>The reading cannot be used.</summary>
    public sealed record Invalid(ReadingProblem Problem) : RecordReadingOutcome, IRefusal;
}
