using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Time.Testing;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Data;

public sealed class ShopPreparationTests : IDisposable
{
    private readonly ShopFolder _folder = new(Path.Combine(Directory.CreateTempSubdirectory("shopfit-test-").FullName, "a folder to make"));
    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 3, 14, 15, 9, 0, TimeSpan.Zero));

    [Fact]
    public async Task A_new_folder_becomes_a_shop_with_roles()
    {
        await PrepareAsync();

        await using var db = Open();
        Assert.True(await ShopDatabase.IsReadyAsync(_folder, TestContext.Current.CancellationToken));
        Assert.Equal("The shop", (await db.Shops.SingleAsync(TestContext.Current.CancellationToken)).Name);
        Assert.Equal(Roles.All, await db.Roles.Select(role => role.Name!).OrderBy(name => name).ToListAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_second_start_changes_nothing()
    {
        await PrepareAsync();
        Guid first;
        await using (var db = Open())
        {
            first = (await db.Shops.SingleAsync(TestContext.Current.CancellationToken)).Id;
        }

        await PrepareAsync();

        await using var again = Open();
        Assert.Equal(first, (await again.Shops.SingleAsync(TestContext.Current.CancellationToken)).Id);
        Assert.False(Directory.Exists(_folder.Backups));
    }

    [Fact]
    public async Task Two_programs_that_start_at_once_make_one_shop()
    {
        // Real time, since one of them waits for the other.
        await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => new ShopPreparation(_folder, TimeProvider.System).RunAsync(CancellationToken.None))));

        await using var db = Open();
        Assert.Equal(1, await db.Shops.CountAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_lock_left_by_a_killed_program_stops_nobody()
    {
        // What the migrations of EF Core 10 leave on SQLite when they are killed half-way.
        Directory.CreateDirectory(_folder.Path);
        await ExecuteAsync("""
            CREATE TABLE "__EFMigrationsLock" ("Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY, "Timestamp" TEXT NOT NULL);
            INSERT INTO "__EFMigrationsLock" VALUES (1, '2026-03-13 09:00:00+00:00');
            """);

        await PrepareAsync();

        Assert.True(await ShopDatabase.IsReadyAsync(_folder, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_folder_that_another_program_holds_is_given_up_after_a_minute()
    {
        Directory.CreateDirectory(_folder.Path);
        await using var held = new FileStream(_folder.PreparationLock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);

        var preparing = PrepareAsync();
        while (!preparing.IsCompleted)
        {
            _clock.Advance(TimeSpan.FromSeconds(1));
            await Task.Yield();
        }

        var exception = await Assert.ThrowsAsync<TimeoutException>(() => preparing);
        Assert.Contains(_folder.DatabaseFile, exception.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_database_of_an_older_shape_is_copied_before_it_is_changed()
    {
        Directory.CreateDirectory(_folder.Path);
        await ExecuteAsync("""
            CREATE TABLE "__EFMigrationsHistory" ("MigrationId" TEXT NOT NULL CONSTRAINT "PK___EFMigrationsHistory" PRIMARY KEY, "ProductVersion" TEXT NOT NULL);
            INSERT INTO "__EFMigrationsHistory" VALUES ('20200101000000_Older', '10.0.15');
            CREATE TABLE "Kept" ("Word" TEXT NOT NULL);
            INSERT INTO "Kept" VALUES ('ours');
            """);

        await PrepareAsync();

        var copy = Assert.Single(Directory.GetFiles(_folder.Backups));
        Assert.Equal("before-update-20260314T150900.db", Path.GetFileName(copy));
        await using var connection = new SqliteConnection($"Data Source={copy};Pooling=False");
        await connection.OpenAsync(TestContext.Current.CancellationToken);
        await using var command = connection.CreateCommand();
        command.CommandText = """SELECT "Word" FROM "Kept";""";
        Assert.Equal("ours", await command.ExecuteScalarAsync(TestContext.Current.CancellationToken));
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(Path.GetDirectoryName(_folder.Path)!, recursive: true);
    }

    private Task PrepareAsync() => new ShopPreparation(_folder, _clock).RunAsync(TestContext.Current.CancellationToken);

    private ShopDbContext Open() => new(ShopDatabase.Options<ShopDbContext>(_folder.DatabaseFile));

    private async Task ExecuteAsync(string sql)
    {
        await using var connection = new SqliteConnection($"Data Source={_folder.DatabaseFile};Pooling=False");
        await connection.OpenAsync(TestContext.Current.CancellationToken);
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        await command.ExecuteNonQueryAsync(TestContext.Current.CancellationToken);
    }
}
