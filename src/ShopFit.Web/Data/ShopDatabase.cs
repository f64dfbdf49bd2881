using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Data;

/// <summary>How the shop's SQLite file is opened and brought up to date.</summary>
public static class ShopDatabase
{
    private static readonly SqlitePragmas Pragmas = new();

    // The migration tool and the command line have no web host, yet must see the same Identity tables as the shop.
    private static readonly IServiceProvider IdentityOnly = new ServiceCollection()
        .Configure<IdentityOptions>(options => options.Stores.SchemaVersion = IdentitySchema)
        .BuildServiceProvider();

    /// <summary>The version of Identity's tables, the one with passkeys.</summary>
    public static Version IdentitySchema => IdentitySchemaVersions.Version3;

    /// <summary>Options for a context on a file, without a web host.</summary>
    public static DbContextOptions<TContext> Options<TContext>(string file)
        where TContext : DbContext
    {
        var builder = new DbContextOptionsBuilder<TContext>();
        builder.UseApplicationServiceProvider(IdentityOnly);
        Use(builder, file);
        return builder.Options;
    }

    /// <summary>Points a context at a file.</summary>
    public static void Use(DbContextOptionsBuilder builder, string file)
    {
        var connection = new SqliteConnectionStringBuilder { DataSource = file, ForeignKeys = true };
        builder.UseSqlite(connection.ConnectionString).AddInterceptors(Pragmas);
    }

    /// <summary>Makes the file where there is none, applies what is missing, and makes the first shop.</summary>
    public static async Task PrepareAsync(string file, CancellationToken cancellationToken)
    {
        await using var db = new SqliteMigrationsContext(Options<SqliteMigrationsContext>(file));
        await db.Database.MigrateAsync(cancellationToken);
        await db.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = WAL;", cancellationToken);

        if (!await db.Shops.AnyAsync(cancellationToken))
        {
            db.Shops.Add(Shop.Of(Guid.CreateVersion7(), "The shop"));
            await db.SaveChangesAsync(cancellationToken);
        }
    }
}
