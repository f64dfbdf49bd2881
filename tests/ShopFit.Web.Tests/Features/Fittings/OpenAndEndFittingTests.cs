using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class OpenAndEndFittingTests : IAsyncLifetime
{
    private TestShop _shop = null!;

    public async ValueTask InitializeAsync() => _shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task A_child_is_not_measured_before_her_guardian_has_said_yes()
    {
        var dancer = await DancerAsync(new DateOnly(2014, 3, 1));

        Assert.IsType<OpenFittingOutcome.ConsentMissing>(await StartAsync(dancer));
        await _shop.HasAsync(Consent.Of(Guid.CreateVersion7(), _shop.Fitter, dancer, "guardian", _shop.Clock.GetUtcNow()));
        Assert.IsType<OpenFittingOutcome.Opened>(await StartAsync(dancer));
    }

    [Fact]
    public async Task Starting_twice_goes_on_with_the_fitting_that_is_open()
    {
        var dancer = await DancerAsync(new DateOnly(1994, 3, 1));

        Assert.Equal(await StartAsync(dancer), await StartAsync(dancer));
    }

    [Fact]
    public async Task Without_a_day_of_birth_somebody_says_grown_or_under_age_before_anything_is_measured()
    {
        Assert.IsType<OpenFittingOutcome.AgeNotSaid>(await StartAsync(await DancerAsync(null)));
        Assert.IsType<OpenFittingOutcome.ConsentMissing>(await StartAsync(await DancerAsync(null, underAge: true)));
        Assert.IsType<OpenFittingOutcome.Opened>(await StartAsync(await DancerAsync(null, underAge: false)));
    }

    [Fact]
    public async Task A_yes_that_was_taken_back_opens_no_fitting_until_it_holds_again()
    {
        var dancer = await DancerAsync(null, underAge: true);
        await _shop.HasAsync(Consent.Of(Guid.CreateVersion7(), _shop.Fitter, dancer, "guardian", _shop.Clock.GetUtcNow()));
        Assert.IsType<OpenFittingOutcome.Opened>(await StartAsync(dancer));

        var withdrawn = Assert.IsType<WithdrawConsentOutcome.Withdrawn>(
            await new WithdrawConsent(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), dancer, TestContext.Current.CancellationToken));
        Assert.IsType<OpenFittingOutcome.ConsentMissing>(await StartAsync(dancer));

        Assert.IsType<RestoreConsentOutcome.Restored>(
            await new RestoreConsent(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), dancer, withdrawn.ConsentIds, TestContext.Current.CancellationToken));
        Assert.IsType<OpenFittingOutcome.Opened>(await StartAsync(dancer));
    }

    [Fact]
    public async Task Not_today_says_why_and_closes_the_fitting()
    {
        var fitting = Assert.IsType<OpenFittingOutcome.Opened>(await StartAsync(await DancerAsync(null, underAge: false))).FittingId;

        Assert.Equal(DecideProblem.ReasonMissing, Assert.IsType<DecideFittingOutcome.Invalid>(await EndAsync(new(fitting, DecisionKinds.NotToday, null, ""))).Problem);
        Assert.Equal(DecideProblem.WhyMissing, Assert.IsType<DecideFittingOutcome.Invalid>(await EndAsync(new(fitting, DecisionKinds.ComeBack, null, " "))).Problem);
        Assert.IsType<DecideFittingOutcome.Decided>(await EndAsync(new(fitting, DecisionKinds.NotToday, NotTodayReasons.NotReady, "")));
        Assert.IsType<DecideFittingOutcome.NotOpen>(await EndAsync(new(fitting, DecisionKinds.NotToday, NotTodayReasons.Price, "")));

        await using var db = _shop.CreateDbContext();
        Assert.Equal(NotTodayReasons.NotReady, (await db.FittingDecisions.SingleAsync(TestContext.Current.CancellationToken)).Reason);
    }

    [Fact]
    public async Task Come_back_keeps_its_day_and_refuses_one_that_lies_behind_or_years_ahead()
    {
        var fitting = Assert.IsType<OpenFittingOutcome.Opened>(await StartAsync(await DancerAsync(null, underAge: false))).FittingId;
        var today = DateOnly.FromDateTime(_shop.Clock.GetUtcNow().UtcDateTime);

        foreach (var day in new[] { today.AddDays(-3), today.AddYears(2).AddDays(3) })
        {
            Assert.Equal(DecideProblem.DayOutOfRange, Assert.IsType<DecideFittingOutcome.Invalid>(await EndAsync(new(fitting, DecisionKinds.ComeBack, null, "", DueOn: day))).Problem);
        }

        Assert.IsType<DecideFittingOutcome.Decided>(await EndAsync(new(fitting, DecisionKinds.ComeBack, null, "", DueOn: today.AddDays(28))));

        await using var db = _shop.CreateDbContext();
        Assert.Equal(today.AddDays(28), (await db.FittingDecisions.SingleAsync(TestContext.Current.CancellationToken)).DueOn);
    }

    [Fact]
    public async Task A_start_that_another_tablet_changed_meanwhile_is_not_overwritten()
    {
        var fitting = Assert.IsType<OpenFittingOutcome.Opened>(await StartAsync(await DancerAsync(null, underAge: false))).FittingId;

        Assert.IsType<SetFittingStartOutcome.Kept>(await KeepAsync(new(fitting, 1, true, false, false, false, null)));
        Assert.IsType<SetFittingStartOutcome.ChangedMeanwhile>(await KeepAsync(new(fitting, 1, false, true, false, false, null)));
    }

    private async Task<Guid> DancerAsync(DateOnly? born, bool? underAge = null)
    {
        var dancer = Dancer.Of(Guid.CreateVersion7(), _shop.ShopId, "Tilly Fernsby");
        dancer.Describe("Tilly Fernsby", "", born, Sex.Female, "");
        dancer.SayAge(underAge);
        return (await _shop.HasAsync(dancer)).Id;
    }

    private Task<OpenFittingOutcome> StartAsync(Guid dancerId) =>
        new OpenFitting(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), dancerId, "pointe", TestContext.Current.CancellationToken);

    private Task<DecideFittingOutcome> EndAsync(DecideFittingRequest request) =>
        new DecideFitting(_shop.Writes, new ShoesInMemory(), _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), request, TestContext.Current.CancellationToken);

    private Task<SetFittingStartOutcome> KeepAsync(SetFittingStartRequest request) =>
        new SetFittingStart(_shop.Writes).RunAsync(_shop.Fitter, Guid.CreateVersion7(), request, TestContext.Current.CancellationToken);
}
