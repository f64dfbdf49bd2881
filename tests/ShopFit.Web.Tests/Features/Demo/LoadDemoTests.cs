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
        Assert.Equal((2_855, 150, 134, 73), (before.Sizes, before.Dancers, before.Fittings, before.Sales));
        await using var db = _shop.CreateDbContext();
        Assert.Equal("Osselby Lane", (await db.Shops.SingleAsync(Stop)).Name);
        Assert.Equal(4, await db.Fittings.CountAsync(fitting => fitting.ClosedAt == null, Stop));
        Assert.Equal((before.Sales, before.Sales), (
            await db.Papers.CountAsync(paper => paper.Kind == PaperKinds.TakeHomeSheet, Stop),
            await db.SaleReceipts.CountAsync(Stop)));
        Assert.All(await db.ShoeModels.ToListAsync(Stop), model => Assert.NotNull(model.Construction));
    }

    [Fact]
    public async Task History_ends_today_and_the_shelf_is_as_the_files_say()
    {
        await OpenAsync();

        var files = new DemoFiles();
        var history = files.History();
        var years = files.Years();
        await using var db = _shop.CreateDbContext();
        var lived = years.From(new DateTimeOffset(history.AsOf.AddDays(-LoadDemo.DaysLived), TimeOnly.MinValue, TimeSpan.Zero));
        Assert.Equal(lived.Visits.Count + history.Fittings.Count, await db.Fittings.CountAsync(Stop));
        var days = DateOnly.FromDateTime(_shop.Clock.GetUtcNow().UtcDateTime).DayNumber - history.AsOf.DayNumber;
        var closed = history.Fittings.Select(fitting => (DateTimeOffset?)fitting.ClosedAt).Concat(years.Visits.Select(visit => visit.ClosedAt)).Max();
        Assert.Equal(closed!.Value.AddDays(days), (await db.Fittings.OrderByDescending(fitting => fitting.ClosedAt).FirstAsync(Stop)).ClosedAt);
        Assert.All(await db.Fittings.ToListAsync(Stop), fitting => Assert.True(fitting.OpenedAt < _shop.Clock.GetUtcNow()));
        Assert.Equal(
            history.Dancers.Concat(years.Dancers).Select(dancer => (dancer.Name, (DateOnly?)dancer.BirthDate.AddDays(days))).Order(),
            (await db.Dancers.ToListAsync(Stop)).Select(dancer => (dancer.Name, dancer.BirthDate)).Order());

        var onHand = await (from level in db.StockLevels join item in db.Items on level.ItemId equals item.Id join place in db.ShelfPlaces on level.PlaceId equals place.Id
                            where level.OnHand > 0
                            select new { item.Code, level.OnHand, Place = place.Code }).ToListAsync(Stop);
        var places = files.Places();
        var delivered = years.Deliveries.Where(delivery => places.ContainsKey(delivery.Code)).Sum(delivery => delivery.Pieces);
        var sold = years.Visits.Count(visit => visit.Decision?.Kind == DecisionKinds.Sold);
        Assert.Equal(1_100 + delivered - sold, onHand.Where(row => places.ContainsKey(row.Code)).Sum(row => row.OnHand));
        Assert.All(onHand.Where(row => places.ContainsKey(row.Code)), row => Assert.Equal(places[row.Code], row.Place));
        Assert.All(await db.FittingDecisions.Where(decision => decision.Kind == DecisionKinds.Sold).ToListAsync(Stop), decision => Assert.NotEmpty(decision.Why));
    }

    [Fact]
    public async Task What_stands_on_the_shelf_is_what_came_and_went_and_money_is_that_of_the_lines()
    {
        await OpenAsync();

        await using var db = _shop.CreateDbContext();
        var ledger = (await db.LedgerLines.ToListAsync(Stop)).GroupBy(line => (line.ItemId, line.PlaceId))
            .ToDictionary(place => place.Key, place => place.OrderBy(line => line.At).ThenByDescending(line => line.Change).Select(line => line.Change).ToList());
        var levels = await db.StockLevels.ToListAsync(Stop);
        Assert.Equal(ledger.Count, levels.Count);
        Assert.All(levels, level => Assert.Equal(ledger[(level.ItemId, level.PlaceId)].Sum(), level.OnHand));
        Assert.All(levels, level => Assert.True(level.OnHand >= 0));

        var lines = (await db.SaleLines.ToListAsync(Stop)).ToLookup(line => line.SaleId);
        var tracked = await db.Items.Where(item => item.TracksStock).Select(item => item.Id).ToHashSetAsync(Stop);
        Assert.All(await db.Sales.ToListAsync(Stop), sale =>
        {
            Assert.Equal(lines[sale.Id].Sum(line => line.TotalMinor), sale.TotalMinor);
            Assert.Equal(lines[sale.Id].Sum(line => line.TaxMinor), sale.TaxMinor);
        });
        Assert.Equal(
            -lines.SelectMany(sale => sale).Where(line => tracked.Contains(line.ItemId)).Sum(line => line.Quantity),
            await db.LedgerLines.Where(line => line.SaleId != null).SumAsync(line => line.Change, Stop));
    }

    [Fact]
    public async Task Receipts_are_numbered_without_a_gap_in_the_order_of_the_sales()
    {
        await OpenAsync();

        await using var db = _shop.CreateDbContext();
        var receipts = await (from receipt in db.SaleReceipts join sale in db.Sales on receipt.SaleId equals sale.Id select new { receipt.Year, receipt.Number, sale.SoldAt }).ToListAsync(Stop);
        Assert.All(receipts.GroupBy(receipt => receipt.Year), year =>
            Assert.Equal(Enumerable.Range(1, year.Count()), year.OrderBy(receipt => receipt.SoldAt).ThenBy(receipt => receipt.Number).Select(receipt => receipt.Number)));
    }

    // Twelve: Weiss, Rist and Grossman 2009, J Dance Med Sci 13(3): 90-92, rule 1.
    [Fact]
    public async Task No_child_is_measured_without_a_yes_and_no_pointe_shoe_is_sold_before_twelve()
    {
        await OpenAsync();

        await using var db = _shop.CreateDbContext();
        var consents = (await db.Consents.ToListAsync(Stop)).ToLookup(consent => consent.DancerId);
        var dancers = await db.Dancers.ToDictionaryAsync(dancer => dancer.Id, Stop);
        var fittings = await db.Fittings.ToListAsync(Stop);
        Assert.All(fittings.Where(fitting => fitting.AgeYears < 18), fitting =>
        {
            Assert.NotNull(dancers[fitting.DancerId!.Value].GuardianId);
            Assert.Contains(consents[fitting.DancerId.Value], consent => consent.GivenBy == "guardian" && consent.GivenAt <= fitting.OpenedAt);
        });
        var sold = await db.FittingDecisions.Where(decision => decision.Kind == DecisionKinds.Sold).Select(decision => decision.FittingId).ToHashSetAsync(Stop);
        Assert.All(fittings.Where(fitting => fitting.Kind == "pointe" && sold.Contains(fitting.Id)), fitting => Assert.True(fitting.AgeYears >= 12));
        Assert.All(fittings, fitting => Assert.InRange(fitting.AgeYears!.Value, 5, 60.99));
        var kinds = await (from size in db.ShoeSizes join model in db.ShoeModels on size.ModelId equals model.Id select new { size.Id, model.Kind }).ToDictionaryAsync(size => size.Id, size => size.Kind, Stop);
        var kindOf = fittings.ToDictionary(fitting => fitting.Id, fitting => fitting.Kind);
        Assert.All(await db.FittingTryOns.ToListAsync(Stop), tryOn => Assert.Equal(kindOf[tryOn.FittingId], kinds[tryOn.SizeId]));
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
