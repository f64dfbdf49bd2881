using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Dancers as the pages show them. Reads only.</summary>
public sealed class DancerQueries(ShopContexts contexts, TimeProvider clock)
{
    /// <summary>Dancers whose name, usual name or studio holds every word of the search, by name.</summary>
    public async Task<IReadOnlyList<DancerRow>> FindAsync(string? search, int count, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var today = await TodayAsync(db, cancellationToken);
        var dancers =
            from dancer in db.Dancers.AsNoTracking()
            join studio in db.Studios on dancer.StudioId equals studio.Id into studios
            from studio in studios.DefaultIfEmpty()
            select new { dancer.Id, dancer.Name, dancer.KnownAs, Studio = studio == null ? "" : studio.Name, dancer.BirthDate };
        foreach (var word in (search ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var pattern = $"%{word.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("%", "\\%", StringComparison.Ordinal).Replace("_", "\\_", StringComparison.Ordinal)}%";
            dancers = dancers.Where(row =>
                EF.Functions.Like(row.Name, pattern, "\\") || EF.Functions.Like(row.KnownAs, pattern, "\\") || EF.Functions.Like(row.Studio, pattern, "\\"));
        }

        var rows = await dancers.OrderBy(row => row.Name).ThenBy(row => row.Id).Take(count)
            .ToListAsync(cancellationToken);
        return [.. rows.Select(row => new DancerRow(row.Id, row.Name, row.KnownAs, row.Studio, WholeYears(row.BirthDate, today)))];
    }

    /// <summary>One dancer; null where there is none.</summary>
    public async Task<SeenDancer?> SeeAsync(Guid dancerId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var dancer = await db.Dancers.AsNoTracking().SingleOrDefaultAsync(row => row.Id == dancerId, cancellationToken);
        if (dancer is null)
        {
            return null;
        }

        var today = await TodayAsync(db, cancellationToken);
        var guardian = dancer.GuardianId is null ? null : await db.Guardians.AsNoTracking().SingleOrDefaultAsync(row => row.Id == dancer.GuardianId, cancellationToken);
        var studio = await db.Studios.Where(row => row.Id == dancer.StudioId).Select(row => row.Name).SingleOrDefaultAsync(cancellationToken);
        return new SeenDancer(
            dancer.Id,
            dancer.Name,
            dancer.KnownAs,
            dancer.BirthDate,
            WholeYears(dancer.BirthDate, today),
            RegisterDancer.IsMinor(dancer.BirthDate, today),
            studio ?? "",
            dancer.Teacher,
            guardian?.Name ?? "",
            guardian?.Contact ?? "",
            await db.Consents.AnyAsync(row => row.DancerId == dancerId, cancellationToken));
    }

    /// <summary>Today by the shop's calendar.</summary>
    public async Task<DateOnly> TodayAsync(CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        return await TodayAsync(db, cancellationToken);
    }

    private async Task<DateOnly> TodayAsync(ShopDbContext db, CancellationToken cancellationToken) =>
        ShopTime.Of(await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken)).Day(clock.GetUtcNow());

    private static int? WholeYears(DateOnly? born, DateOnly today) => born is { } date && date <= today ? (int)Age.InYears(date, today) : null;
}

/// <summary>One line of the list of dancers.</summary>
public sealed record DancerRow(Guid Id, string Name, string KnownAs, string Studio, int? AgeYears);

/// <summary>A dancer as her page shows her.</summary>
public sealed record SeenDancer(
    Guid Id, string Name, string KnownAs, DateOnly? BirthDate, int? AgeYears, bool IsMinor, string Studio, string Teacher, string GuardianName, string GuardianContact, bool HasConsent);
