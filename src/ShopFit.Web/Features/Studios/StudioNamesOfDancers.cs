using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Studios;

/// <summary>Moves the studios that stood as free text with each dancer to rows of their own, when a database of an older shape is opened.</summary>
/// <remarks>
/// The names are laid aside before the shape changes and put back after it. The list of what was laid aside is part of the
/// database and goes in the transaction that puts the last name back: a program that is killed in between goes on at its next start.
/// </remarks>
internal static class StudioNamesOfDancers
{
    private const string SetAside = "StudioNamesOfDancers";

    /// <summary>Lays the names aside, where they still stand with the dancers.</summary>
    public static async Task SetAsideAsync(ShopDbContext db, CancellationToken cancellationToken)
    {
        var hasText = await db.Database
            .SqlQuery<int>($"SELECT COUNT(*) AS Value FROM pragma_table_info('Dancers') WHERE name = 'Studio'")
            .SingleAsync(cancellationToken) > 0;
        if (hasText && !await IsSetAsideAsync(db, cancellationToken))
        {
            await db.Database.ExecuteSqlAsync(
                $"""CREATE TABLE "StudioNamesOfDancers" AS SELECT "Id" AS "DancerId", "ShopId", "Studio" AS "Name" FROM "Dancers" WHERE TRIM("Studio") <> ''""",
                cancellationToken);
        }
    }

    /// <summary>Makes a studio of each name that was laid aside, and points its dancers there.</summary>
    public static async Task PutBackAsync(ShopDbContext db, DateTimeOffset now, CancellationToken cancellationToken)
    {
        if (!await IsSetAsideAsync(db, cancellationToken))
        {
            return;
        }

        await using var transaction = await db.Database.BeginTransactionAsync(cancellationToken);
        var names = await db.Database.SqlQuery<NameOfDancer>($"SELECT * FROM \"StudioNamesOfDancers\"").ToListAsync(cancellationToken);
        foreach (var ofShop in names.GroupBy(row => row.ShopId))
        {
            db.ShopId = ofShop.Key;
            var dancers = await db.Dancers.ToDictionaryAsync(row => row.Id, cancellationToken);
            foreach (var (dancerId, _, name) in ofShop)
            {
                if (dancers.TryGetValue(dancerId, out var dancer))
                {
                    dancer.DancesAt(await StudiosByName.FindOrAddAsync(db, name, now, cancellationToken));
                }
            }

            await db.SaveChangesAsync(cancellationToken);
            db.ChangeTracker.Clear();
        }

        await db.Database.ExecuteSqlAsync($"DROP TABLE \"StudioNamesOfDancers\"", cancellationToken);
        await transaction.CommitAsync(cancellationToken);
        db.ShopId = Guid.Empty;
    }

    private static async Task<bool> IsSetAsideAsync(ShopDbContext db, CancellationToken cancellationToken) => await db.Database
        .SqlQuery<int>($"SELECT COUNT(*) AS Value FROM sqlite_master WHERE type = 'table' AND name = {SetAside}")
        .SingleAsync(cancellationToken) > 0;

    private sealed record NameOfDancer(Guid DancerId, Guid ShopId, string Name);
}
