using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.Sales;

namespace ShopFit.Web.Features.Fittings;

public sealed class OverruleTests : IAsyncLifetime
{
    private SellingShop _selling = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _selling = await SellingShop.OpenAsync();

    public ValueTask DisposeAsync() => _selling.DisposeAsync();

    [Fact]
    public async Task A_sale_keeps_the_reason_that_was_tapped_and_what_was_suggested_first()
    {
        var taken = await _selling.RequestAsync("W-38");
        var suggested = (await _selling.RequestAsync("W-39")).SizeId;
        Assert.IsType<ChooseInFittingOutcome.Kept>(await ChooseAsync(Chosen(taken.SizeId) with { OverruleCode = OverruleReasons.Teacher, SuggestedSizeId = suggested }));

        Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(taken));

        await using var db = _selling.Shop.CreateDbContext();
        Assert.Equal(OverruleReasons.Teacher, (await db.FittingDecisions.SingleAsync(Stop)).OverruleCode);
        var snapshot = await db.FittingSnapshots.SingleAsync(Stop);
        Assert.Equal(suggested, snapshot.SuggestedSizeId);
        Assert.InRange(snapshot.SuggestedChance!.Value, 0, 1);
    }

    [Fact]
    public async Task The_reason_for_one_pair_is_not_the_reason_for_another()
    {
        Assert.IsType<ChooseInFittingOutcome.Kept>(await ChooseAsync(Chosen((await _selling.RequestAsync("W-39")).SizeId) with { OverruleCode = OverruleReasons.Price }));

        Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(await _selling.RequestAsync("W-38")));

        await using var db = _selling.Shop.CreateDbContext();
        Assert.Equal("", (await db.FittingDecisions.SingleAsync(Stop)).OverruleCode);
        Assert.Null((await db.FittingSnapshots.SingleAsync(Stop)).SuggestedSizeId);
    }

    [Fact]
    public async Task A_smaller_size_that_was_asked_for_is_kept_and_never_printed()
    {
        var taken = await _selling.RequestAsync("W-38");
        await ChooseAsync(Chosen(taken.SizeId) with { Asked = new AskedSize("36 asked", "Wren 38") });

        Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(taken));

        await using var db = _selling.Shop.CreateDbContext();
        Assert.Equal(new AskedSize("36 asked", "Wren 38"), (await db.FittingChoices.SingleAsync(Stop)).Chosen().Asked);
        Assert.All(await db.Papers.ToListAsync(Stop), paper => Assert.DoesNotContain("36 asked", paper.FactsJson, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_reason_or_a_size_that_says_nothing_is_refused_and_not_kept()
    {
        var good = Chosen((await _selling.RequestAsync("W-38")).SizeId);
        (ChosenForFitting, SellProblem)[] bad =
        [
            (good with { OverruleCode = "weather" }, SellProblem.ReasonUnknown),
            (good with { Asked = new AskedSize(" ", "Wren 38") }, SellProblem.AskedSizeUnclear),
            (good with { Asked = new AskedSize(new string('3', AskedSize.LongestLabel + 1), "Wren 38") }, SellProblem.AskedSizeUnclear),
            (good with { SuggestedSizeId = Guid.CreateVersion7() }, SellProblem.PairMissing),
        ];

        foreach (var (chosen, problem) in bad)
        {
            Assert.Equal(problem, Assert.IsType<ChooseInFittingOutcome.Invalid>(await ChooseAsync(chosen)).Problem);
        }

        await using var db = _selling.Shop.CreateDbContext();
        Assert.Empty(await db.FittingChoices.ToListAsync(Stop));
    }

    private ChosenForFitting Chosen(Guid sizeId) => new(_selling.FittingId, sizeId, Pads: null, Extras: []);

    private Task<ChooseInFittingOutcome> ChooseAsync(ChosenForFitting chosen) =>
        new ChooseInFitting(_selling.Shop.Writes, _selling.Shoes, _selling.Shop.Clock).RunAsync(_selling.Shop.Fitter, Guid.CreateVersion7(), chosen, Stop);
}
