using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class TryOnsPanelTests : PageTest
{
    private Guid _model;
    private Guid _place;
    private Guid _fitting;

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddLocalization();
        Services.AddCatalogue().AddSales().AddSettings().AddDancers().AddFittings();
        var dancer = Dancer.Of(Guid.CreateVersion7(), Shop.ShopId, "Tilly Fernsby-Quoin");
        await Shop.HasAsync(dancer);
        var maker = await Shop.HasAsync(Maker.Of(Guid.CreateVersion7(), Shop.ShopId, "Thistlefen Lastworks"));
        _model = (await Shop.HasAsync(ShoeModel.Of(Guid.CreateVersion7(), Shop.ShopId, maker.Id, "Moorlace", "pointe", "paste"))).Id;
        _place = (await Shop.HasAsync(ShelfPlace.Of(Guid.CreateVersion7(), Shop.ShopId, "B3"))).Id;
        _fitting = (await Shop.HasAsync(FittingRecord.Of(Guid.CreateVersion7(), Shop.Fitter, dancer.Id, "pointe", Shop.Clock.GetUtcNow(), 13, Sex.Female))).Id;
    }

    [Fact]
    public async Task Pairs_that_were_fetched_stand_ready_and_one_tap_puts_one_on()
    {
        var pair = await PairAsync(38);
        await Shop.HasAsync(FittingWalk.Of(Guid.CreateVersion7(), Shop.Fitter, _fitting, Shop.Clock.GetUtcNow(), [pair]));
        var page = Open();
        page.WaitForAssertion(() => Assert.Contains("waits, from B3", page.Find(".hand button").TextContent, StringComparison.Ordinal));
        Assert.Equal("0 pairs, 1 walk", page.Find(".count h2").TextContent);

        await page.InvokeAsync(() => page.Find(".hand button").Click());

        page.WaitForAssertion(() => Assert.Equal("1 pair, 1 walk", page.Find(".count h2").TextContent));
        Assert.Contains("Try-ons (1)", page.Find("nav.stations").TextContent, StringComparison.Ordinal);
        page.WaitForElement(".mat path.shoe");
    }

    [Fact]
    public async Task Each_tap_is_there_again_when_the_station_is_opened_on_another_tablet()
    {
        var page = await WearingAsync();

        await TapAsync(page, "It does not fit");
        page.WaitForAssertion(() => Assert.Equal("true", Button(page, "It does not fit").GetAttribute("aria-pressed")));
        await page.InvokeAsync(() => page.Find("[aria-label='Toe hold, left'] button:last-child").Click());
        page.WaitForAssertion(() => Assert.Equal("true", page.Find("[aria-label='Toe hold, right'] button:last-child").GetAttribute("aria-pressed")));
        await TapAsync(page, "feels good");
        page.WaitForAssertion(() => Assert.Equal("true", Button(page, "feels good").GetAttribute("aria-pressed")));
        await page.InvokeAsync(() => page.Find(".note textarea").Change("She curls her toes."));

        var other = Open();
        other.WaitForElement(".verdict");
        Assert.Equal(("true", "true", "true", "She curls her toes."), (
            Button(other, "It does not fit").GetAttribute("aria-pressed"),
            Button(other, "feels good").GetAttribute("aria-pressed"),
            other.Find("[aria-label='Toe hold, left'] button:last-child").GetAttribute("aria-pressed"),
            other.Find(".note textarea").GetAttribute("value")));
    }

    [Fact]
    public async Task After_a_pair_that_does_not_fit_the_next_is_named_with_its_place_and_its_reason_and_one_tap_puts_it_on()
    {
        await PairAsync(39);
        var page = await WearingAsync();
        await TapAsync(page, "It does not fit");
        page.WaitForAssertion(() => Assert.Contains("Next: Moorlace 39, shelf B3.", page.Find(".says").TextContent, StringComparison.Ordinal));
        Assert.Contains("in 10", page.Find(".says").TextContent, StringComparison.Ordinal);

        await page.InvokeAsync(() => page.Find(".talk button.main").Click());

        page.WaitForAssertion(() => Assert.Equal("2 pairs, 0 walks", page.Find(".count h2").TextContent));
    }

    [Fact]
    public async Task A_pair_that_fits_goes_to_the_decision_in_one_tap()
    {
        var page = await WearingAsync();
        await TapAsync(page, "It fits");
        page.WaitForAssertion(() => Assert.StartsWith("Decide on", page.Find(".talk button.main").TextContent, StringComparison.Ordinal));

        await page.InvokeAsync(() => page.Find(".talk button.main").Click());

        page.WaitForAssertion(() => Assert.EndsWith("/decision", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
        await using var db = Shop.CreateDbContext();
        Assert.Single(await db.FittingChoices.ToListAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_pair_taken_off_the_record_can_be_brought_back()
    {
        var page = await WearingAsync();
        await TapAsync(page, "It was not tried on: take it off the record");
        page.WaitForAssertion(() => Assert.Equal("0 pairs, 0 walks", page.Find(".count h2").TextContent));

        await TapAsync(page, "Undo");

        page.WaitForAssertion(() => Assert.Equal("1 pair, 0 walks", page.Find(".count h2").TextContent));
    }

    [Fact]
    public async Task An_unknown_code_is_answered_with_a_sentence_and_stays_where_it_was_typed()
    {
        var page = Open();

        await page.InvokeAsync(() => page.WaitForElement("[data-takes-scan]").Change("X-99"));

        page.WaitForAssertion(() => Assert.Contains("“X-99”", page.Find(".problem").TextContent, StringComparison.Ordinal));
        Assert.Equal("X-99", page.Find("[data-takes-scan]").GetAttribute("value"));
        await using var db = Shop.CreateDbContext();
        Assert.False(await db.FittingTryOns.AnyAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task After_four_pairs_a_rest_is_spoken_of()
    {
        var page = Open();
        foreach (var (size, count) in new[] { (36, "1 pair,"), (37, "2 pairs,"), (38, "3 pairs,"), (39, "4 pairs,") })
        {
            await PairAsync(size);
            await page.InvokeAsync(() => page.WaitForElement("[data-takes-scan]").Change($"M-{size}"));
            page.WaitForAssertion(() => Assert.Contains(count, page.Find(".count").TextContent, StringComparison.Ordinal));
        }

        page.WaitForAssertion(() => Assert.Contains("4 pairs: time for a short rest.", page.Find(".says").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_ending_without_a_sale_shows_what_was_tried_on_and_can_be_undone()
    {
        await WearingAsync();
        var page = Open("decision");
        await page.InvokeAsync(() => page.WaitForElement(".others button:last-child").Click());
        await page.InvokeAsync(() => page.Find(".reasons button").Click());
        await TapAsync(page, "Close the fitting");
        page.WaitForAssertion(() => Assert.Contains("Moorlace 38", page.Find(".tried").TextContent, StringComparison.Ordinal));

        await TapAsync(page, "Undo");

        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".tried")));
        await using var db = Shop.CreateDbContext();
        Assert.Null((await db.Fittings.SingleAsync(TestContext.Current.CancellationToken)).ClosedAt);
        Assert.NotNull((await db.FittingDecisions.SingleAsync(TestContext.Current.CancellationToken)).WithdrawnAt);
    }

    [Fact]
    public async Task A_pair_that_hurts_comes_off()
    {
        var page = await WearingAsync();

        await TapAsync(page, "hurts");

        page.WaitForAssertion(() => Assert.Contains("take this pair off", page.Find(".says .word.harm").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task With_broken_skin_nothing_can_be_put_on_and_it_is_said_kindly()
    {
        await using (var db = Shop.CreateDbContext())
        {
            (await db.Fittings.SingleAsync(TestContext.Current.CancellationToken)).Start(firstPair: false, soreLeft: false, soreRight: false, skinBroken: true);
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        var page = Open();

        page.WaitForAssertion(() => Assert.Contains("Let it heal first", page.Find(".says").TextContent, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("[data-takes-scan]"));
    }

    [Theory]
    [InlineData("feet")]
    [InlineData("shortlist")]
    [InlineData("try-ons")]
    [InlineData("decision")]
    public async Task The_childs_view_is_one_tap_away_and_never_says_a_chance_a_strength_a_note_or_not_ready(string station)
    {
        await WearingAsync();
        var page = Open(station);
        await page.InvokeAsync(() => page.WaitForElement(".matkeys > .key:last-child").Click());

        var text = page.WaitForElement("main.child").TextContent;
        Assert.DoesNotMatch("(?i)likely|perhaps|unlikely|in 10|chance|strength|strong|ready|not yet|fits|does not|hurts|note|tight|loose|[0-9]+ mm (long|short)", text);
        Assert.Equal(["Back to the fitting"], page.FindAll("button, a, input").Select(key => key.TextContent.Trim()));
    }

    private async Task<IRenderedComponent<FittingPage>> WearingAsync()
    {
        await PairAsync(38);
        var page = Open();
        await page.InvokeAsync(() => page.WaitForElement("[data-takes-scan]").Change("M-38"));
        page.WaitForElement(".verdict");
        return page;
    }

    private async Task<Guid> PairAsync(double size)
    {
        var item = await Shop.HasAsync(Item.Of(Guid.CreateVersion7(), Shop.ShopId, $"M-{size}", $"Thistlefen Lastworks Moorlace {size}", ItemCategories.Shoes, 5950));
        await Shop.HasAsync(ShoeSize.Of(item.Id, Shop.ShopId, _model, "eu", size, "", "", "", new FormAsGiven(), leadTimeDays: 28));
        await Shop.HasAsync(StockLevel.Of(Guid.CreateVersion7(), Shop.ShopId, item.Id, _place, onHand: 2));
        await using var db = Shop.CreateDbContext();
        await CatalogueVersion.RaiseAsync(db, TestContext.Current.CancellationToken);
        return item.Id;
    }

    private IRenderedComponent<FittingPage> Open(string station = "try-ons")
    {
        var page = Render<FittingPage>(parameters => parameters.Add(each => each.Id, _fitting).Add(each => each.Station, station));
        page.WaitForElement(".fitting");
        return page;
    }

    private static Task TapAsync(IRenderedComponent<FittingPage> page, string text) => page.InvokeAsync(() => Button(page, text).Click());

    private static IElement Button(IRenderedComponent<FittingPage> page, string text) => page.FindAll("button").Single(key => key.TextContent.Trim() == text);
}
