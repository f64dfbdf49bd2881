using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace ShopFit.Web.Data;

/// <summary>The same database, for making and applying the migrations of SQLite only.</summary>
public sealed class SqliteMigrationsContext(DbContextOptions<SqliteMigrationsContext> options) : ShopDbContext(options);

/// <summary>Lets the migration tool build the model without a shop.</summary>
internal sealed class SqliteMigrationsContextFactory : IDesignTimeDbContextFactory<SqliteMigrationsContext>
{
    public SqliteMigrationsContext CreateDbContext(string[] args) =>
        new(ShopDatabase.Options<SqliteMigrationsContext>("design-time.db"));
}
