using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Settings;

public sealed class ChangeFitNumbersTests : IAsyncLifetime
{
    private const string LengthWeight = "bands.pointe.length.weight";

    private TestShop _shop = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private SettingsQueries Settings => new(_shop.ReadsOf(_shop.Manager));

    public async ValueTask InitializeAsync() => _shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task A_number_is_set_and_put_back_and_both_are_kept_with_who_when_and_why()
    {
        Assert.Equal(new ChangeFitNumbersOutcome.Changed(1), await RunAsync("toes matter more here", new FitNumberChange(LengthWeight, null, 5)));
        Assert.Equal(5, (await SeeAsync()).CriteriaOf("pointe")![0].Weight);

        _shop.Clock.Advance(TimeSpan.FromDays(2));
        Assert.Equal(new ChangeFitNumbersOutcome.Changed(1), await RunAsync("", new FitNumberChange(LengthWeight, 5, null)));

        Assert.Equal(FitDefaults.Standard.Fingerprint(), (await SeeAsync()).Fingerprint());
        var changes = await Settings.ChangesOfAsync("bands.pointe", 10, Stop);
        Assert.Equal([(LengthWeight, "5", null, ""), (LengthWeight, null, "5", "toes matter more here")], changes.Select(change => (change.Path, change.Before, change.After, change.Reason)));
        Assert.Equal(TimeSpan.FromDays(2), changes[0].At - changes[1].At);
        await using var db = _shop.CreateDbContext();
        Assert.Null((await db.Shops.SingleAsync(Stop)).FitOverridesJson);
    }

    [Fact]
    public async Task A_number_typed_as_its_default_is_at_its_default()
    {
        Assert.Equal(new ChangeFitNumbersOutcome.Changed(0), await RunAsync("why not", new FitNumberChange(LengthWeight, null, 3)));
        Assert.Empty((await Settings.FitAsync(Stop)).Own);
    }

    [Fact]
    public async Task Numbers_that_make_no_sense_together_are_refused_all_of_them()
    {
        var outcome = await RunAsync(
            "longer",
            new FitNumberChange("bands.pointe.length.ideal-from", null, 4),
            new FitNumberChange(LengthWeight, null, 5));

        var problem = Assert.Single(Assert.IsType<ChangeFitNumbersOutcome.Senseless>(outcome).Problems);
        Assert.Equal(FitProblemCode.LimitsOutOfOrder, problem.Code);
        Assert.Empty((await Settings.FitAsync(Stop)).Own);
        Assert.Empty(await Settings.ChangesOfAsync("bands.pointe", 10, Stop));
    }

    [Theory]
    [InlineData("bands.boots.length.weight", 1, FitProblemCode.UnknownNumber)]
    [InlineData(LengthWeight, double.NaN, FitProblemCode.NotFinite)]
    [InlineData(LengthWeight, double.NegativeInfinity, FitProblemCode.NotFinite)]
    [InlineData(LengthWeight, -1, FitProblemCode.OutOfRange)]
    [InlineData("score.most-correcting.value", 1.5, FitProblemCode.NotWhole)]
    public async Task Whatever_a_browser_sends_is_answered(string path, double value, FitProblemCode code)
    {
        var outcome = await RunAsync("a try", new FitNumberChange(path, null, value));

        Assert.Equal(code, Assert.Single(Assert.IsType<ChangeFitNumbersOutcome.Senseless>(outcome).Problems).Code);
    }

    [Fact]
    public async Task The_second_of_two_managers_at_one_number_is_told_and_another_number_does_not_disturb()
    {
        await RunAsync("the first", new FitNumberChange(LengthWeight, null, 5));

        var outcome = await RunAsync("the second", new FitNumberChange(LengthWeight, null, 4), new FitNumberChange("bands.pointe.box.weight", null, 1));
        Assert.Equal([LengthWeight], Assert.IsType<ChangeFitNumbersOutcome.ChangedMeanwhile>(outcome).Paths);

        Assert.IsType<ChangeFitNumbersOutcome.Changed>(await RunAsync("the second", new FitNumberChange("bands.pointe.box.weight", null, 1)));
        Assert.Equal([5, 1], (await SeeAsync()).CriteriaOf("pointe")!.Take(2).Select(criterion => criterion.Weight));
    }

    [Theory]
    [InlineData(" ")]
    [InlineData("long")]
    public async Task A_number_of_ones_own_needs_a_reason(string reason) =>
        Assert.IsType<ChangeFitNumbersOutcome.ReasonNotAllowed>(await RunAsync(reason == "long" ? new string('x', 501) : reason, new FitNumberChange(LengthWeight, null, 5)));

    [Fact]
    public async Task Something_kept_badly_is_told_and_stands_in_nobodys_way()
    {
        await using (var db = _shop.CreateDbContext())
        {
            (await db.Shops.SingleAsync(Stop)).OverrideFit($$"""{"{{LengthWeight}}":-7,"boots":1}""");
            await db.SaveChangesAsync(Stop);
        }

        Assert.Equal(FitDefaults.Standard.Fingerprint(), (await SeeAsync()).Fingerprint());
        Assert.Equal([FitProblemCode.OutOfRange, FitProblemCode.UnknownNumber], (await Settings.FitAsync(Stop)).Problems.Select(problem => problem.Code));

        await RunAsync("a better one", new FitNumberChange("readings.length.sd", null, 2));
        await RunAsync("", new FitNumberChange(LengthWeight, -7, null));
        await RunAsync("", new FitNumberChange("boots", 1, null));

        Assert.Equal(2, (await SeeAsync()).ReadingSd[0]);
        Assert.Empty((await Settings.FitAsync(Stop)).Problems);
    }

    [Fact]
    public async Task A_change_reaches_the_sizes_in_memory_at_once()
    {
        var memory = new ShoesInMemory();
        async Task<FitDefaults> NumbersAsync()
        {
            await using var db = _shop.CreateDbContext();
            return (await memory.SeeAsync(db, Stop)).Numbers;
        }

        string before = (await NumbersAsync()).Fingerprint();
        await RunAsync("wider bands", new FitNumberChange("score.fits-from.value", null, 0.4));

        Assert.Equal(0.4, (await NumbersAsync()).FitsFrom);
        await RunAsync("", new FitNumberChange("score.fits-from.value", 0.4, null));
        Assert.Equal(before, (await NumbersAsync()).Fingerprint());
    }

    [Fact]
    public async Task A_fitter_may_not() =>
        await Assert.ThrowsAsync<NotPermittedException>(() =>
            new ChangeFitNumbers(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), [new FitNumberChange(LengthWeight, null, 5)], "why", Stop));

    private Task<FitDefaults> SeeAsync() => new FitNumbers(_shop.Reads).SeeAsync(Stop);

    private Task<ChangeFitNumbersOutcome> RunAsync(string reason, params FitNumberChange[] changes) =>
        new ChangeFitNumbers(_shop.Writes, _shop.Clock).RunAsync(_shop.Manager, Guid.CreateVersion7(), changes, reason, Stop);
}
