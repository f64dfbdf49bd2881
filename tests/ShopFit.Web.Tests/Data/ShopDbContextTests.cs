using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Support;

namespace ShopFit.Web.Data;

public sealed class ShopDbContextTests : IAsyncLifetime
{
    // The shops themselves, and the keys that protect cookies of all of them.
    private static readonly Type[] OfNoShop = [typeof(Shop), typeof(DataProtectionKey)];

    private TestShop _shop = null!;

    public async ValueTask InitializeAsync() => _shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Theory]
    [InlineData("journal_mode", "wal")]
    [InlineData("synchronous", "2")] // FULL, https://www.sqlite.org/pragma.html#pragma_synchronous
    [InlineData("foreign_keys", "1")]
    [InlineData("busy_timeout", "5000")]
    public async Task A_connection_that_the_shop_opens_is_safe(string pragma, string expected)
    {
        await using var db = _shop.CreateDbContext();
        await db.Database.OpenConnectionAsync(TestContext.Current.CancellationToken);
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = $"PRAGMA {pragma};";

        var value = await command.ExecuteScalarAsync(TestContext.Current.CancellationToken);

        Assert.Equal(expected, Convert.ToString(value, System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public async Task The_migrations_make_exactly_what_the_code_expects()
    {
        await using var db = new SqliteMigrationsContext(ShopDatabase.Options<SqliteMigrationsContext>(_shop.Folder.DatabaseFile));

        Assert.False(db.Database.HasPendingModelChanges());
        Assert.Empty(await db.Database.GetPendingMigrationsAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Every_entity_belongs_to_a_shop_and_is_filtered_by_it()
    {
        using var db = _shop.CreateDbContext();

        Assert.Empty(
            from entity in db.Model.GetEntityTypes()
            where !OfNoShop.Contains(entity.ClrType) && !IsOfIdentity(entity.ClrType)
            where !entity.ClrType.IsAssignableTo(typeof(IShopRow)) || entity.FindDeclaredQueryFilter(ShopDbContext.ShopFilter) is null
            select entity.ClrType.Name);
    }

    [Fact]
    public void Every_entity_has_a_configuration()
    {
        using var db = _shop.CreateDbContext();
        var configured = typeof(ShopDbContext).Assembly.GetTypes()
            .SelectMany(type => type.GetInterfaces())
            .Where(type => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IEntityTypeConfiguration<>))
            .Select(type => type.GetGenericArguments()[0])
            .ToHashSet();

        Assert.Empty(
            from entity in db.Model.GetEntityTypes()
            where entity.ClrType.Assembly == typeof(ShopDbContext).Assembly && !configured.Contains(entity.ClrType)
            select entity.ClrType.Name);
    }

    [Fact]
    public async Task A_shop_does_not_see_the_rows_of_another()
    {
        await _shop.HasAsync(Maker.Of(Guid.CreateVersion7(), Guid.CreateVersion7(), "Somebody else's"));
        await _shop.HasAsync(Maker.Of(Guid.CreateVersion7(), _shop.ShopId, "Ours"));

        await using var db = await _shop.Reads.OpenAsync(TestContext.Current.CancellationToken);
        Assert.Equal("Ours", (await db.Makers.SingleAsync(TestContext.Current.CancellationToken)).Name);
    }

    [Fact]
    public async Task A_context_that_was_told_no_shop_sees_no_rows()
    {
        await _shop.HasAsync(Maker.Of(Guid.CreateVersion7(), _shop.ShopId, "Ours"));

        await using var db = _shop.CreateDbContext();
        db.ShopId = Guid.Empty;
        Assert.False(await db.Makers.AnyAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Moments_are_kept_as_utc_to_the_microsecond_and_can_be_ordered()
    {
        var noon = new DateTimeOffset(2026, 3, 14, 12, 0, 0, TimeSpan.FromHours(5.5)).AddTicks(12_345_678);
        await _shop.HasAsync(ApiKey.Of(Guid.CreateVersion7(), _shop.ShopId, "later", [2], noon.AddTicks(10)));
        await _shop.HasAsync(ApiKey.Of(Guid.CreateVersion7(), _shop.ShopId, "first", [1], noon));

        await using var db = _shop.CreateDbContext();
        var kept = await db.ApiKeys.OrderBy(key => key.CreatedAt).ToListAsync(TestContext.Current.CancellationToken);
        Assert.Equal(["first", "later"], kept.Select(key => key.Name));
        Assert.Equal((noon.AddTicks(-8), TimeSpan.Zero), (kept[0].CreatedAt, kept[0].CreatedAt.Offset));
    }

    [Fact]
    public async Task The_database_itself_refuses_to_sell_what_is_not_there()
    {
        var item = await _shop.HasAsync(Item.Of(Guid.CreateVersion7(), _shop.ShopId, "A-1", "A thing", ItemCategories.Pads));
        var place = await _shop.HasAsync(ShelfPlace.Of(Guid.CreateVersion7(), _shop.ShopId, "B3"));
        await _shop.HasAsync(StockLevel.Of(Guid.CreateVersion7(), _shop.ShopId, item.Id, place.Id, onHand: 1));

        await using var db = _shop.CreateDbContext();
        await Assert.ThrowsAsync<Microsoft.Data.Sqlite.SqliteException>(() => db.StockLevels.ExecuteUpdateAsync(
            set => set.SetProperty(level => level.OnHand, level => level.OnHand - 2), TestContext.Current.CancellationToken));
        await Assert.ThrowsAsync<Microsoft.Data.Sqlite.SqliteException>(() => db.StockLevels.ExecuteUpdateAsync(
            set => set.SetProperty(level => level.Reserved, 2), TestContext.Current.CancellationToken));
    }

    private static bool IsOfIdentity(Type type) =>
        type == typeof(Person) || type.Namespace!.StartsWith("Microsoft.AspNetCore.Identity", StringComparison.Ordinal);
}
