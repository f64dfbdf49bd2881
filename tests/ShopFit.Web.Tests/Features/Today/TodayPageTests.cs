using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Today;

public sealed class TodayPageTests : PageTest
{
    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddLocalization();
        Services.AddCatalogue().AddSales().AddSettings().AddDancers().AddFittings();
    }

    [Fact]
    public void With_nothing_open_it_says_what_to_do()
    {
        var page = Render<TodayPage>();

        page.WaitForAssertion(() => Assert.Contains("None is open. Find the dancer, and start.", page.Markup, StringComparison.Ordinal));
        Assert.DoesNotContain("Ended today", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_open_fitting_can_be_gone_on_with_and_what_ended_today_says_how()
    {
        var open = await OpenAsync("Tilly Fernsby-Quoin");
        await EndAsync(await OpenAsync("Maud Larkspur"), NotTodayReasons.Price);

        var page = Render<TodayPage>();

        page.WaitForAssertion(() => Assert.Equal("Tilly Fernsby-Quoin", page.Find($"a[href^='/fittings/{open}/'] b").TextContent));
        Assert.Contains("not today: the price", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_ended_yesterday_is_not_of_today()
    {
        await EndAsync(await OpenAsync("Maud Larkspur"), NotTodayReasons.Undecided);
        // Into the small hours of the next day on the shop's own calendar.
        Shop.Clock.Advance(TimeSpan.FromHours(10));

        var page = Render<TodayPage>();

        page.WaitForAssertion(() => Assert.Contains("None is open", page.Markup, StringComparison.Ordinal));
        Assert.DoesNotContain("Maud Larkspur", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_comes_back_stands_there_with_the_day_and_what_for()
    {
        var fitting = await OpenAsync("Maud Larkspur");
        var day = DateOnly.FromDateTime(Shop.Clock.GetUtcNow().UtcDateTime).AddDays(14);
        Assert.IsType<DecideFittingOutcome.Decided>(await Services.GetRequiredService<DecideFitting>().RunAsync(
            Shop.Fitter, Guid.CreateVersion7(), new DecideFittingRequest(fitting, DecisionKinds.ComeBack, null, "to look at the heels", DueOn: day), TestContext.Current.CancellationToken));

        var page = Render<TodayPage>();

        page.WaitForAssertion(() => Assert.Contains("To come back", page.Markup, StringComparison.Ordinal));
        Assert.Contains("to look at the heels", page.Markup, StringComparison.Ordinal);
    }

    private async Task<Guid> OpenAsync(string name)
    {
        var dancer = Dancer.Of(Guid.CreateVersion7(), Shop.ShopId, name);
        dancer.SayAge(underAge: false);
        await Shop.HasAsync(dancer);
        var opened = await Services.GetRequiredService<OpenFitting>().RunAsync(Shop.Fitter, Guid.CreateVersion7(), dancer.Id, "pointe", TestContext.Current.CancellationToken);
        return Assert.IsType<OpenFittingOutcome.Opened>(opened).FittingId;
    }

    private async Task EndAsync(Guid fittingId, string reason) => Assert.IsType<DecideFittingOutcome.Decided>(
        await Services.GetRequiredService<DecideFitting>().RunAsync(
            Shop.Fitter, Guid.CreateVersion7(), new DecideFittingRequest(fittingId, DecisionKinds.NotToday, reason, "", null), TestContext.Current.CancellationToken));
}
