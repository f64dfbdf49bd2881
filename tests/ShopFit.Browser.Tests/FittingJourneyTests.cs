using Microsoft.Playwright;
using ShopFit.Browser.Support;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

public sealed class FittingJourneyTests(RunningShop shop) : IClassFixture<RunningShop>
{
    private readonly Books _books = new(shop);

    [Fact]
    public async Task A_girl_of_twelve_is_fitted_from_her_name_to_her_sheet_and_the_shelf_goes_down_by_one_pair()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Flat);
        await page.SignInAsync();
        var fitting = await page.StartFittingAsync("Clementine Farrow-Bligh", years: 12);
        await ReadFeetAsync(page);
        await page.GetByRole(AriaRole.Link, new() { Name = "See the shortlist" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Decide on" }).ClickAsync();
        var sell = page.GetByRole(AriaRole.Button, new() { Name = "Sell for" });
        await Expect(sell).ToBeEnabledAsync();

        // Twice, as a thumb in a hurry does.
        await sell.DblClickAsync();

        var sheet = page.GetByRole(AriaRole.Link, new() { Name = "Open the sheet" });
        await Expect(sheet).ToBeVisibleAsync();
        var address = await sheet.GetAttributeAsync("href");
        var answer = await page.APIRequest.GetAsync(shop.Address + address);
        Assert.Equal("application/pdf", answer.Headers["content-type"]);
        var text = await ReadAsync(answer);
        Assert.Contains("Clementine", text, StringComparison.Ordinal);
        Assert.Contains("Stop if toes go numb, white or blue", text, StringComparison.Ordinal);

        // Logs carry ids only: no name of a child, a guardian or a teacher.
        Assert.All(["Clementine", "Farrow-Bligh", "Brindlecombe", "Marrable"], name => Assert.DoesNotContain(name, shop.Output, StringComparison.OrdinalIgnoreCase));

        var code = Assert.Single(await _books.SoldInAsync(fitting[(fitting.LastIndexOf('/') + 1)..]));
        var ledger = await _books.LedgerAsync(code);
        Assert.Equal("-1 sold", ledger[^1]);
        Assert.Equal(await _books.OnHandAsync(code), ledger.Sum(line => int.Parse(line.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)));
    }

    [Fact]
    public async Task A_pair_that_another_tablet_has_just_sold_says_so_and_sells_nothing()
    {
        await using var first = await Tablet.TakeAsync();
        await using var second = await Tablet.TakeAsync();
        var hers = await first.OpenAsync(shop, Tablet.Flat);
        await hers.SignInAsync();
        await hers.StartFittingAsync("Marguerite Oxenholme", years: 14);
        await ReadFeetAsync(hers);
        var lastPair = await LastPairAsync(hers);
        var theirs = await second.OpenAsync(shop, Tablet.Upright);
        await theirs.SignInAsync();
        var otherFitting = await theirs.StartFittingAsync("Rosamund Tallis-Grey", years: 15);
        await ReadFeetAsync(theirs);
        await theirs.GotoAsync($"{otherFitting}/decision?{lastPair}");
        await Expect(theirs.GetByRole(AriaRole.Button, new() { Name = "Sell for" })).ToBeEnabledAsync();

        await hers.GetByRole(AriaRole.Button, new() { Name = "Sell for" }).ClickAsync();
        await Expect(hers.GetByRole(AriaRole.Link, new() { Name = "Open the sheet" })).ToBeVisibleAsync();
        await theirs.GetByRole(AriaRole.Button, new() { Name = "Sell for" }).ClickAsync();

        await Expect(theirs.GetByText("Not sold:")).ToBeVisibleAsync();
        await Expect(theirs.GetByRole(AriaRole.Link, new() { Name = "See the shortlist" })).ToBeVisibleAsync();
        Assert.Empty(await _books.SoldInAsync(otherFitting[(otherFitting.LastIndexOf('/') + 1)..]));
    }

    [Fact]
    public async Task A_girl_of_eleven_is_kindly_shown_no_pointe_shoe()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Upright);
        await page.SignInAsync();
        // What is offered first at that age are soft shoes, which ask for less.
        await page.StartFittingAsync("Dorothea Pennyfeather", years: 11);
        await page.ReadAsync("Length, left foot", "236");
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Toes, longest to fourth" })).ToHaveCountAsync(0);

        await page.GetByRole(AriaRole.Link, new() { Name = "Leave" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Pointe", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Start a fitting" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Shortlist" }).ClickAsync();

        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Soft shoes for now" })).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Decide on" })).ToHaveCountAsync(0);
    }

    private static async Task ReadFeetAsync(IPage page)
    {
        await page.ReadAsync("Length, left foot", "236");
        await page.ReadAsync("Length, right foot", "237,5");
        await page.ReadAsync("Ball, left foot", "88");
        await page.SayAsync("Toes, longest to fourth", "medium");
        await page.SayAsync("Squeeze, by hand", "some");
    }

    // The likeliest pair of which the shelf has one only, chosen and ready to be sold: what names it in the address.
    private static async Task<string> LastPairAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "See the shortlist" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "More pairs" }).ClickAsync();
        await page.Locator("li.pair", new() { HasText = "1 pair" }).First.GetByRole(AriaRole.Button, new() { Name = "over the feet" }).ClickAsync();
        await page.Locator("li.pair.laid", new() { HasText = "1 pair" }).WaitForAsync();
        var decide = page.GetByRole(AriaRole.Link, new() { Name = "Decide on" });
        var address = (await decide.GetAttributeAsync("href"))!;
        await decide.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Sell for" })).ToBeEnabledAsync();
        return address[(address.IndexOf('?', StringComparison.Ordinal) + 1)..];
    }

    private static async Task<string> ReadAsync(IAPIResponse answer)
    {
        using var sheet = PdfDocument.Open(await answer.BodyAsync());
        return string.Join(' ', sheet.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));
    }
}
