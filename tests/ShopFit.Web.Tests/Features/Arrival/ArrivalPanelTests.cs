using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Arrival;

public sealed class ArrivalPanelTests : PageTest
{
    private Dancer _dancer = null!;

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddLocalization();
        Services.AddCatalogue().AddSales().AddSettings().AddDancers().AddFittings();
        var dancer = Dancer.Of(Guid.CreateVersion7(), Shop.ShopId, "Tilly Fernsby-Quoin");
        dancer.Describe("Tilly Fernsby-Quoin", "Tilly", new DateOnly(2013, 3, 1), Sex.Female, "Odette Marrable");
        _dancer = await Shop.HasAsync(dancer);
    }

    [Fact]
    public async Task A_first_pair_with_the_yes_of_the_teacher_takes_five_taps_with_the_one_that_goes_on()
    {
        var page = Open(await DraftAsync(13));
        Assert.DoesNotContain(page.FindAll("fieldset.arrival [aria-pressed]"), key => key.GetAttribute("aria-pressed") is "true");

        await TapAsync(page, "First pair?", "Yes");
        await TapAsync(page, "Odette Marrable, who teaches, says", "yes, today");
        await TapAsync(page, "Asked before a first pair", "Yes to all 6");
        await TapAsync(page, "Sore today?", "Nothing sore");

        page.WaitForAssertion(() => Assert.Contains("Ask before you touch", page.Find(".talk").TextContent, StringComparison.Ordinal));
        Assert.EndsWith("/feet", page.Find(".talk a.main").GetAttribute("href"), StringComparison.Ordinal);
        await using var db = Shop.CreateDbContext();
        var fitting = await db.Fittings.SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal((true, new DateOnly(2026, 3, 14)), (fitting.FirstPair, fitting.TeacherAgreedOn!.Value));
        Assert.Equal(9, await db.ArrivalAnswers.CountAsync(row => row.WithdrawnAt == null, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Answers_that_speak_for_waiting_are_said_kindly_with_their_source_and_nobody_is_cleared()
    {
        var page = Open(await DraftAsync(13));
        await TapAsync(page, "First pair?", "Yes");
        await TapAsync(page, "Ballet class twice a week or more?", "No");

        page.WaitForAssertion(() => Assert.Contains("class less than twice a week", page.Find(".caution").TextContent, StringComparison.Ordinal));
        Assert.Contains("Weiss, Rist and Grossman 2009", page.Markup, StringComparison.Ordinal);
        Assert.Contains("clear nobody", page.Markup, StringComparison.Ordinal);
        Assert.Contains("talk it over with the teacher", page.Find(".talk").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_last_pair_did_is_asked_where_it_is_not_the_first_and_is_there_again_on_another_tablet()
    {
        var fitting = await DraftAsync(15);
        var page = Open(fitting);
        await TapAsync(page, "First pair?", "No");
        await TapAsync(page, "What did the last pair do?", "sank into the box");
        await page.InvokeAsync(() => page.Find("#last-pair-note").Change("the left one more"));

        var another = Open(fitting);

        Assert.Equal("true", Key(another, "What did the last pair do?", "sank into the box").GetAttribute("aria-pressed"));
        Assert.Equal("the left one more", another.Find("#last-pair-note").GetAttribute("value"));
    }

    [Fact]
    public async Task Broken_skin_stops_the_try_on()
    {
        var page = Open(await DraftAsync(15));
        await TapAsync(page, "Sore today?", "Left foot");
        await TapAsync(page, "Left foot: with what?", "skin broken");

        page.WaitForAssertion(() => Assert.Contains("No try-on today:", page.Find(".talk").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Under_twelve_no_pointe_shoe_is_proposed_and_not_yet_is_one_tap()
    {
        var page = Open(await DraftAsync(11));
        Assert.DoesNotContain(page.FindAll("h2"), heading => heading.TextContent.StartsWith("First pair?", StringComparison.Ordinal));
        Assert.Contains("Soft shoes for now", page.Markup, StringComparison.Ordinal);

        await page.InvokeAsync(() => page.FindAll(".talk button").Single(key => key.TextContent == "Not yet: close kindly").Click());

        await using var db = Shop.CreateDbContext();
        var decision = await db.FittingDecisions.SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal((DecisionKinds.NotToday, NotTodayReasons.NotReady), (decision.Kind, decision.Reason));
    }

    [Fact]
    public async Task Under_twelve_soft_shoes_are_one_tap_away()
    {
        await using (var db = Shop.CreateDbContext())
        {
            db.Consents.Add(Consent.Of(Guid.CreateVersion7(), Shop.Fitter, _dancer.Id, "guardian", Shop.Clock.GetUtcNow()));
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        var page = Open(await DraftAsync(11));

        await page.InvokeAsync(() => page.FindAll(".talk button").Single(key => key.TextContent == "Fit soft shoes").Click());

        page.WaitForAssertion(() => Assert.EndsWith("/arrival", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
        await using var fresh = Shop.CreateDbContext();
        Assert.Equal("soft", (await fresh.Fittings.SingleAsync(row => row.ClosedAt == null, TestContext.Current.CancellationToken)).Kind);
    }

    [Fact]
    public async Task A_day_that_is_none_is_said_and_kept_as_it_was_typed()
    {
        var page = Open(await DraftAsync(13));
        await TapAsync(page, "First pair?", "Yes");
        await TapAsync(page, "Odette Marrable, who teaches, says", "yes, earlier…");
        await page.InvokeAsync(() => page.Find(".arrival input[type=text]").Input("31.2.2026"));
        await page.InvokeAsync(() => page.Find(".arrival input[type=text]").Change("31.2.2026"));

        page.WaitForAssertion(() => Assert.Contains("“31.2.2026” is no day", page.Find(".problem").TextContent, StringComparison.Ordinal));
        Assert.Equal("31.2.2026", page.Find(".arrival input[type=text]").GetAttribute("value"));

        await page.InvokeAsync(() => page.Find(".arrival input[type=text]").Change("28.2.2026"));

        page.WaitForAssertion(() => Assert.Contains("yes, on 28 February 2026", page.Markup, StringComparison.Ordinal));
    }

    private async Task<Guid> DraftAsync(double ageYears) =>
        (await Shop.HasAsync(FittingRecord.Of(Guid.CreateVersion7(), Shop.Fitter, _dancer.Id, "pointe", Shop.Clock.GetUtcNow(), ageYears, Sex.Female))).Id;

    private IRenderedComponent<FittingPage> Open(Guid fitting)
    {
        var page = Render<FittingPage>(parameters => parameters.Add(each => each.Id, fitting).Add(each => each.Station, "arrival"));
        page.WaitForElement(".arrival");
        return page;
    }

    private static async Task TapAsync(IRenderedComponent<FittingPage> page, string group, string key)
    {
        page.WaitForAssertion(() => Key(page, group, key));
        await page.InvokeAsync(() => Key(page, group, key).Click());
    }

    private static IElement Key(IRenderedComponent<FittingPage> page, string group, string key) =>
        page.FindAll(".arrival section, .arrival [role=group]")
            .Where(each => NameOf(page, each) == group)
            .SelectMany(each => each.QuerySelectorAll("button"))
            .First(each => each.TextContent.Trim() == key);

    private static string NameOf(IRenderedComponent<FittingPage> page, IElement element) =>
        element.GetAttribute("aria-label") ?? page.Find($"#{element.GetAttribute("aria-labelledby")}").TextContent.Trim();
}
