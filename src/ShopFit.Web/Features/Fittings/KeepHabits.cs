using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Remembers, for a person on a tablet, which way feet are turned and what lengths are read in.</summary>
public sealed class KeepHabits(ShopWrites writes)
{
    public Task<KeepHabitsOutcome> RunAsync(Actor actor, Guid commandId, KeepHabitsRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<KeepHabitsOutcome>(actor, commandId, nameof(KeepHabits), async (db, ct) =>
        {
            var lengths = request.LengthsIn is null ? null : ReadIn.Find(request.LengthsIn);
            if (request.LengthsIn is not null && lengths is null)
            {
                return new KeepHabitsOutcome.UnknownUnit();
            }

            var habits = await db.FitterHabits.SingleOrDefaultAsync(row => row.PersonId == actor.PersonId && row.Tablet == actor.Tablet, ct);
            if (habits is null)
            {
                habits = FitterHabits.Of(Guid.CreateVersion7(), actor);
                db.FitterHabits.Add(habits);
            }

            if (request.FacesDancer is { } faces)
            {
                habits.Face(faces);
            }

            if (lengths is not null)
            {
                habits.ReadLengthsIn(lengths);
            }

            return new KeepHabitsOutcome.Kept();
        }, cancellationToken);
}

/// <summary>A habit that was changed; what is null stays as it was.</summary>
/// <param name="FacesDancer">Whether drawing and fields are turned.</param>
/// <param name="LengthsIn">Key of a <see cref="ReadIn"/>.</param>
public sealed record KeepHabitsRequest(bool? FacesDancer = null, string? LengthsIn = null);

/// <summary>How keeping it ended.</summary>
[JsonDerivedType(typeof(Kept), "kept")]
[JsonDerivedType(typeof(UnknownUnit), "unknown-unit")]
public abstract record KeepHabitsOutcome
{
    private KeepHabitsOutcome()
    {
    }

    /// <summary>It is kept.</summary>
    public sealed record Kept : KeepHabitsOutcome;

    /// <summary>Lengths are not read in that.</summary>
    public sealed record UnknownUnit : KeepHabitsOutcome, IRefusal;
}
