using System.Diagnostics;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Support;

namespace ShopFit.Web.Data;

public sealed class KilledInTheMiddleTests : IAsyncLifetime
{
    private TestShop _shop = null!;
    private Item _item = null!;
    private ShelfPlace _place = null!;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        _item = await _shop.HasAsync(Item.Of(Guid.CreateVersion7(), _shop.ShopId, "A-1", "A thing", ItemCategories.Pads));
        _place = await _shop.HasAsync(ShelfPlace.Of(Guid.CreateVersion7(), _shop.ShopId, "B3"));
        await _shop.HasAsync(StockLevel.Of(Guid.CreateVersion7(), _shop.ShopId, _item.Id, _place.Id, onHand: 5));
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task What_was_acknowledged_is_kept_and_what_was_not_is_gone()
    {
        using var till = HalfWayTill.Start(_shop.Folder, _shop.ShopId, _item.Id, _place.Id);
        Assert.Equal(HalfWayTill.Acknowledged, await till.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken));
        Assert.Equal(HalfWayTill.HalfWay, await till.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken));

        till.Kill();
        await till.WaitForExitAsync(TestContext.Current.CancellationToken);

        SqliteConnection.ClearAllPools();
        await using var db = _shop.CreateDbContext();
        Assert.Equal(4, await db.StockLevels.Select(level => level.OnHand).SingleAsync(TestContext.Current.CancellationToken));
        Assert.Equal(1, await db.LedgerLines.CountAsync(TestContext.Current.CancellationToken));
        Assert.Equal(1, await db.Commands.CountAsync(TestContext.Current.CancellationToken));
        Assert.Equal(
            "ok",
            await db.Database.SqlQuery<string>($"SELECT integrity_check AS Value FROM pragma_integrity_check").SingleAsync(TestContext.Current.CancellationToken));
    }
}
