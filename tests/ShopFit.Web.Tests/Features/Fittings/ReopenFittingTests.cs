using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class ReopenFittingTests : IAsyncLifetime
{
    private SellingShop _selling = null!;

    private TestShop Shop => _selling.Shop;

    public async ValueTask InitializeAsync() => _selling = await SellingShop.OpenAsync();

    public ValueTask DisposeAsync() => _selling.DisposeAsync();

    [Fact]
    public async Task An_ending_without_a_sale_is_undone_and_stays_as_a_withdrawn_row()
    {
        await EndAsync();
        Shop.Clock.Advance(ReopenFitting.Within);

        Assert.IsType<ReopenFittingOutcome.Reopened>(await ReopenAsync());

        await using var db = Shop.CreateDbContext();
        Assert.Null((await db.Fittings.SingleAsync(TestContext.Current.CancellationToken)).ClosedAt);
        Assert.Equal(Shop.Clock.GetUtcNow(), (await db.FittingDecisions.SingleAsync(TestContext.Current.CancellationToken)).WithdrawnAt);
    }

    [Fact]
    public async Task After_a_minute_it_stays_closed()
    {
        await EndAsync();
        Shop.Clock.Advance(ReopenFitting.Within + TimeSpan.FromMilliseconds(1));

        Assert.IsType<ReopenFittingOutcome.TooLate>(await ReopenAsync());
    }

    [Fact]
    public async Task A_fitting_that_ended_with_a_sale_is_not_opened_by_this()
    {
        Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(await _selling.RequestAsync("W-38")));

        Assert.IsType<ReopenFittingOutcome.TooLate>(await ReopenAsync());
    }

    [Fact]
    public async Task An_open_fitting_has_nothing_to_undo() => Assert.IsType<ReopenFittingOutcome.TooLate>(await ReopenAsync());

    private Task<DecideFittingOutcome> EndAsync() => new DecideFitting(Shop.Writes, _selling.Shoes, Shop.Clock).RunAsync(
        Shop.Fitter, Guid.CreateVersion7(), new(_selling.FittingId, DecisionKinds.NotToday, NotTodayReasons.Undecided, ""), TestContext.Current.CancellationToken);

    private Task<ReopenFittingOutcome> ReopenAsync() =>
        new ReopenFitting(Shop.Writes, Shop.Clock).RunAsync(Shop.Fitter, Guid.CreateVersion7(), _selling.FittingId, TestContext.Current.CancellationToken);
}
