using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Demo;

public sealed class LoadDemoTests : IAsyncLifetime
{
    private TestShop _shop = null!;
    private ServiceProvider _services = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        _services = new ServiceCollection().AddShop(_shop.Folder).AddSingleton<TimeProvider>(_shop.Clock).BuildServiceProvider();
    }

    public async ValueTask DisposeAsync()
    {
        await _services.DisposeAsync();
        await _shop.DisposeAsync();
    }

    [Fact]
    public async Task The_demo_shop_is_whole_and_loading_it_again_changes_nothing()
    {
        var watch = Stopwatch.StartNew();
        await OpenAsync();
        TestContext.Current.SendDiagnosticMessage($"demo loaded in {watch.Elapsed.TotalSeconds:0.0} s");
        var before = await CountsAsync();

        _shop.Clock.Advance(TimeSpan.FromDays(3));
        await OpenAsync();

        Assert.Equal(before, await CountsAsync());
        Assert.Equal((2_855, 13, 16, 13), (before.Sizes, before.Dancers, before.Fittings, before.Sales));
        await using var db = _shop.CreateDbContext();
        Assert.Equal("Osselby Lane", (await db.Shops.SingleAsync(Stop)).Name);
        Assert.Equal(0, await db.Fittings.CountAsync(fitting => fitting.ClosedAt == null, Stop));
        Assert.Equal((before.Sales, before.Sales), (
            await db.Papers.CountAsync(paper => paper.Kind == PaperKinds.TakeHomeSheet, Stop),
            await db.SaleReceipts.CountAsync(Stop)));
        Assert.Equal(await db.StockLevels.SumAsync(level => level.OnHand, Stop), await db.LedgerLines.SumAsync(line => line.Change, Stop));
        Assert.All(await db.ShoeModels.ToListAsync(Stop), model => Assert.NotNull(model.Construction));
    }

    [Fact]
    public async Task History_ends_today_and_the_shelf_is_as_the_files_say()
    {
        await OpenAsync();

        var files = new DemoFiles();
        var history = files.History();
        await using var db = _shop.CreateDbContext();
        var days = DateOnly.FromDateTime(_shop.Clock.GetUtcNow().UtcDateTime).DayNumber - history.AsOf.DayNumber;
        Assert.Equal(history.Fittings.Max(fitting => fitting.ClosedAt).AddDays(days), (await db.Fittings.OrderByDescending(fitting => fitting.ClosedAt).FirstAsync(Stop)).ClosedAt);
        Assert.Equal(
            history.Dancers.Select(dancer => (dancer.Name, (DateOnly?)dancer.BirthDate.AddDays(days))).Order(),
            (await db.Dancers.ToListAsync(Stop)).Select(dancer => (dancer.Name, dancer.BirthDate)).Order());

        var onHand = await (from level in db.StockLevels join item in db.Items on level.ItemId equals item.Id join place in db.ShelfPlaces on level.PlaceId equals place.Id
                            where level.OnHand > 0
                            select new { item.Code, level.OnHand, Place = place.Code }).ToListAsync(Stop);
        var places = files.Places();
        Assert.Equal(1_100, onHand.Where(row => places.ContainsKey(row.Code)).Sum(row => row.OnHand));
        Assert.All(onHand.Where(row => places.ContainsKey(row.Code)), row => Assert.Equal(places[row.Code], row.Place));
        Assert.All(await db.FittingDecisions.Where(decision => decision.Kind == DecisionKinds.Sold).ToListAsync(Stop), decision => Assert.NotEmpty(decision.Why));
    }

    private async Task OpenAsync()
    {
        await using var scope = _services.CreateAsyncScope();
        await _services.GetRequiredService<DemoShop>().OpenAsync(Stop);
    }

    private async Task<(int Sizes, int Dancers, int Fittings, int Sales, int Commands, int Lines)> CountsAsync()
    {
        await using var db = _shop.CreateDbContext();
        return (
            await db.ShoeSizes.CountAsync(Stop),
            await db.Dancers.CountAsync(Stop),
            await db.Fittings.CountAsync(Stop),
            await db.Sales.CountAsync(Stop),
            await db.Commands.CountAsync(Stop),
            await db.LedgerLines.CountAsync(Stop));
    }
}
