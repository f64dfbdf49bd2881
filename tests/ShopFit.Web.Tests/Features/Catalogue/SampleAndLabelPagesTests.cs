using Bunit;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Features.People;
using ShopFit.Web.Shared;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Catalogue;

public sealed class SampleAndLabelPagesTests : PageTest
{
    protected override Actor? SignedIn => Shop.Manager;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddLocalization().AddCatalogue();
        await CatalogueShop.ImportAsync(Shop);
    }

    [Fact]
    public async Task A_sample_is_previewed_for_every_size_and_graded_with_one_key()
    {
        var page = await SampleAsync("W38");

        page.Find("#part-0").Change("236,5");
        page.WaitForAssertion(() => Assert.Contains("236.5 (+3.2)", Text(page.Find("tr.measured")), StringComparison.Ordinal));
        Assert.Contains("243.2 (+3.2)", Text(page.FindAll("tbody tr")[^1]), StringComparison.Ordinal);
        Assert.Equal(0, await SamplesAsync());

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Equal("On file. Wren is graded from size 38 slender reed: 4 sizes.", page.Find("form [role=status]").TextContent.Trim()));
        Assert.Equal(1, await SamplesAsync());
        await page.InvokeAsync(Services.GetRequiredService<UndoOffer>().TakeAsync);
        Assert.Equal(0, await SamplesAsync());
    }

    [Fact]
    public async Task A_sample_far_from_its_label_is_asked_again_before_it_is_taken()
    {
        var page = await SampleAsync("W38");

        // The label says 233.3 mm.
        page.Find("#part-0").Change("245.3");
        page.WaitForAssertion(() => Assert.Contains("12 mm longer than its label says. Measure once more?", page.Find(".doubt").TextContent, StringComparison.Ordinal));
        page.Find("form").Submit();
        page.WaitForAssertion(() => Assert.Contains("Nothing was changed.", page.Find("form [role=status]").TextContent, StringComparison.Ordinal));
        Assert.Equal(0, await SamplesAsync());

        page.FindAll("button").Single(key => key.TextContent == "I measured twice: take it").Click();

        page.WaitForAssertion(() => Assert.Contains("On file.", page.Find("form [role=status]").TextContent, StringComparison.Ordinal));
        Assert.Equal(1, await SamplesAsync());
    }

    [Fact]
    public async Task What_cannot_be_is_said_where_it_stands_and_keeps_what_was_typed()
    {
        var page = await SampleAsync("W38");

        page.Find("#part-1").Change("78x");
        page.Find("#part-2").Change("21.2");
        page.WaitForAssertion(() => Assert.Equal("Box, breadth: “78x” is not a number. Type it like 76.9.", page.Find("#part-1-says").TextContent.Trim()));
        Assert.Equal("Ball, girth: 21.2 cannot be. It is 100 to 350 mm.", page.Find("#part-2-says").TextContent.Trim());
        Assert.Equal("78x", page.Find("#part-1").GetAttribute("value"));

        page.Find("form").Submit();
        page.WaitForAssertion(() => Assert.Equal("Nothing was changed. Look at what is marked first.", page.Find("form [role=status]").TextContent.Trim()));
        page.Find("#part-1").Change("");
        page.Find("#part-2").Change("");
        page.Find("form").Submit();
        page.WaitForAssertion(() => Assert.Equal("Nothing was measured yet: fill in one number at least.", page.Find("form [role=status]").TextContent.Trim()));
        Assert.Equal(0, await SamplesAsync());
    }

    [Fact]
    public async Task Words_on_labels_get_their_steps_by_tap_with_a_preview_and_one_key()
    {
        var page = await LabelsAsync();
        Assert.True(page.Find(".keep .main").HasAttribute("disabled"));

        Tap(page, "Width of “wide”", "+1");
        page.WaitForAssertion(() => Assert.Contains("1 of 4 sizes change inside: Box, breadth by +2.5 mm (1 sizes); Ball, girth by +7 mm (1 sizes)", Text(page.Find(".keep")), StringComparison.Ordinal));
        Tap(page, "Shank of “oak”", "8");
        page.WaitForAssertion(() => Assert.Contains("Shank by +2.8 points", Text(page.Find(".keep")), StringComparison.Ordinal));
        page.Find(".keep .main").Click();

        page.WaitForAssertion(() => Assert.Contains("holds now", page.Markup, StringComparison.Ordinal));
        await using var db = Shop.CreateDbContext();
        var meanings = (await db.LabelMappings.SingleAsync(Stop)).Meanings();
        Assert.Equal((1, 8), (meanings.Widths["wide"], meanings.Shanks["oak"]));

        await page.InvokeAsync(Services.GetRequiredService<UndoOffer>().TakeAsync);
        page.WaitForAssertion(() => Assert.Contains("taken back", page.Markup, StringComparison.Ordinal));
        Assert.Equal("false", Key(page, "Width of “wide”", "+1").GetAttribute("aria-pressed"));
    }

    [Fact]
    public async Task Meanings_that_are_taken_back_by_hand_hold_again_when_that_is_undone()
    {
        var page = await LabelsAsync();
        Tap(page, "Width of “wide”", "+1");
        page.WaitForAssertion(() => Assert.False(page.Find(".keep .main").HasAttribute("disabled")));
        page.Find(".keep .main").Click();
        page.WaitForAssertion(() => Assert.Contains("holds now", page.Markup, StringComparison.Ordinal));

        page.FindAll("button").Single(key => key.TextContent == "Take back").Click();
        page.WaitForAssertion(() => Assert.DoesNotContain("holds now", page.Markup, StringComparison.Ordinal));
        await page.InvokeAsync(Services.GetRequiredService<UndoOffer>().TakeAsync);

        page.WaitForAssertion(() => Assert.Contains("holds now", page.Markup, StringComparison.Ordinal));
        Assert.Equal("true", Key(page, "Width of “wide”", "+1").GetAttribute("aria-pressed"));
    }

    [Fact]
    public async Task How_far_labels_run_ahead_is_typed_with_comma_or_point()
    {
        var page = await LabelsAsync();

        page.Find("#ahead-eu").Change("2,x");
        page.WaitForAssertion(() => Assert.Equal("Label minus gauge: “2,x” is not a number. Type it like 0.75.", page.Find(".system .problem").TextContent));
        page.Find("#ahead-eu").Change("1,5");

        // Half a Paris point more than usual.
        page.WaitForAssertion(() => Assert.Contains("Length by −3.3 mm (4 sizes)", Text(page.Find(".keep")), StringComparison.Ordinal));
        page.Find(".keep .main").Click();
        page.WaitForAssertion(() => Assert.Contains("holds now", page.Markup, StringComparison.Ordinal));
        await using var db = Shop.CreateDbContext();
        Assert.Equal(new SystemMeaning("eu", 1.5), (await db.LabelMappings.SingleAsync(Stop)).Meanings().Systems["eu"]);
    }

    private static AngleSharp.Dom.IElement Key(IRenderedComponent<LabelsPage> page, string group, string text) =>
        page.FindAll("[role=group]").Single(keys => keys.GetAttribute("aria-label") == group).QuerySelectorAll("button").Single(key => key.TextContent == text);

    private static void Tap(IRenderedComponent<LabelsPage> page, string group, string text) => Key(page, group, text).Click();

    private static string Text(AngleSharp.Dom.IElement element) => string.Join(' ', element.TextContent.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries));

    private async Task<IRenderedComponent<SamplePage>> SampleAsync(string code)
    {
        var (model, size) = (await CatalogueShop.ModelOfAsync(Shop, code), await CatalogueShop.IdOfAsync(Shop, code));
        Services.GetRequiredService<Microsoft.AspNetCore.Components.NavigationManager>().NavigateTo($"/catalogue/models/{model}/sample?size={size}");
        var page = Render<SamplePage>(parameters => parameters.Add(sample => sample.ModelId, model));
        page.WaitForElement("form");
        return page;
    }

    private async Task<IRenderedComponent<LabelsPage>> LabelsAsync()
    {
        var maker = await CatalogueShop.MakerAsync(Shop, "Aldergate");
        var page = Render<LabelsPage>(parameters => parameters.Add(labels => labels.MakerId, maker));
        page.WaitForElement("h2");
        return page;
    }

    private async Task<int> SamplesAsync()
    {
        await using var db = Shop.CreateDbContext();
        return await db.MeasuredSamples.CountAsync(sample => sample.WithdrawnAt == null, Stop);
    }
}
