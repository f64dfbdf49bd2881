using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class RecordReadingTests : IAsyncLifetime
{
    private TestShop _shop = null!;
    private FittingRecord _fitting = null!;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        _fitting = await _shop.HasAsync(FittingRecord.Of(Guid.CreateVersion7(), _shop.Fitter, dancerId: null, "pointe", _shop.Clock.GetUtcNow(), ageYears: 12.3, Sex.Female));
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Numbers_of_one_trait_add_up()
    {
        await ReadAsync([Side.Left], "length", 238.5);
        _shop.Clock.Advance(TimeSpan.FromSeconds(20));
        await ReadAsync([Side.Left], "length", 238);

        var seen = await SeeAsync();
        Assert.Equal([238.5, 238.0], seen.NumbersOf(Side.Left, Trait.Length).Select(reading => reading.Reading.Value));
    }

    [Fact]
    public async Task A_word_for_both_feet_is_a_row_for_each()
    {
        await ReadAsync([Side.Left, Side.Right], "toe-slope", 2, ReadingUnit.Word);

        var seen = await SeeAsync();
        Assert.Equal((2.0, 2.0), (seen.WordOf(Side.Left, Trait.ToeSlope)!.Reading.Value, seen.WordOf(Side.Right, Trait.ToeSlope)!.Reading.Value));
    }

    [Fact]
    public async Task A_word_takes_the_place_of_the_word_before_it_on_that_foot_only()
    {
        await ReadAsync([Side.Left, Side.Right], "toe-slope", 1, ReadingUnit.Word);
        await ReadAsync([Side.Left], "toe-slope", 2, ReadingUnit.Word);

        var seen = await SeeAsync();
        Assert.Equal((2.0, 1.0), (seen.WordOf(Side.Left, Trait.ToeSlope)!.Reading.Value, seen.WordOf(Side.Right, Trait.ToeSlope)!.Reading.Value));
        await using var db = _shop.CreateDbContext();
        Assert.Equal((3, 1), (
            await db.FittingReadings.CountAsync(TestContext.Current.CancellationToken),
            await db.FittingReadings.CountAsync(row => row.WithdrawnAt != null, TestContext.Current.CancellationToken)));
    }

    [Theory]
    [InlineData("length", 2385, ReadingUnit.Millimetres, null, ReadingProblemCode.OutOfRange)]
    [InlineData("ball-girth", 6, ReadingUnit.Size, "eu", ReadingProblemCode.WrongUnit)]
    [InlineData("length", 38, ReadingUnit.Size, null, ReadingProblemCode.SizeSystemMissing)]
    [InlineData("toe-slope", 3, ReadingUnit.Word, null, ReadingProblemCode.NotAWord)]
    public async Task What_cannot_be_a_reading_is_refused_and_changes_nothing(string trait, double value, ReadingUnit unit, string? system, ReadingProblemCode code)
    {
        var outcome = await ReadAsync([Side.Left], trait, value, unit, system);

        Assert.Equal(code, Assert.IsType<RecordReadingOutcome.Invalid>(outcome).Problem.Code);
        Assert.Empty((await SeeAsync()).Readings);
    }

    [Fact]
    public async Task A_closed_fitting_takes_no_more_readings()
    {
        await new DecideFitting(_shop.Writes, new ShoesInMemory(), _shop.Clock).RunAsync(
            _shop.Fitter, Guid.CreateVersion7(), new(_fitting.Id, DecisionKinds.NotToday, NotTodayReasons.Undecided, ""), TestContext.Current.CancellationToken);

        Assert.IsType<RecordReadingOutcome.NotOpen>(await ReadAsync([Side.Left], "length", 238));
    }

    [Fact]
    public async Task A_reading_taken_back_counts_no_longer_and_stays_on_file()
    {
        var recorded = Assert.IsType<RecordReadingOutcome.Recorded>(await ReadAsync([Side.Left], "length", 238));

        await new WithdrawReading(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), _fitting.Id, recorded.ReadingIds, TestContext.Current.CancellationToken);

        Assert.Empty((await SeeAsync()).Readings);
        await using var db = _shop.CreateDbContext();
        Assert.Equal(1, await db.FittingReadings.CountAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Undoing_a_withdrawal_gives_exactly_the_belief_that_was_held_before()
    {
        var recorded = Assert.IsType<RecordReadingOutcome.Recorded>(await ReadAsync([Side.Left, Side.Right], "length", 238));
        await ReadAsync([Side.Left], "length", 240);
        var before = await LengthAsync();
        await WithdrawAsync(recorded.ReadingIds);
        Assert.NotEqual(before, await LengthAsync());

        await RestoreAsync(recorded.ReadingIds);

        Assert.Equal(before, await LengthAsync());
    }

    [Fact]
    public async Task A_word_that_comes_back_takes_the_place_of_the_word_said_meanwhile()
    {
        var first = Assert.IsType<RecordReadingOutcome.Recorded>(await ReadAsync([Side.Left], "toe-slope", 0, ReadingUnit.Word));
        await WithdrawAsync(first.ReadingIds);
        await ReadAsync([Side.Left, Side.Right], "toe-slope", 2, ReadingUnit.Word);

        await RestoreAsync(first.ReadingIds);

        var seen = await SeeAsync();
        Assert.Equal([(Side.Left, 0.0), (Side.Right, 2.0)], seen.Readings.Select(row => (row.Reading.Foot, row.Reading.Value)).Order());
    }

    [Fact]
    public async Task Nothing_comes_back_into_a_closed_fitting()
    {
        var recorded = Assert.IsType<RecordReadingOutcome.Recorded>(await ReadAsync([Side.Left], "length", 238));
        await WithdrawAsync(recorded.ReadingIds);
        await new DecideFitting(_shop.Writes, new ShoesInMemory(), _shop.Clock).RunAsync(
            _shop.Fitter, Guid.CreateVersion7(), new(_fitting.Id, DecisionKinds.NotToday, NotTodayReasons.Undecided, ""), TestContext.Current.CancellationToken);

        Assert.IsType<RestoreReadingOutcome.NotOpen>(await RestoreAsync(recorded.ReadingIds));

        Assert.Empty((await SeeAsync()).Readings);
    }

    private Task<WithdrawReadingOutcome> WithdrawAsync(IReadOnlyList<Guid> readings) =>
        new WithdrawReading(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), _fitting.Id, readings, TestContext.Current.CancellationToken);

    private Task<RestoreReadingOutcome> RestoreAsync(IReadOnlyList<Guid> readings) =>
        new RestoreReading(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), _fitting.Id, readings, TestContext.Current.CancellationToken);

    private async Task<(double Mean, double Sd)> LengthAsync()
    {
        var belief = FittingBelief.Of((await SeeAsync()).Evidence, FitDefaults.Standard).Now.Belief;
        return (belief.Mean(Side.Left, Trait.Length), belief.Sd(Side.Left, Trait.Length));
    }

    private async Task<SeenFitting> SeeAsync() => (await new FittingQueries(_shop.Reads).SeeAsync(_fitting.Id, TestContext.Current.CancellationToken))!;

    private Task<RecordReadingOutcome> ReadAsync(IReadOnlyList<Side> feet, string trait, double value, ReadingUnit unit = ReadingUnit.Millimetres, string? system = null) =>
        new RecordReading(_shop.Writes, _shop.Clock).RunAsync(
            _shop.Fitter, Guid.CreateVersion7(), new(_fitting.Id, feet, trait, value, unit, system), TestContext.Current.CancellationToken);
}
