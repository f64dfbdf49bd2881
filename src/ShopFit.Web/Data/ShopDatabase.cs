using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace ShopFit.Web.Data;

/// <summary>How the shop's SQLite file is opened.</summary>
public static class ShopDatabase
{
    // Seconds to wait for another writer before a person is told.
    private const int Patience = 5;

    private static readonly SqlitePragmas Pragmas = new();

    // The migration tool and the command line have no web host, yet must see the same Identity tables as the shop.
    private static readonly IServiceProvider IdentityOnly = new ServiceCollection()
        .Configure<IdentityOptions>(options => options.Stores.SchemaVersion = IdentitySchema)
        .BuildServiceProvider();

    /// <summary>The version of Identity's tables, the one with passkeys.</summary>
    public static Version IdentitySchema => IdentitySchemaVersions.Version3;

    /// <summary>Options for a context on a file, without a web host.</summary>
    public static DbContextOptions<TContext> Options<TContext>(string file, SqliteOpenMode mode = SqliteOpenMode.ReadWrite)
        where TContext : DbContext
    {
        var builder = new DbContextOptionsBuilder<TContext>();
        builder.UseApplicationServiceProvider(IdentityOnly);
        Use(builder, file, mode);
        return builder.Options;
    }

    /// <summary>Points a context at a file. Only preparation makes a file where there is none.</summary>
    public static void Use(DbContextOptionsBuilder builder, string file, SqliteOpenMode mode = SqliteOpenMode.ReadWrite)
    {
        var connection = new SqliteConnectionStringBuilder { DataSource = file, ForeignKeys = true, Mode = mode, DefaultTimeout = Patience };
        builder.UseSqlite(connection.ConnectionString).AddInterceptors(Pragmas);
    }

    /// <summary>Whether the database is there and has the shape that this program expects.</summary>
    public static async Task<bool> IsReadyAsync(ShopFolder folder, CancellationToken cancellationToken)
    {
        try
        {
            await using var db = new SqliteMigrationsContext(Options<SqliteMigrationsContext>(folder.DatabaseFile));
            return !(await db.Database.GetPendingMigrationsAsync(cancellationToken)).Any()
                && await db.Shops.AnyAsync(cancellationToken);
        }
        catch (SqliteException)
        {
            return false;
        }
    }
}
