using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class FittingPageTests : PageTest
{
    private Dancer _dancer = null!;

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddLocalization();
        Services.AddCatalogue().AddSales().AddSettings().AddDancers().AddFittings();
        var dancer = Dancer.Of(Guid.CreateVersion7(), Shop.ShopId, "Tilly Fernsby-Quoin");
        dancer.Describe("Tilly Fernsby-Quoin", "Tilly", new DateOnly(2013, 3, 1), Sex.Female, "");
        _dancer = await Shop.HasAsync(dancer);
    }

    [Fact]
    public async Task What_was_entered_is_there_again_when_the_page_is_opened_anew()
    {
        var fitting = await DraftAsync();
        var page = Open(fitting, "feet");

        await page.InvokeAsync(() => Field(page, "Length, left foot").Change("238,5"));
        page.WaitForAssertion(() => Assert.Equal("238.5", Field(page, "Length, left foot").GetAttribute("value")));
        await page.InvokeAsync(() => Key(page, "Toes, longest to fourth", "tapered").Click());
        page.WaitForAssertion(() => Assert.Equal("true", Key(page, "Toes, longest to fourth", "tapered").GetAttribute("aria-pressed")));

        var again = Open(fitting, "feet");
        Assert.Equal("238.5", Field(again, "Length, left foot").GetAttribute("value"));
        Assert.Equal("true", Key(again, "Toes, longest to fourth", "tapered").GetAttribute("aria-pressed"));
    }

    [Fact]
    public async Task A_second_word_asks_for_which_foot_in_the_talk_line_and_splits_them()
    {
        var page = Open(await DraftAsync(), "feet");
        await page.InvokeAsync(() => Key(page, "Toes, longest to fourth", "medium").Click());
        page.WaitForAssertion(() => Assert.Equal("true", Key(page, "Toes, longest to fourth", "medium").GetAttribute("aria-pressed")));

        await page.InvokeAsync(() => Key(page, "Toes, longest to fourth", "tapered").Click());
        page.WaitForAssertion(() => Assert.Contains("for which foot?", page.Find(".says").TextContent, StringComparison.Ordinal));
        await page.InvokeAsync(() => Button(page, "Left").Click());

        page.WaitForAssertion(() => Assert.NotNull(Key(page, "Toes, longest to fourth", "tapered, left foot")));
        Assert.NotNull(Key(page, "Toes, longest to fourth", "medium, right foot"));
    }

    [Fact]
    public async Task A_number_that_cannot_be_is_refused_with_what_is_allowed_and_nothing_is_kept()
    {
        var fitting = await DraftAsync();
        var page = Open(fitting, "feet");

        await page.InvokeAsync(() => Field(page, "Length, left foot").Change("2385"));

        page.WaitForAssertion(() => Assert.Contains("100 to 350", page.Find(".problem").TextContent, StringComparison.Ordinal));
        Assert.Equal("2385", Field(page, "Length, left foot").GetAttribute("value"));
        await using var db = Shop.CreateDbContext();
        Assert.False(await db.FittingReadings.AnyAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_reading_that_was_taken_back_can_be_brought_back_from_the_talk_line()
    {
        var fitting = await DraftAsync();
        foreach (var length in new[] { 238.5, 238.5 })
        {
            await Shop.HasAsync(FittingReading.Of(Guid.CreateVersion7(), Shop.Fitter, fitting, Shop.Clock.GetUtcNow(), Side.Left, "length", length, ReadingUnit.Millimetres));
        }

        var page = Open(fitting, "feet");
        await page.InvokeAsync(() => page.Find("button[aria-label$='show them']").Click());
        await page.InvokeAsync(() => page.WaitForElement(".readings li button").Click());
        page.WaitForAssertion(() => Assert.Contains("Taken back: Length, left foot, 238.5 mm.", page.Find(".talk .undo").TextContent, StringComparison.Ordinal));

        await page.InvokeAsync(() => Button(page, "Undo").Click());

        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll(".readings li").Count));
        await using var db = Shop.CreateDbContext();
        Assert.Equal(2, await db.FittingReadings.CountAsync(row => row.WithdrawnAt == null, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task The_childs_view_shows_the_drawing_and_kind_words_and_nothing_else()
    {
        var page = Open(await DraftAsync(), "feet");

        await page.InvokeAsync(() => Button(page, "Tilly’s view").Click());

        page.WaitForAssertion(() => Assert.Equal(["Back to the fitting"], page.FindAll("button, a, input").Select(key => key.TextContent.Trim())));
        Assert.Single(page.FindAll("svg[role=img]"));
    }

    [Fact]
    public async Task Under_twelve_no_pointe_shoe_is_shown()
    {
        await HasPairAsync();
        var page = Open(await DraftAsync(age: 11.9), "shortlist");

        Assert.Empty(page.FindAll(".pair"));
        Assert.Contains("Soft shoes for now", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_shortlist_leads_with_the_place_and_lays_the_best_pair_over_the_feet()
    {
        await HasPairAsync();
        var page = Open(await DraftAsync(), "shortlist");

        page.WaitForElement(".pair.laid");
        Assert.Equal("B3", page.Find(".pair .where b").TextContent);
        Assert.Equal(2, page.FindAll("path.shoe[stroke-dasharray], .mat path.shoe").Count);
    }

    [Fact]
    public async Task A_second_tablet_with_the_same_draft_sells_nothing_more()
    {
        var sizeId = await HasPairAsync();
        var fitting = await DraftAsync();
        var first = OpenDecision(fitting, sizeId);
        first.WaitForElement(".talk button.main");

        // Both pages have one address here, and the first leaves the pair out of it.
        first.WaitForAssertion(() => Assert.DoesNotContain("size=", Navigation.Uri, StringComparison.Ordinal));
        var second = Open(fitting, "decision");
        second.WaitForElement(".talk button.main");

        await first.InvokeAsync(() => first.Find(".talk button.main").Click());
        first.WaitForAssertion(() => Assert.Contains("Fitted and sold", first.Markup, StringComparison.Ordinal));
        await second.InvokeAsync(() => second.Find(".talk button.main").Click());
        second.WaitForAssertion(() => Assert.Contains("Fitted and sold", second.Markup, StringComparison.Ordinal));

        await using var db = Shop.CreateDbContext();
        Assert.Equal((1, 1), (
            await db.Sales.CountAsync(TestContext.Current.CancellationToken),
            await db.StockLevels.Where(level => level.ItemId == sizeId).SumAsync(level => level.OnHand, TestContext.Current.CancellationToken)));
    }

    [Fact]
    public async Task A_pair_that_went_meanwhile_says_so_and_leads_back_to_the_list()
    {
        var sizeId = await HasPairAsync();
        var page = OpenDecision(await DraftAsync(), sizeId);
        page.WaitForElement(".talk button.main");
        await using (var db = Shop.CreateDbContext())
        {
            await db.StockLevels.ExecuteUpdateAsync(set => set.SetProperty(level => level.OnHand, 0), TestContext.Current.CancellationToken);
        }

        await page.InvokeAsync(() => page.Find(".talk button.main").Click());

        page.WaitForAssertion(() => Assert.Contains("no longer on the shelf", page.Find(".says").TextContent, StringComparison.Ordinal));
        Assert.EndsWith("/shortlist", page.Find(".talk a.main").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_lies_ready_is_there_again_when_the_decision_is_opened_anew()
    {
        var sizeId = await HasPairAsync();
        var ribbon = await Shop.HasAsync(Item.Of(Guid.CreateVersion7(), Shop.ShopId, "RIB-1", "Satin ribbon", ItemCategories.Ribbon, 420));
        var fitting = await DraftAsync();
        var page = OpenDecision(fitting, sizeId);
        page.WaitForElement(".talk button.main");

        await page.InvokeAsync(() => page.Find("button.bare[aria-expanded]").Click());
        await page.InvokeAsync(() => page.Find("[role=group][aria-label='heel cushion'] button:last-child").Click());
        await page.InvokeAsync(() => page.WaitForElement("button[aria-label='One more of Satin ribbon']").Click());
        await page.InvokeAsync(() => page.Find("textarea").Change("She dances in these already."));
        page.WaitForAssertion(() => Assert.Equal("1", page.Find("output").TextContent));

        Navigation.NavigateTo($"/fittings/{fitting}/decision");
        var again = Open(fitting, "decision");
        again.WaitForElement(".talk button.main");
        Assert.Equal("true", again.Find("[role=group][aria-label='heel cushion'] button:last-child").GetAttribute("aria-pressed"));
        Assert.Equal("1", again.Find("output").TextContent);
        Assert.Equal("She dances in these already.", again.Find("textarea").GetAttribute("value"));
        await using var db = Shop.CreateDbContext();
        var newest = (await db.FittingChoices.OrderBy(row => row.ChosenAt).ThenBy(row => row.Id).LastAsync(TestContext.Current.CancellationToken)).Chosen();
        Assert.Equal((sizeId, new SaleExtra(ribbon.Id, 1)), (newest.SizeId, newest.Extras.Single()));
    }

    [Fact]
    public async Task The_pair_of_a_link_is_kept_and_leaves_the_address_so_that_a_reload_follows_the_newest_choice()
    {
        var linked = await HasPairAsync();
        var newer = await HasPairAsync("M-39", 39, "B4");
        var fitting = await DraftAsync();
        var page = OpenDecision(fitting, linked);
        page.WaitForElement(".talk button.main");
        page.WaitForAssertion(() => Assert.DoesNotContain("size=", Navigation.Uri, StringComparison.Ordinal));

        Shop.Clock.Advance(TimeSpan.FromMinutes(1));
        await ChooseAsync(new(fitting, newer, Pads: null, Extras: []));

        var again = Open(fitting, "decision");
        again.WaitForElement(".talk button.main");
        Assert.Contains("39", again.Find(".pairhead h2").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_pair_keeps_the_bag_and_the_advice_and_starts_with_its_own_pads_and_without_a_reason()
    {
        var first = await HasPairAsync();
        var second = await HasPairAsync("M-39", 39, "B4");
        var ribbon = await Shop.HasAsync(Item.Of(Guid.CreateVersion7(), Shop.ShopId, "RIB-1", "Satin ribbon", ItemCategories.Ribbon, 420));
        var fitting = await DraftAsync();
        await ChooseAsync(new(fitting, first, [new(Side.Left, "heel-cushion")], [new(ribbon.Id, 2)], "softer", "Air them."));
        Shop.Clock.Advance(TimeSpan.FromMinutes(1));

        OpenDecision(fitting, second).WaitForAssertion(() => Assert.DoesNotContain("size=", Navigation.Uri, StringComparison.Ordinal));

        ChosenForFitting newest;
        await using (var db = Shop.CreateDbContext())
        {
            newest = (await db.FittingChoices.OrderBy(row => row.ChosenAt).LastAsync(TestContext.Current.CancellationToken)).Chosen();
        }

        Assert.Equal((second, "", "Air them.", new SaleExtra(ribbon.Id, 2)), (newest.SizeId, newest.OverruleReason, newest.AdviceNote, newest.Extras.Single()));
        Assert.Null(newest.Pads);
    }

    [Fact]
    public async Task Another_pair_than_the_first_proposal_is_taken_for_a_reason_that_stands_in_the_record()
    {
        Guid[] pairs = [await HasPairAsync(), await HasPairAsync("M-39", 39, "B4")];
        var fitting = await DraftAsync();
        var first = await Services.GetRequiredService<ShortlistQueries>().FirstAsync(fitting, TestContext.Current.CancellationToken);
        var page = OpenDecision(fitting, pairs.Single(pair => pair != first!.Shoe.SizeId));

        page.WaitForElement(".overrule");
        Assert.Contains($"We suggested {first!.Name} first", page.Find(".overrule").TextContent, StringComparison.Ordinal);
        await page.InvokeAsync(() => Button(page, "The teacher asks for it").Click());
        page.WaitForAssertion(() => Assert.Equal("true", Button(page, "The teacher asks for it").GetAttribute("aria-pressed")));
        await page.InvokeAsync(() => Button(page, "A smaller size was asked for").Click());
        await page.InvokeAsync(() => page.WaitForElement(".asked input").Change("36"));
        page.WaitForAssertion(() => Assert.Contains("A smaller size was asked for: 36.", page.Find(".asked").TextContent, StringComparison.Ordinal));
        await page.InvokeAsync(() => page.Find(".talk button.main").Click());

        page.WaitForAssertion(() => Assert.Contains("What we suggested first", page.Markup, StringComparison.Ordinal));
        Assert.Contains("The teacher asks for it", page.Markup, StringComparison.Ordinal);
        Assert.Contains("A smaller size was asked for: 36.", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wish_for_an_order_is_closed_with_its_day_and_the_changes_and_a_day_that_is_none_keeps_it_open()
    {
        var page = OpenDecision(await DraftAsync(), await HasPairAsync());
        page.WaitForElement(".talk button.main");
        await page.InvokeAsync(() => Button(page, "Wish for an order").Click());

        await page.InvokeAsync(() => page.Find(".due input").Input("soon"));
        await page.InvokeAsync(() => page.Find(".ending textarea").Change("a lower heel"));
        await page.InvokeAsync(() => Button(page, "Close the fitting").Click());
        page.WaitForAssertion(() => Assert.Contains("“soon” is no day", page.Find(".due .problem").TextContent, StringComparison.Ordinal));
        Assert.Equal("soon", page.Find(".due input").GetAttribute("value"));

        await page.InvokeAsync(() => Button(page, "In 4 weeks").Click());
        await page.InvokeAsync(() => Button(page, "Close the fitting").Click());

        page.WaitForAssertion(() => Assert.Contains("To be ordered", page.Markup, StringComparison.Ordinal));
        Assert.Contains("Until ", page.Markup, StringComparison.Ordinal);
        Assert.Contains("a lower heel", page.Markup, StringComparison.Ordinal);
    }

    private NavigationManager Navigation => Services.GetRequiredService<NavigationManager>();

    private async Task ChooseAsync(ChosenForFitting chosen) => Assert.IsType<ChooseInFittingOutcome.Kept>(
        await Services.GetRequiredService<ChooseInFitting>().RunAsync(Shop.Fitter, Guid.CreateVersion7(), chosen, TestContext.Current.CancellationToken));

    private async Task<Guid> DraftAsync(double age = 13) =>
        (await Shop.HasAsync(FittingRecord.Of(Guid.CreateVersion7(), Shop.Fitter, _dancer.Id, "pointe", Shop.Clock.GetUtcNow(), age, Sex.Female))).Id;

    private async Task<Guid> HasPairAsync(string code = "M-38", double size = 38, string shelf = "B3")
    {
        var maker = await Shop.HasAsync(Maker.Of(Guid.CreateVersion7(), Shop.ShopId, $"Thistlefen Lastworks {shelf}"));
        var model = await Shop.HasAsync(ShoeModel.Of(Guid.CreateVersion7(), Shop.ShopId, maker.Id, "Moorlace", "pointe", "paste"));
        var item = await Shop.HasAsync(Item.Of(Guid.CreateVersion7(), Shop.ShopId, code, $"Thistlefen Lastworks Moorlace {size}", ItemCategories.Shoes, 5950));
        await Shop.HasAsync(ShoeSize.Of(item.Id, Shop.ShopId, model.Id, "eu", size, "", "", "", new FormAsGiven(), leadTimeDays: 28));
        var place = await Shop.HasAsync(ShelfPlace.Of(Guid.CreateVersion7(), Shop.ShopId, shelf));
        await Shop.HasAsync(StockLevel.Of(Guid.CreateVersion7(), Shop.ShopId, item.Id, place.Id, 2));
        return item.Id;
    }

    private IRenderedComponent<FittingPage> Open(Guid fitting, string station)
    {
        var page = Render<FittingPage>(parameters => parameters.Add(it => it.Id, fitting).Add(it => it.Station, station));
        page.WaitForElement(".fitting");
        return page;
    }

    private IRenderedComponent<FittingPage> OpenDecision(Guid fitting, Guid sizeId)
    {
        Navigation.NavigateTo($"/fittings/{fitting}/decision?size={sizeId}");
        return Open(fitting, "decision");
    }

    private static IElement Field(IRenderedComponent<FittingPage> page, string label) => page.Find($"input[aria-label='{label}']");

    private static IElement Key(IRenderedComponent<FittingPage> page, string group, string word) => page.Find($"[role=group][aria-label='{group}'] button[aria-label='{word}']");

    private static IElement Button(IRenderedComponent<FittingPage> page, string text) => page.FindAll("button").Single(key => key.TextContent.Trim() == text);
}
