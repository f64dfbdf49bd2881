using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Microsoft.Extensions.Time.Testing;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Studios;

public sealed class StudioNamesOfDancersTests : IDisposable
{
    private const string Initial = "20261125111937_Initial";

    private readonly ShopFolder _folder = new(Directory.CreateTempSubdirectory("shopfit-test-").FullName);
    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 3, 14, 15, 9, 0, TimeSpan.Zero));

    [Fact]
    public async Task Names_that_stood_with_the_dancers_become_studios_once_however_they_were_written()
    {
        await HaveOldDancersAsync(("Tilly", "Larch"), ("Bo", "  LÀRCH "), ("Ottoline", "Harrow"), ("Ines", ""), ("Orla", " "));

        await PrepareAsync();
        await PrepareAsync();

        await using var db = await OpenAsync();
        var found = await (
            from dancer in db.Dancers
            join studio in db.Studios on dancer.StudioId equals studio.Id into studios
            from studio in studios.DefaultIfEmpty()
            orderby dancer.Name
            select new { dancer.Name, Studio = studio == null ? "" : studio.NameKey }).ToListAsync(TestContext.Current.CancellationToken);
        Assert.Equal(
            [("Bo", "larch"), ("Ines", ""), ("Orla", ""), ("Ottoline", "harrow"), ("Tilly", "larch")],
            found.Select(row => (row.Name, row.Studio)));
        Assert.Equal(2, await db.Studios.CountAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_program_killed_between_the_two_shapes_loses_no_name()
    {
        await HaveOldDancersAsync(("Tilly", "Larch"));
        await using (var migrations = Migrations())
        {
            await StudioNamesOfDancers.SetAsideAsync(migrations, TestContext.Current.CancellationToken);
            await migrations.Database.MigrateAsync(TestContext.Current.CancellationToken);
        }

        await PrepareAsync();

        await using var db = await OpenAsync();
        Assert.Equal("Larch", (await db.Studios.SingleAsync(TestContext.Current.CancellationToken)).Name);
        Assert.NotNull((await db.Dancers.SingleAsync(TestContext.Current.CancellationToken)).StudioId);
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder.Path, recursive: true);
    }

    private Task PrepareAsync() => new ShopPreparation(_folder, _clock).RunAsync(TestContext.Current.CancellationToken);

    private SqliteMigrationsContext Migrations() => new(ShopDatabase.Options<SqliteMigrationsContext>(_folder.DatabaseFile, SqliteOpenMode.ReadWriteCreate));

    private async Task<ShopDbContext> OpenAsync()
    {
        var db = new ShopDbContext(ShopDatabase.Options<ShopDbContext>(_folder.DatabaseFile));
        db.ShopId = (await db.Shops.SingleAsync(TestContext.Current.CancellationToken)).Id;
        return db;
    }

    private async Task HaveOldDancersAsync(params (string Name, string Studio)[] dancers)
    {
        await using var db = Migrations();
        await db.GetService<IMigrator>().MigrateAsync(Initial, TestContext.Current.CancellationToken);
        var shopId = Guid.CreateVersion7();
        await db.Database.ExecuteSqlAsync(
            $"""
            INSERT INTO "Shops" ("Id", "Name", "Address", "Contact", "TimeZone", "Currency", "Paper", "Units", "SizeSystemShown", "PricesIncludeTax", "ReturnDays", "ShelfVersion")
            VALUES ({shopId}, 'Oakes', '', '', 'Etc/UTC', 'EUR', 'A4', 'mm', 'eu', 1, 14, 0)
            """,
            TestContext.Current.CancellationToken);
        foreach (var (name, studio) in dancers)
        {
            await db.Database.ExecuteSqlAsync(
                $"""
                INSERT INTO "Dancers" ("Id", "ShopId", "Name", "KnownAs", "Studio", "Teacher", "Language")
                VALUES ({Guid.CreateVersion7()}, {shopId}, {name}, '', {studio}, '', 'en')
                """,
                TestContext.Current.CancellationToken);
        }
    }
}
