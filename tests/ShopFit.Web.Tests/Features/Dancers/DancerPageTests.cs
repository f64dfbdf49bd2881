using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Arrival;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Shared;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Dancers;

public sealed class DancerPageTests : PageTest
{
    [Fact]
    public async Task Without_a_day_of_birth_the_page_asks_before_it_starts_anything()
    {
        var dancer = await HasAsync(born: null);
        var page = Open(dancer);
        Assert.DoesNotContain(page.FindAll("button"), key => key.TextContent == "Start a fitting");

        await page.InvokeAsync(() => page.FindAll("button").Single(key => key.TextContent == "Under 18").Click());

        page.WaitForAssertion(() => Assert.Contains(page.FindAll("button"), key => key.TextContent == "They are here and agree"));
        await using var db = Shop.CreateDbContext();
        Assert.True((await db.Dancers.SingleAsync(TestContext.Current.CancellationToken)).SaidUnderAge);
    }

    [Fact]
    public async Task A_child_begins_with_soft_shoes_and_the_kind_is_one_tap()
    {
        var dancer = await HasAsync(born: new DateOnly(2016, 1, 1), consent: true);
        var page = Open(dancer);
        Assert.Equal("Soft ballet", page.Find("[aria-label='Kind of footwear'] [aria-pressed=true]").TextContent);

        await page.InvokeAsync(() => page.FindAll("button").Single(key => key.TextContent == "Jazz").Click());
        await page.InvokeAsync(() => page.FindAll("button").Single(key => key.TextContent == "Start a fitting").Click());

        page.WaitForAssertion(() => Assert.EndsWith("/arrival", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
        await using var db = Shop.CreateDbContext();
        Assert.Equal("jazz", (await db.Fittings.SingleAsync(TestContext.Current.CancellationToken)).Kind);
    }

    [Fact]
    public async Task A_yes_is_taken_back_with_a_way_back()
    {
        var dancer = await HasAsync(born: new DateOnly(2013, 1, 1), consent: true);
        var page = Open(dancer);

        await page.InvokeAsync(() => page.FindAll("button").Single(key => key.TextContent == "Take the yes back").Click());
        page.WaitForAssertion(() => Assert.Contains(page.FindAll("button"), key => key.TextContent == "They are here and agree"));

        await page.InvokeAsync(Services.GetRequiredService<UndoOffer>().TakeAsync);

        page.WaitForAssertion(() => Assert.Contains(page.FindAll("button"), key => key.TextContent == "Start a fitting"));
    }

    [Fact]
    public async Task The_history_says_what_each_fitting_told_and_how_the_feet_changed()
    {
        var dancer = await HasAsync(born: new DateOnly(2013, 1, 1), consent: true);
        await VisitAsync(dancer, 230);
        Shop.Clock.Advance(TimeSpan.FromDays(100));
        var last = await VisitAsync(dancer, 234.5);
        await Shop.HasAsync(ArrivalAnswer.Of(Guid.CreateVersion7(), Shop.Fitter, last, Shop.Clock.GetUtcNow(), "last-pair", null, "sank"));

        var page = Open(dancer);

        var visits = page.FindAll(".visit");
        Assert.Equal(2, visits.Count);
        Assert.Contains("left 234.5 (+4.5) mm", Flat(visits[0].TextContent), StringComparison.Ordinal);
        Assert.Contains("sank into the box", visits[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("left 230 mm", Flat(visits[1].TextContent), StringComparison.Ordinal);
    }

    private static string Flat(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private IRenderedComponent<DancerPage> Open(Guid dancer)
    {
        Services.AddLocalization();
        Services.AddDancers().AddFittings();
        var page = Render<DancerPage>(parameters => parameters.Add(each => each.Id, dancer));
        page.WaitForElement("h2");
        return page;
    }

    private async Task<Guid> HasAsync(DateOnly? born, bool consent = false)
    {
        var guardian = await Shop.HasAsync(Guardian.Of(Guid.CreateVersion7(), Shop.ShopId, "Rowan Fernsby", ""));
        var dancer = Dancer.Of(Guid.CreateVersion7(), Shop.ShopId, "Tilly Fernsby");
        dancer.Describe("Tilly Fernsby", "", born, Sex.Female, "");
        dancer.AnsweredForBy(guardian.Id);
        await Shop.HasAsync(dancer);
        if (consent)
        {
            await Shop.HasAsync(Consent.Of(Guid.CreateVersion7(), Shop.Fitter, dancer.Id, "guardian", Shop.Clock.GetUtcNow()));
        }

        return dancer.Id;
    }

    private async Task<Guid> VisitAsync(Guid dancer, double length)
    {
        var fitting = FittingRecord.Of(Guid.CreateVersion7(), Shop.Fitter, dancer, "pointe", Shop.Clock.GetUtcNow(), 13, Sex.Female);
        await Shop.HasAsync(fitting);
        await Shop.HasAsync(FittingReading.Of(Guid.CreateVersion7(), Shop.Fitter, fitting.Id, Shop.Clock.GetUtcNow(), Side.Left, "length", length, ReadingUnit.Millimetres));
        return fitting.Id;
    }
}
