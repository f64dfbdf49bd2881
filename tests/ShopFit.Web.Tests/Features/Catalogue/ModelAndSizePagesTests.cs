using Bunit;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.People;
using ShopFit.Web.Shared;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Catalogue;

public sealed class ModelAndSizePagesTests : PageTest
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
    public async Task A_model_shows_its_sizes_with_price_form_and_shelf_and_each_opens()
    {
        var page = await ModelAsync("W38");

        Assert.Equal(4, page.FindAll("tbody tr").Count);
        var row = page.FindAll("tbody tr")[1];
        Assert.Equal(["38 slender reed eu", "W38", "€89.50", "233.3 mm", "the label alone", "2", "Shelf (2)"], row.QuerySelectorAll("td").Select(cell => cell.TextContent.Trim()));
        Assert.Equal($"/catalogue/sizes/{await CatalogueShop.IdOfAsync(Shop, "W38")}", row.QuerySelector("a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task Its_price_is_set_for_all_sizes_and_undone_with_one_key()
    {
        var page = await ModelAsync("W38");

        page.Find(".priced input").Input("99,5");
        page.Find(".priced").Submit();
        page.WaitForAssertion(() => Assert.Equal(4, PricesOf(page).Count(price => price == "€99.50")));

        await page.InvokeAsync(Services.GetRequiredService<UndoOffer>().TakeAsync);
        page.WaitForAssertion(() => Assert.Equal(3, PricesOf(page).Count(price => price == "€89.50")));
        Assert.Contains("taken back", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_no_price_is_said_and_stays_as_it_was_typed()
    {
        var page = await ModelAsync("W38");

        page.Find(".priced input").Input("62.505");
        page.Find(".priced").Submit();

        page.WaitForAssertion(() => Assert.Equal("Price of all its sizes: “62.505” is not a price in EUR. Type it like 62.50.", page.Find(".priced .problem").TextContent));
        Assert.Equal("62.505", page.Find(".priced input").GetAttribute("value"));
    }

    [Fact]
    public async Task A_model_is_marked_as_made_no_longer_and_how_it_is_made_is_chosen()
    {
        var page = await ModelAsync("W38");

        page.FindAll("button").Single(key => key.TextContent == "made no longer").Click();
        page.WaitForAssertion(() => Assert.Equal("made no longer", page.Find(".pagehead .attention").TextContent));
        page.FindAll("button").Single(key => key.TextContent == "moulded").Click();

        page.WaitForAssertion(() => Assert.Equal("true", page.FindAll("button").Single(key => key.TextContent == "moulded").GetAttribute("aria-pressed")));
        await using var db = Shop.CreateDbContext();
        Assert.Equal(("moulded", true), await db.ShoeModels.Where(model => model.Name == "Wren").Select(model => ValueTuple.Create(model.Construction, model.Discontinued)).SingleAsync(Stop));
    }

    [Fact]
    public async Task A_size_shows_eight_numbers_with_where_they_come_from_and_how_sure()
    {
        await MeasureAsync("W38", 236);

        var measured = await SizeAsync("W38");
        var graded = await SizeAsync("W39");
        var given = await SizeAsync("R38");

        // A label alone: maker's part 5 and model's part 4 mm of length, together 6.4; a measured model 1; a maker's data 1.5 *(cp)*.
        Assert.Equal(["Length 236 mm 1 mm measured by the shop", "Box, breadth 76.9 mm"], [Row(measured, 0), Row(measured, 1)[..20]]);
        Assert.Equal("Length 242.7 mm 1 mm graded from the sample of size 38 slender reed", Row(graded, 0));
        Assert.Equal("Vamp 64 mm 5.6 mm the label alone", Row(graded, 6));
        Assert.Equal("Length 240 mm 1.5 mm the maker’s data", Row(given, 0));
        Assert.Contains("6291041500213", measured.Markup, StringComparison.Ordinal);
        Assert.Contains("none yet: it cannot be sold", given.Markup, StringComparison.Ordinal);
        Assert.NotNull(measured.Find("to-scale .bar"));
        Assert.Contains("236 mm long", measured.Find("to-scale svg").GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.Equal($"/shelf/{await CatalogueShop.IdOfAsync(Shop, "W38")}", measured.FindAll("a").Single(link => link.TextContent == "What came and went").GetAttribute("href"));
    }

    [Fact]
    public async Task A_sample_is_taken_back_from_the_history_of_a_form()
    {
        await MeasureAsync("W38", 236);
        var page = await SizeAsync("W39");

        page.FindAll("button").Single(key => key.TextContent == "Take back").Click();

        page.WaitForAssertion(() => Assert.Contains("taken back 14 March 2026", page.Markup, StringComparison.Ordinal));
        Assert.EndsWith("the label alone", Row(page, 0), StringComparison.Ordinal);

        await page.InvokeAsync(Services.GetRequiredService<UndoOffer>().TakeAsync);
        page.WaitForAssertion(() => Assert.EndsWith("graded from the sample of size 38 slender reed", Row(page, 0), StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_sample_counts_again_for_a_few_minutes_only_and_by_a_manager_only()
    {
        await MeasureAsync("W38", 236);
        await using var db = Shop.CreateDbContext();
        var sample = (await db.MeasuredSamples.SingleAsync(Stop)).Id;
        var restore = new RestoreSample(Shop.Writes, Shop.Clock);
        await Assert.ThrowsAsync<NotPermittedException>(() => restore.RunAsync(Shop.Fitter, Guid.CreateVersion7(), sample, Stop));
        Assert.IsType<RestoreSampleOutcome.TooLate>(await restore.RunAsync(Shop.Manager, Guid.CreateVersion7(), sample, Stop));
        await new WithdrawSample(Shop.Writes, Shop.Clock).RunAsync(Shop.Manager, Guid.CreateVersion7(), sample, Stop);

        Shop.Clock.Advance(TimeSpan.FromMinutes(6));

        Assert.IsType<RestoreSampleOutcome.TooLate>(await restore.RunAsync(Shop.Manager, Guid.CreateVersion7(), sample, Stop));
    }

    [Fact]
    public void An_address_that_leads_nowhere_says_so()
    {
        Assert.Contains("Not on file", Render<ModelPage>(page => page.Add(model => model.ModelId, Guid.CreateVersion7())).Markup, StringComparison.Ordinal);
        Assert.Contains("Not on file", Render<SizePage>(page => page.Add(size => size.SizeId, Guid.CreateVersion7())).Markup, StringComparison.Ordinal);
    }

    private static IEnumerable<string> PricesOf(IRenderedComponent<ModelPage> page) =>
        page.FindAll("tbody")[0].Children.Select(row => row.Children[2].TextContent.Trim());

    private static string Row(IRenderedComponent<SizePage> page, int row) =>
        string.Join(' ', page.FindAll("tbody")[0].Children[row].Children.Select(cell => cell.TextContent.Trim()));

    private async Task<IRenderedComponent<ModelPage>> ModelAsync(string code)
    {
        var id = await CatalogueShop.ModelOfAsync(Shop, code);
        var page = Render<ModelPage>(parameters => parameters.Add(model => model.ModelId, id));
        page.WaitForElement("tbody");
        return page;
    }

    private async Task<IRenderedComponent<SizePage>> SizeAsync(string code)
    {
        var id = await CatalogueShop.IdOfAsync(Shop, code);
        var page = Render<SizePage>(parameters => parameters.Add(size => size.SizeId, id));
        page.WaitForElement("tbody");
        return page;
    }

    private async Task MeasureAsync(string code, double length) => Assert.IsType<MeasureSampleOutcome.Graded>(
        await new MeasureSample(Shop.Writes, Shop.Clock).RunAsync(
            Shop.Manager,
            Guid.CreateVersion7(),
            new MeasureSampleRequest(await CatalogueShop.IdOfAsync(Shop, code), [length, null, null, null, null, null, null, null], new DateOnly(2026, 3, 14), "Ines"),
            Stop));
}
