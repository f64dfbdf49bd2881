using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Studios;

/// <summary>What the teacher asks of a dancer's shoe.</summary>
/// <param name="Words">Colour, ribbon and the rest, in her words; empty where she asks for nothing.</param>
/// <param name="AskedModelIds">Models that she asks for.</param>
/// <param name="UnwantedModelIds">Models that she does not want.</param>
public sealed record TeacherAsks(string Words, IReadOnlyList<Guid> AskedModelIds, IReadOnlyList<Guid> UnwantedModelIds)
{
    /// <summary>She asks for nothing, or nobody knows.</summary>
    public static TeacherAsks Nothing { get; } = new("", [], []);

    public bool IsNothing => Words.Length is 0 && AskedModelIds.Count is 0 && UnwantedModelIds.Count is 0;

    /// <summary>What the teachers of a studio ask for.</summary>
    internal static async Task<TeacherAsks> OfStudioAsync(ShopDbContext db, Studio? studio, CancellationToken cancellationToken)
    {
        if (studio is null)
        {
            return Nothing;
        }

        var wishes = await db.StudioModelWishes.AsNoTracking()
            .Where(row => row.StudioId == studio.Id)
            .OrderBy(row => row.Id)
            .Select(row => new { row.ModelId, row.IsAsked })
            .ToListAsync(cancellationToken);
        return new TeacherAsks(
            string.Join(" · ", new[] { studio.Colour, studio.Ribbon, studio.OtherWishes }.Where(words => words.Length > 0)),
            [.. wishes.Where(wish => wish.IsAsked).Select(wish => wish.ModelId)],
            [.. wishes.Where(wish => !wish.IsAsked).Select(wish => wish.ModelId)]);
    }
}
