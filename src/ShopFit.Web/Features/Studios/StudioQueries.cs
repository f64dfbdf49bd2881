using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Studios;

/// <summary>Studios as the pages show them. Reads only.</summary>
public sealed class StudioQueries(ShopContexts contexts)
{
    /// <summary>All studios, those with most dancers first.</summary>
    public async Task<IReadOnlyList<StudioRow>> AllAsync(CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var dancers = await db.Dancers.Where(row => row.StudioId != null)
            .GroupBy(row => row.StudioId!.Value)
            .ToDictionaryAsync(group => group.Key, group => group.Count(), cancellationToken);
        var studios = await db.Studios.AsNoTracking().OrderBy(row => row.NameKey).ToListAsync(cancellationToken);
        return [.. studios
            .Select(row => new StudioRow(row.Id, row.Name, TeacherNames(row.Teachers), dancers.GetValueOrDefault(row.Id)))
            .OrderByDescending(row => row.Dancers)];
    }

    /// <summary>One studio; null where there is none.</summary>
    public async Task<SeenStudio?> SeeAsync(Guid studioId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var studio = await db.Studios.AsNoTracking().SingleOrDefaultAsync(row => row.Id == studioId, cancellationToken);
        if (studio is null)
        {
            return null;
        }

        var models = await (
            from model in db.ShoeModels
            join maker in db.Makers on model.MakerId equals maker.Id
            orderby maker.Name, model.Name
            select new { model.Id, Maker = maker.Name, model.Name, model.Kind, model.Discontinued }).ToListAsync(cancellationToken);
        var wishes = await db.StudioModelWishes.Where(row => row.StudioId == studioId).ToDictionaryAsync(row => row.ModelId, row => row.IsAsked, cancellationToken);
        var dancers = await db.Dancers.Where(row => row.StudioId == studioId).OrderBy(row => row.Name)
            .Select(row => new StudioDancer(row.Id, row.Name, row.Teacher)).ToListAsync(cancellationToken);
        return new SeenStudio(
            studio.Id, studio.Version, studio.Name, studio.Teachers, studio.Colour, studio.Ribbon, studio.OtherWishes,
            // A model that is made no longer stays on the list while somebody still asks for it.
            [.. models.Where(model => !model.Discontinued || wishes.ContainsKey(model.Id))
                .Select(model => new WishedModel(model.Id, model.Maker, model.Name, model.Kind, wishes.TryGetValue(model.Id, out var isAsked) ? isAsked : null))],
            dancers);
    }

    /// <summary>The names in a line with commas.</summary>
    internal static IReadOnlyList<string> TeacherNames(string teachers) => teachers.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}

/// <summary>One line of the list of studios.</summary>
public sealed record StudioRow(Guid Id, string Name, IReadOnlyList<string> Teachers, int Dancers);

/// <summary>A studio as its page shows it.</summary>
public sealed record SeenStudio(
    Guid Id, int Version, string Name, string Teachers, string Colour, string Ribbon, string OtherWishes,
    IReadOnlyList<WishedModel> Models, IReadOnlyList<StudioDancer> Dancers);

/// <summary>A model of the shop, and whether the studio's teachers ask for it; null where they say nothing.</summary>
public sealed record WishedModel(Guid Id, string Maker, string Name, string Kind, bool? IsAsked);

/// <summary>A dancer of the studio.</summary>
public sealed record StudioDancer(Guid Id, string Name, string Teacher);
