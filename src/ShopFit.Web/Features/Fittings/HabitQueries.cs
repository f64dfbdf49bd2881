using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>How somebody likes to work at a tablet. Reads only.</summary>
public sealed class HabitQueries(ShopContexts contexts)
{
    /// <summary>The habits of that person at that tablet; the usual ones where none were kept.</summary>
    public async Task<SeenHabits> SeeAsync(Actor actor, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        return await db.FitterHabits.AsNoTracking()
            .Where(row => row.PersonId == actor.PersonId && row.Tablet == actor.Tablet)
            .Select(row => new SeenHabits(row.FacesDancer, row.LengthsIn))
            .SingleOrDefaultAsync(cancellationToken) ?? SeenHabits.Usual;
    }
}

/// <summary>Habits as the pages show them.</summary>
/// <param name="FacesDancer">Drawing and fields are turned.</param>
/// <param name="LengthsIn">Key of a <see cref="ReadIn"/>; null where nobody chose.</param>
public sealed record SeenHabits(bool FacesDancer, string? LengthsIn)
{
    /// <summary>Whoever chose nothing.</summary>
    public static SeenHabits Usual { get; } = new(false, null);
}
