using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Studios;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class ShortlistPanelTests : PageTest
{
    private ShortlistShop _shop = null!;

    private NavigationManager Navigation => Services.GetRequiredService<NavigationManager>();

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddLocalization();
        Services.AddCatalogue().AddSales().AddSettings().AddDancers().AddFittings();
        _shop = new ShortlistShop(Shop);
    }

    [Fact]
    public async Task What_is_worth_one_walk_stands_first_with_its_places_in_the_order_of_the_shelf()
    {
        await _shop.StockAsync();
        var page = Open(await _shop.DraftAsync());

        Assert.Equal("Worth one walk", page.Find(".head h2").TextContent);
        Assert.Matches("one of these fits: (likely|even|perhaps|unlikely), [1-9] in 10", Plain(page.Find(".head .title p")));
        var places = page.FindAll(".where b.walk").Select(place => place.TextContent).ToList();
        Assert.Equal(3, places.Count);
        Assert.Equal(places.OrderBy(place => place[0]).ThenBy(place => int.Parse(place[1..], System.Globalization.CultureInfo.InvariantCulture)), places);
    }

    [Fact]
    public async Task Fetched_counts_the_walk_and_the_next_three_are_others()
    {
        await _shop.StockAsync();
        var fitting = await _shop.DraftAsync();
        var page = Open(fitting);
        var first = Names(page);

        await page.InvokeAsync(() => Button(page, "Fetched").Click());

        page.WaitForAssertion(() => Assert.Empty(Names(page).Intersect(first)));
        await using var db = Shop.CreateDbContext();
        Assert.Equal(3, (await db.FittingWalks.SingleAsync(row => row.FittingId == fitting, TestContext.Current.CancellationToken)).SizeIds().Count);
        Assert.EndsWith("/try-ons", page.Find(".talk .main").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_maker_leaves_only_its_pairs_and_stays_in_the_address_until_it_is_taken_off()
    {
        await _shop.StockAsync();
        var page = Open(await _shop.DraftAsync());
        await page.InvokeAsync(() => Button(page, "Filters").Click());

        await page.InvokeAsync(() => Filter(page, "Maker", "Pellworth Bench").Click());

        page.WaitForAssertion(() => Assert.All(Models(page), model => Assert.Equal("Harrowfen", model)));
        Assert.Contains("maker=Pellworth", Navigation.Uri, StringComparison.Ordinal);
        Assert.Equal("true", Filter(page, "Maker", "Pellworth Bench").GetAttribute("aria-pressed"));
        await page.InvokeAsync(() => Button(page, "Clear all").Click());
        page.WaitForAssertion(() => Assert.DoesNotContain("maker", Navigation.Uri, StringComparison.Ordinal));
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".narrowed")));
    }

    [Fact]
    public async Task What_stands_in_the_address_narrows_the_list_and_the_number_said_is_the_number_left()
    {
        await _shop.StockAsync();
        var fitting = await _shop.DraftAsync();
        var page = Open(fitting);
        await page.InvokeAsync(() => Button(page, "Filters").Click());
        var left = int.Parse(Filter(page, "Model", "Moorlace").QuerySelector(".num")!.FirstChild!.TextContent, System.Globalization.CultureInfo.InvariantCulture);

        Navigation.NavigateTo($"/fittings/{fitting}/shortlist?model={_shop.Models["Moorlace"]}");
        var again = Open(fitting);

        Assert.All(Models(again), model => Assert.Equal("Moorlace", model));
        await again.InvokeAsync(() => again.FindAll("button.more").SingleOrDefault()?.Click());
        Assert.InRange(left, 1, again.FindAll(".pair").Count);
    }

    [Theory]
    [InlineData("model=nonsense&upto=many&from=moon&teacher=x&a=1&b=2")]
    [InlineData("maker=%00%F0%9F%A9%B0&upto=99999999999999999999")]
    public async Task An_address_that_says_nonsense_shows_a_list_all_the_same(string query)
    {
        await _shop.StockAsync();
        var fitting = await _shop.DraftAsync();
        Navigation.NavigateTo($"/fittings/{fitting}/shortlist?{query}");

        var page = Render<FittingPage>(parameters => parameters.Add(it => it.Id, fitting).Add(it => it.Station, "shortlist"));

        page.WaitForElement(".answer");
    }

    [Fact]
    public async Task A_list_that_is_narrowed_to_nothing_says_which_filter_to_loosen()
    {
        await _shop.StockAsync();
        var fitting = await _shop.DraftAsync();
        Navigation.NavigateTo($"/fittings/{fitting}/shortlist?maker=Pellworth%20Bench&upto=100");
        var page = Render<FittingPage>(parameters => parameters.Add(it => it.Id, fitting).Add(it => it.Station, "shortlist"));
        page.WaitForElement(".looser");

        Assert.Contains("No pair passes all of this.", page.Markup, StringComparison.Ordinal);
        await page.InvokeAsync(() => page.FindAll(".looser button").Single(key => key.TextContent.StartsWith("Not only: up to", StringComparison.Ordinal)).Click());

        page.WaitForElement(".pair");
        Assert.All(Models(page), model => Assert.Equal("Harrowfen", model));
    }

    [Fact]
    public async Task What_the_teacher_asks_for_is_marked_with_a_word_and_can_be_all_there_is()
    {
        await _shop.StockAsync();
        var fitting = await _shop.DraftAsync();
        await AskAsync(fitting, asked: "Moorlace", unwanted: "Harrowfen");
        Navigation.NavigateTo($"/fittings/{fitting}/shortlist?teacher=asked");
        var asked = Open(fitting);
        Assert.All(Models(asked), model => Assert.Equal("Moorlace", model));
        Assert.All(asked.FindAll(".pair"), pair => Assert.Contains("the teacher asks for it", pair.TextContent, StringComparison.Ordinal));

        Navigation.NavigateTo($"/fittings/{fitting}/shortlist?teacher=not-unwanted");
        asked = Open(fitting);
        Assert.DoesNotContain("Harrowfen", Models(asked));
        Navigation.NavigateTo($"/fittings/{fitting}/shortlist?model={_shop.Models["Harrowfen"]}");
        asked = Open(fitting);
        Assert.All(asked.FindAll(".pair"), pair => Assert.Contains("the teacher does not want it", pair.TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_empty_shelf_is_said_plainly_with_the_pair_to_order_and_its_time()
    {
        await _shop.StockAsync(onHand: 0);
        var fitting = await _shop.DraftAsync(read: false);
        await _shop.ReadAllAsync(fitting);
        var page = Open(fitting);

        Assert.Contains("No pair on the shelf is likely to fit:", page.Find(".says").TextContent, StringComparison.Ordinal);
        Assert.Contains("Order one.", page.Find(".says").TextContent, StringComparison.Ordinal);
        var order = page.Find(".pair");
        Assert.Contains("order", order.QuerySelector(".where")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("about 4 weeks", order.QuerySelector(".where")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(page.FindAll(".talk button"), key => key.TextContent == "Fetched");
    }

    [Fact]
    public async Task Where_too_little_is_known_for_an_order_more_readings_are_asked_for()
    {
        await _shop.StockAsync(onHand: 0);
        var page = Open(await _shop.DraftAsync(read: false));

        Assert.Contains("Read more of the feet", page.Find(".says").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Order one.", page.Find(".says").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_marked_pairs_lie_over_the_feet_together_each_with_its_letter_and_the_difference_in_words()
    {
        await _shop.StockAsync();
        var fitting = await _shop.DraftAsync();
        var page = Open(fitting);

        await page.InvokeAsync(() => page.FindAll("button.mark")[0].Click());
        page.WaitForAssertion(() => Assert.Contains("Mark another pair", page.Find(".says").TextContent, StringComparison.Ordinal));
        await page.InvokeAsync(() => page.FindAll("button.mark")[1].Click());

        page.WaitForElement(".two");
        Assert.StartsWith("B is ", page.Find(".two h3").TextContent, StringComparison.Ordinal);
        Assert.Equal(["A", "B"], page.FindAll("button.mark[aria-pressed=true]").Select(mark => mark.TextContent));
        Assert.Equal((2, 2), (page.FindAll("path.shoe:not(.other)").Count(path => path.Closest(".mat") is not null), page.FindAll("path.shoe.other").Count));
        Assert.Equal(18, page.FindAll(".two tbody svg.strip").Count);

        // The two stand in the address: a reload compares them again.
        var again = Open(fitting);
        again.WaitForElement(".two");
        await again.InvokeAsync(() => Button(again, "Done comparing").Click());
        again.WaitForAssertion(() => Assert.Empty(again.FindAll("path.shoe.other")));
        Assert.DoesNotContain("a=", Navigation.Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Before_anything_is_read_the_list_says_that_it_is_what_feet_usually_are()
    {
        await _shop.StockAsync();
        var page = Open(await _shop.DraftAsync(read: false));

        Assert.Contains("Nothing has been read yet:", page.Find(".note").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll(".pair"));
    }

    [Fact]
    public async Task When_the_list_cannot_be_made_the_one_before_stays_and_it_can_be_tried_again()
    {
        await _shop.StockAsync();
        var page = Open(await _shop.DraftAsync());
        await using var db = Shop.CreateDbContext();
        await db.Database.ExecuteSqlAsync($"ALTER TABLE FittingTryOns RENAME TO Gone", TestContext.Current.CancellationToken);

        await page.InvokeAsync(() => page.FindAll(".head .switch button")[1].Click());

        page.WaitForAssertion(() => Assert.Contains("The list could not be made.", page.Find(".says").TextContent, StringComparison.Ordinal));
        Assert.NotEmpty(page.FindAll(".answer.old .pair"));
        await db.Database.ExecuteSqlAsync($"ALTER TABLE Gone RENAME TO FittingTryOns", TestContext.Current.CancellationToken);
        await page.InvokeAsync(() => Button(page, "Try again").Click());
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".answer.old")));
        Assert.Equal("true", page.FindAll(".head .switch button")[1].GetAttribute("aria-pressed"));
    }

    [Fact]
    public async Task Every_key_is_tall_enough_for_a_thumb()
    {
        await _shop.StockAsync();
        var page = Open(await _shop.DraftAsync());
        await page.InvokeAsync(() => Button(page, "Filters").Click());

        Assert.All(page.FindAll(".work .key, .talk .key"), key => Assert.True(key.ClassList.Contains("tall") || key.ClassList.Contains("main"), key.OuterHtml));
    }

    [Theory]
    [InlineData("demi-pointe")]
    [InlineData("soft")]
    [InlineData("jazz")]
    [InlineData("tap")]
    [InlineData("character")]
    public async Task A_child_under_twelve_may_have_every_other_kind(string kind)
    {
        await _shop.StockAsync(kind);
        var page = Open(await _shop.DraftAsync(kind, age: 9));

        Assert.Equal(3, page.FindAll(".where b.walk").Count);
        Assert.DoesNotContain("Shank", page.Find(".work").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("ointe", page.Find(".work").TextContent + page.Find(".talk").TextContent, StringComparison.Ordinal);
    }

    private async Task AskAsync(Guid fitting, string asked, string unwanted)
    {
        var studio = await Shop.HasAsync(Studio.Of(Guid.CreateVersion7(), Shop.ShopId, "Larch"));
        await Shop.HasAsync(StudioModelWish.Of(Guid.CreateVersion7(), Shop.ShopId, studio.Id, _shop.Models[asked], isAsked: true));
        await Shop.HasAsync(StudioModelWish.Of(Guid.CreateVersion7(), Shop.ShopId, studio.Id, _shop.Models[unwanted], isAsked: false));
        await using var db = Shop.CreateDbContext();
        var dancerId = (await db.Fittings.SingleAsync(row => row.Id == fitting)).DancerId;
        await db.Dancers.Where(row => row.Id == dancerId).ExecuteUpdateAsync(set => set.SetProperty(row => row.StudioId, studio.Id));
    }

    private IRenderedComponent<FittingPage> Open(Guid fitting)
    {
        var page = Render<FittingPage>(parameters => parameters.Add(it => it.Id, fitting).Add(it => it.Station, "shortlist"));
        page.WaitForElement(".pair");
        return page;
    }

    private static string Plain(IElement element) => System.Text.RegularExpressions.Regex.Replace(element.TextContent, @"\s+", " ", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1));

    private static IEnumerable<string> Models(IRenderedComponent<FittingPage> page) => page.FindAll(".pair h3").Select(name => name.FirstChild!.TextContent.Trim());

    private static List<string> Names(IRenderedComponent<FittingPage> page) => [.. page.FindAll(".pairs.few .pair h3").Select(name => name.TextContent)];

    private static IElement Button(IRenderedComponent<FittingPage> page, string text) => page.FindAll("button").Single(key => key.TextContent.Trim() == text);

    private static IElement Filter(IRenderedComponent<FittingPage> page, string group, string name) =>
        page.FindAll(".filters fieldset").Single(set => set.QuerySelector("legend")!.TextContent == group)
            .QuerySelectorAll("button").Single(key => key.TextContent.StartsWith(name, StringComparison.Ordinal));
}
