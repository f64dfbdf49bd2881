using System.Globalization;
using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Data;

/// <summary>Brings the database of a shop up to date before anything else touches it: shape, first shop, roles.</summary>
public sealed class ShopPreparation(ShopFolder folder, TimeProvider clock)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private static readonly TimeSpan BetweenTries = TimeSpan.FromMilliseconds(100);

    /// <summary>Does what is missing; where nothing is, does nothing.</summary>
    /// <exception cref="TimeoutException">Another program is at it, or the database does not answer.</exception>
    public async Task RunAsync(CancellationToken cancellationToken)
    {
        Directory.CreateDirectory(folder.Path);
        using var patience = new CancellationTokenSource(Patience, clock);
        using var both = CancellationTokenSource.CreateLinkedTokenSource(patience.Token, cancellationToken);
        try
        {
            await using var alone = await BeAloneAsync(both.Token);
            await using var db = new SqliteMigrationsContext(
                ShopDatabase.Options<SqliteMigrationsContext>(folder.DatabaseFile, SqliteOpenMode.ReadWriteCreate));
            await ClearStaleLockAsync(db, both.Token);
            await StudioNamesOfDancers.SetAsideAsync(db, both.Token);
            await MigrateAsync(db, both.Token);
            await StudioNamesOfDancers.PutBackAsync(db, clock.GetUtcNow(), both.Token);
            await FurnishAsync(db, both.Token);
        }
        catch (OperationCanceledException exception) when (patience.IsCancellationRequested && !cancellationToken.IsCancellationRequested)
        {
            throw new TimeoutException($"The database {folder.DatabaseFile} could not be brought up to date within {Patience.TotalSeconds:0} seconds. Does another program hold it?", exception);
        }
    }

    // A lock of the operating system goes away with its program, even one that was killed.
    private async Task<FileStream> BeAloneAsync(CancellationToken cancellationToken)
    {
        while (true)
        {
            try
            {
                return new FileStream(folder.PreparationLock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException) when (File.Exists(folder.PreparationLock))
            {
                await Task.Delay(BetweenTries, clock, cancellationToken);
            }
        }
    }

    // A program that was killed while it migrated leaves its row behind, and the next one would wait for ever.
    // Nobody else is preparing this folder, so a row that is there now belongs to nobody.
    private static async Task ClearStaleLockAsync(SqliteMigrationsContext db, CancellationToken cancellationToken)
    {
        var tables = await db.Database
            .SqlQuery<int>($"SELECT COUNT(*) AS Value FROM sqlite_master WHERE type = 'table' AND name = '__EFMigrationsLock'")
            .SingleAsync(cancellationToken);
        if (tables > 0)
        {
            await db.Database.ExecuteSqlAsync($"DELETE FROM __EFMigrationsLock", cancellationToken);
        }
    }

    private async Task MigrateAsync(SqliteMigrationsContext db, CancellationToken cancellationToken)
    {
        var applied = await db.Database.GetAppliedMigrationsAsync(cancellationToken);
        var pending = await db.Database.GetPendingMigrationsAsync(cancellationToken);
        if (!pending.Any())
        {
            return;
        }

        if (applied.Any())
        {
            Directory.CreateDirectory(folder.Backups);
            var stamp = clock.GetUtcNow().ToString("yyyyMMdd'T'HHmmss", CultureInfo.InvariantCulture);
            var copy = Path.Combine(folder.Backups, $"before-update-{stamp}.db");
            await db.Database.ExecuteSqlAsync($"VACUUM INTO {copy}", cancellationToken);
        }

        await db.Database.MigrateAsync(cancellationToken);
        await db.Database.ExecuteSqlAsync($"PRAGMA journal_mode = WAL", cancellationToken);
    }

    private static async Task FurnishAsync(SqliteMigrationsContext db, CancellationToken cancellationToken)
    {
        if (!await db.Shops.AnyAsync(cancellationToken))
        {
            db.Shops.Add(Shop.Of(Guid.CreateVersion7(), "The shop"));
        }

        var roles = await db.Roles.Select(role => role.Name).ToListAsync(cancellationToken);
        db.Roles.AddRange(Roles.All.Except(roles).Select(name => new IdentityRole<Guid>
        {
            Id = Guid.CreateVersion7(),
            Name = name,
            NormalizedName = name!.ToUpperInvariant(),
            ConcurrencyStamp = Guid.CreateVersion7().ToString(),
        }));
        await db.SaveChangesAsync(cancellationToken);
    }
}
