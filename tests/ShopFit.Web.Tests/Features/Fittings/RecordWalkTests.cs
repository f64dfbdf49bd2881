using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class RecordWalkTests : IAsyncLifetime
{
    private SellingShop _selling = null!;

    private TestShop Shop => _selling.Shop;

    public async ValueTask InitializeAsync() => _selling = await SellingShop.OpenAsync();

    public ValueTask DisposeAsync() => _selling.DisposeAsync();

    [Fact]
    public async Task The_pairs_that_were_fetched_wait_in_the_order_of_the_list()
    {
        var (wren, finch) = (await SizeAsync("W-38"), await SizeAsync("F-38"));

        Assert.IsType<RecordWalkOutcome.Recorded>(await WalkAsync(finch, wren));

        var tries = await TriesAsync();
        Assert.Equal([finch, wren], tries.Waiting);
        Assert.Equal(Shop.Clock.GetUtcNow(), Assert.Single(tries.Walks).At);
    }

    [Fact]
    public async Task The_same_command_twice_is_one_walk()
    {
        var (wren, command) = (await SizeAsync("W-38"), Guid.CreateVersion7());

        await RecordAsync(command, [wren]);
        await RecordAsync(command, [wren]);

        Assert.Single((await TriesAsync()).Walks);
    }

    [Fact]
    public async Task A_pair_that_was_tried_on_waits_no_longer()
    {
        var (wren, finch) = (await SizeAsync("W-38"), await SizeAsync("F-38"));
        await WalkAsync(wren, finch);

        await new RecordTryOn(Shop.Writes, _selling.Shoes, Shop.Clock).RunAsync(Shop.Fitter, Guid.CreateVersion7(), new(_selling.FittingId, wren, null, []), TestContext.Current.CancellationToken);

        Assert.Equal([finch], (await TriesAsync()).Waiting);
    }

    [Fact]
    public async Task A_walk_holds_one_to_three_pairs_each_once_that_are_on_file_and_of_this_kind()
    {
        var (wren, jazz) = (await SizeAsync("W-38"), await SizeAsync("J-38"));
        var others = new[] { await SizeAsync("W-39"), await SizeAsync("F-38") };

        Assert.Equal(
            [WalkProblem.Count, WalkProblem.Count, WalkProblem.Count, WalkProblem.NoSuchPair, WalkProblem.NoSuchPair],
            [
                await ProblemAsync(),
                await ProblemAsync(wren, wren),
                await ProblemAsync([wren, .. others, jazz]),
                await ProblemAsync(jazz),
                await ProblemAsync(Guid.CreateVersion7()),
            ]);
        Assert.Empty((await TriesAsync()).Walks);
    }

    [Fact]
    public async Task Nothing_is_fetched_for_broken_skin_or_under_twelve()
    {
        var wren = await SizeAsync("W-38");
        var broken = await _selling.OpenFittingAsync(ageYears: 13, skinBroken: true);
        var young = await _selling.OpenFittingAsync(ageYears: 11.9);

        Assert.Equal(
            [NoTryOn.SkinBroken, NoTryOn.ForLater],
            [
                Assert.IsType<RecordWalkOutcome.NotToday>(await RecordAsync(Guid.CreateVersion7(), [wren], broken)).Why,
                Assert.IsType<RecordWalkOutcome.NotToday>(await RecordAsync(Guid.CreateVersion7(), [wren], young)).Why,
            ]);
        await using var db = Shop.CreateDbContext();
        Assert.False(await db.FittingWalks.AnyAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_walk_taken_back_counts_no_longer_and_can_be_brought_back()
    {
        var wren = await SizeAsync("W-38");
        var walk = Guid.CreateVersion7();
        await RecordAsync(walk, [wren]);

        await WithdrawAsync(walk, countsAgain: false);
        Assert.Empty((await TriesAsync()).Waiting);

        await WithdrawAsync(walk, countsAgain: true);
        Assert.Equal([wren], (await TriesAsync()).Waiting);
    }

    [Fact]
    public async Task A_closed_fitting_takes_no_more_walks()
    {
        var wren = await SizeAsync("W-38");
        await new DecideFitting(Shop.Writes, _selling.Shoes, Shop.Clock).RunAsync(
            Shop.Fitter, Guid.CreateVersion7(), new(_selling.FittingId, DecisionKinds.NotToday, NotTodayReasons.Undecided, ""), TestContext.Current.CancellationToken);

        Assert.IsType<RecordWalkOutcome.NotOpen>(await WalkAsync(wren));
    }

    private Task<RecordWalkOutcome> WalkAsync(params Guid[] sizes) => RecordAsync(Guid.CreateVersion7(), sizes);

    private async Task<WalkProblem> ProblemAsync(params Guid[] sizes) => Assert.IsType<RecordWalkOutcome.Invalid>(await WalkAsync(sizes)).Problem;

    private Task<RecordWalkOutcome> RecordAsync(Guid command, IReadOnlyList<Guid> sizes, Guid? fitting = null) =>
        new RecordWalk(Shop.Writes, _selling.Shoes, Shop.Clock).RunAsync(Shop.Fitter, command, fitting ?? _selling.FittingId, sizes, TestContext.Current.CancellationToken);

    private Task<WithdrawWalkOutcome> WithdrawAsync(Guid walk, bool countsAgain) =>
        new WithdrawWalk(Shop.Writes, Shop.Clock).RunAsync(Shop.Fitter, Guid.CreateVersion7(), walk, countsAgain, TestContext.Current.CancellationToken);

    private async Task<SeenTries> TriesAsync() => (await new FittingQueries(Shop.Reads).SeeAsync(_selling.FittingId, TestContext.Current.CancellationToken))!.Tries;

    private async Task<Guid> SizeAsync(string sku) => (await _selling.RequestAsync(sku)).SizeId;
}
