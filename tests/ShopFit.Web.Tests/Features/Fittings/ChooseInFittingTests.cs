using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class ChooseInFittingTests : IAsyncLifetime
{
    private TestShop _shop = null!;
    private Guid _fitting;
    private Guid _pair;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        var maker = await _shop.HasAsync(Maker.Of(Guid.CreateVersion7(), _shop.ShopId, "Thistlefen Lastworks"));
        var model = await _shop.HasAsync(ShoeModel.Of(Guid.CreateVersion7(), _shop.ShopId, maker.Id, "Moorlace", "pointe", "paste"));
        var item = await _shop.HasAsync(Item.Of(Guid.CreateVersion7(), _shop.ShopId, "M-38", "Moorlace 38", ItemCategories.Shoes, 5950));
        await _shop.HasAsync(ShoeSize.Of(item.Id, _shop.ShopId, model.Id, "eu", 38, "", "", "", new FormAsGiven(), leadTimeDays: 28));
        _pair = item.Id;
        _fitting = (await _shop.HasAsync(FittingRecord.Of(Guid.CreateVersion7(), _shop.Fitter, null, "pointe", _shop.Clock.GetUtcNow(), 14, Sex.Female))).Id;
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Each_choice_is_a_row_and_the_newest_holds()
    {
        await ChooseAsync(new(_fitting, _pair, Pads: null, Extras: []));
        _shop.Clock.Advance(TimeSpan.FromSeconds(1));
        PadUnderFoot[] pads = [new(Side.Left, "heel-cushion")];

        Assert.IsType<ChooseInFittingOutcome.Kept>(await ChooseAsync(new(_fitting, _pair, pads, Extras: [], OverruleReason: "softer")));

        await using var db = _shop.CreateDbContext();
        var rows = await db.FittingChoices.OrderBy(row => row.ChosenAt).ToListAsync(Stop);
        Assert.Equal(2, rows.Count);
        Assert.Null(rows[0].Chosen().Pads);
        Assert.Equal(pads, rows[1].Chosen().Pads);
        Assert.Equal("softer", rows[1].OverruleReason);
    }

    [Fact]
    public async Task What_cannot_be_sold_is_refused_and_not_kept()
    {
        ChosenForFitting good = new(_fitting, _pair, Pads: null, Extras: []);
        (ChosenForFitting, SellProblem)[] bad =
        [
            (good with { SizeId = Guid.CreateVersion7() }, SellProblem.PairMissing),
            (good with { Pads = [new(Side.Left, "felt-hat")] }, SellProblem.PadUnknown),
            (good with { Pads = [new(Side.Left, "toe-cap"), new(Side.Left, "toe-cap")] }, SellProblem.PadTwice),
            (good with { Extras = [new(Guid.CreateVersion7(), 1)] }, SellProblem.ItemMissing),
            (good with { Extras = [new(_pair, 0)] }, SellProblem.Quantity),
            (good with { AdviceNote = new string('x', SellFittingRequest.LongestNote + 1) }, SellProblem.NoteTooLong),
        ];

        foreach (var (chosen, problem) in bad)
        {
            Assert.Equal(problem, Assert.IsType<ChooseInFittingOutcome.Invalid>(await ChooseAsync(chosen)).Problem);
        }

        await using var db = _shop.CreateDbContext();
        Assert.False(await db.FittingChoices.AnyAsync(Stop));
    }

    [Fact]
    public async Task Nothing_is_chosen_in_a_closed_fitting_and_what_was_shown_of_the_pair_is_kept()
    {
        await ChooseAsync(new(_fitting, _pair, [new(Side.Right, "toe-cap")], Extras: []));
        await new DecideFitting(_shop.Writes, new ShoesInMemory(), _shop.Clock).RunAsync(
            _shop.Fitter, Guid.CreateVersion7(), new(_fitting, DecisionKinds.NotToday, NotTodayReasons.Price, ""), Stop);

        Assert.IsType<ChooseInFittingOutcome.NotOpen>(await ChooseAsync(new(_fitting, _pair, Pads: null, Extras: [])));

        await using var db = _shop.CreateDbContext();
        var snapshot = await db.FittingSnapshots.SingleAsync(Stop);
        Assert.Equal([new PadUnderFoot(Side.Right, "toe-cap")], PadsAsJson.Read(snapshot.PadsJson));
        Assert.InRange(snapshot.ChanceOfFit!.Value, 0, 1);
    }

    private Task<ChooseInFittingOutcome> ChooseAsync(ChosenForFitting chosen) =>
        new ChooseInFitting(_shop.Writes, new ShoesInMemory(), _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), chosen, Stop);
}
