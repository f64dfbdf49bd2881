using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Shared;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Dancers as the pages show them. Reads only.</summary>
public sealed class DancerQueries(ShopContexts contexts, DancersInMemory inMemory, TimeProvider clock)
{
    /// <summary>Dancers that are like what was typed, by name, usual name, guardian or studio, the likest first; all by name where nothing was typed.</summary>
    public async Task<IReadOnlyList<DancerRow>> FindAsync(string? search, int count, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var today = (await TimeAsync(db, cancellationToken)).Day(clock.GetUtcNow());
        var index = await inMemory.SeeAsync(db, cancellationToken);
        return [.. index.Find(search, count).Select(row => new DancerRow(row.Id, row.Name, row.KnownAs, row.Studio, WholeYears(row.BirthDate, today), row.Guardian))];
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

        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        var time = ShopTime.Of(shop);
        var today = time.Day(clock.GetUtcNow());
        var guardian = dancer.GuardianId is null ? null : await db.Guardians.AsNoTracking().SingleOrDefaultAsync(row => row.Id == dancer.GuardianId, cancellationToken);
        var studio = dancer.StudioId is null ? null : await db.Studios.AsNoTracking().SingleOrDefaultAsync(row => row.Id == dancer.StudioId, cancellationToken);
        var consentAt = await db.Consents
            .Where(row => row.DancerId == dancerId && row.WithdrawnAt == null)
            .MaxAsync(row => (DateTimeOffset?)row.GivenAt, cancellationToken);
        return new SeenDancer
        {
            Id = dancer.Id,
            Version = dancer.Version,
            Name = dancer.Name,
            KnownAs = dancer.KnownAs,
            BirthDate = dancer.BirthDate,
            AgeYears = WholeYears(dancer.BirthDate, today),
            UnderAge = dancer.IsMinorOn(today),
            Sex = dancer.Sex,
            StudioId = dancer.StudioId,
            Studio = studio?.Name ?? "",
            Teacher = dancer.Teacher,
            GuardianId = dancer.GuardianId,
            GuardianName = guardian?.Name ?? "",
            GuardianContact = guardian?.Contact ?? "",
            ConsentAt = consentAt,
            Siblings = await SiblingsAsync(db, dancer, cancellationToken),
            Kinds = shop.Kinds,
            Time = time,
        };
    }

    /// <summary>People on file who answer for somebody, whose name is like what was typed.</summary>
    public async Task<IReadOnlyList<KnownGuardian>> FindGuardiansAsync(string typed, int count, CancellationToken cancellationToken)
    {
        var key = FoldedText.Of(typed);
        if (key.Length < LeastTyped)
        {
            return [];
        }

        await using var db = await contexts.OpenAsync(cancellationToken);
        var rows = await (
            from guardian in db.Guardians
            join dancer in db.Dancers on guardian.Id equals dancer.GuardianId
            orderby guardian.Name, guardian.Id, dancer.Name
            select new { guardian.Id, guardian.Name, guardian.Contact, Child = dancer.Name, dancer.KnownAs }).ToListAsync(cancellationToken);
        return [.. rows.GroupBy(row => (row.Id, row.Name, row.Contact))
            .Where(group => FoldedText.Of(group.Key.Name).Contains(key, StringComparison.Ordinal))
            .Take(count)
            .Select(group => new KnownGuardian(group.Key.Id, group.Key.Name, group.Key.Contact, [.. group.Select(row => DancerRow.Called(row.Child, row.KnownAs))]))];
    }

    /// <summary>Somebody on file who answers for dancers; null where there is none.</summary>
    public async Task<KnownGuardian?> SeeGuardianAsync(Guid guardianId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var guardian = await db.Guardians.AsNoTracking().SingleOrDefaultAsync(row => row.Id == guardianId, cancellationToken);
        if (guardian is null)
        {
            return null;
        }

        var children = await db.Dancers.Where(row => row.GuardianId == guardianId).OrderBy(row => row.Name).Select(row => new { row.Name, row.KnownAs }).ToListAsync(cancellationToken);
        return new KnownGuardian(guardian.Id, guardian.Name, guardian.Contact, [.. children.Select(row => DancerRow.Called(row.Name, row.KnownAs))]);
    }

    /// <summary>The wall clock of the shop.</summary>
    public async Task<ShopTime> TimeAsync(CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        return await TimeAsync(db, cancellationToken);
    }

    // From here a name says whose it is; shorter, half the file would answer.
    private const int LeastTyped = 3;

    private static async Task<IReadOnlyList<Sibling>> SiblingsAsync(ShopDbContext db, Dancer dancer, CancellationToken cancellationToken)
    {
        if (dancer.GuardianId is null)
        {
            return [];
        }

        var rows = await db.Dancers.AsNoTracking()
            .Where(row => row.GuardianId == dancer.GuardianId && row.Id != dancer.Id)
            .OrderBy(row => row.Name)
            .Select(row => new { row.Id, row.Name, row.KnownAs })
            .ToListAsync(cancellationToken);
        return [.. rows.Select(row => new Sibling(row.Id, DancerRow.Called(row.Name, row.KnownAs)))];
    }

    private static async Task<ShopTime> TimeAsync(ShopDbContext db, CancellationToken cancellationToken) =>
        ShopTime.Of(await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken));

    private static int? WholeYears(DateOnly? born, DateOnly today) => born is { } date && date <= today ? (int)Age.InYears(date, today) : null;
}

/// <summary>One line of the list of dancers.</summary>
public sealed record DancerRow(Guid Id, string Name, string KnownAs, string Studio, int? AgeYears, string Guardian)
{
    /// <summary>What somebody is called: by the first name where nothing else was said.</summary>
    public static string Called(string name, string knownAs) => knownAs is { Length: > 0 } ? knownAs : name.Split(' ')[0];
}

/// <summary>Another dancer for whom the same person answers.</summary>
public sealed record Sibling(Guid Id, string Called);

/// <summary>Somebody on file who answers for dancers.</summary>
public sealed record KnownGuardian(Guid Id, string Name, string Contact, IReadOnlyList<string> Children);
