using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>Whatever is written where words may be written is words: shown as written, or refused with a sentence that keeps it.</summary>
public sealed class StrangeWordsTests(RunningShop shop) : IClassFixture<RunningShop>
{
    private const string Script = "<img src=x onerror=window.struck=1><script>window.struck=1</script>";

    [Theory]
    [InlineData(Script)]
    [InlineData("Robin'); DROP TABLE Dancers; --")]
    [InlineData("{{7*7}} ${7*7} {0} {1} %s =1+1")]
    [InlineData("Zoë 🩰 \u202Etfel\u202C שרה 李")]
    public async Task Strange_words_are_shown_as_they_were_written_and_the_sheet_is_drawn(string words)
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Upright);
        await page.SignInAsync();
        await FillDancerAsync(page, words);
        await page.GetByRole(AriaRole.Button, new() { Name = "Put on file" }).ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync(words);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start a fitting" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Measure the feet" }).ClickAsync();
        await page.ReadAsync("Length, left foot", "239");
        await page.ReadAsync("Length, right foot", "238");
        await page.GetByRole(AriaRole.Link, new() { Name = "See the shortlist" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Decide on" }).ClickAsync();
        var note = page.GetByLabel("Advice for", new() { Exact = false });
        await note.FillAsync(words);
        await note.BlurAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Feet", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Decision", Exact = true }).ClickAsync();
        await Expect(note).ToHaveValueAsync(words);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sell for" }).ClickAsync();
        var sheet = page.GetByRole(AriaRole.Link, new() { Name = "Open the sheet" });
        await Expect(sheet).ToBeVisibleAsync();

        var paper = await page.APIRequest.GetAsync((await sheet.GetAttributeAsync("href"))!);
        Assert.Equal((200, "application/pdf"), (paper.Status, paper.Headers["content-type"]));
        foreach (var address in new[] { "/dancers", "/", "/sales", "/shelf" })
        {
            await page.GotoAsync(address);
            await Expect(page.Locator("h1").First).ToBeVisibleAsync();
        }

        Assert.Null(await page.EvaluateAsync<int?>("() => window.struck ?? null"));
        Assert.DoesNotContain("fail:", shop.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Too_many_words_are_refused_with_a_sentence_and_the_page_goes_on()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Upright);
        await page.SignInAsync();
        // Pasted at once, as by a hand that slipped: more than the line to the shop's computer carries in one piece.
        await FillDancerAsync(page, "Ada", paste: new string('x', 40_000));
        await page.GetByRole(AriaRole.Button, new() { Name = "Put on file" }).ClickAsync();

        await Expect(page.GetByRole(AriaRole.Alert).First).ToContainTextAsync("longer than 200 letters");
        await page.GetByLabel("Studio").FillAsync("Larch");
        await page.GetByRole(AriaRole.Button, new() { Name = "Put on file" }).ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Ada");
    }

    private static async Task FillDancerAsync(IPage page, string words, string? paste = null)
    {
        await page.GotoAsync("/dancers/new");
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync(words);
        await page.GetByLabel("Born on").FillAsync("2011-05-05");
        await page.GetByLabel("Teacher").FillAsync(words);
        await page.GetByLabel("Parent or guardian").FillAsync(words);
        await page.GetByLabel("How to reach them").FillAsync(words);
        await page.GetByRole(AriaRole.Checkbox).CheckAsync();
        var studio = page.GetByLabel("Studio");
        if (paste is null)
        {
            await studio.FillAsync(words);
            return;
        }

        await studio.FocusAsync();
        await page.Keyboard.InsertTextAsync(paste);
    }
}
