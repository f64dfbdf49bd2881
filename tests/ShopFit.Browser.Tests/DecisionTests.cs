using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

public sealed class DecisionTests(RunningShop shop) : IClassFixture<RunningShop>
{
    [Fact]
    public async Task A_reload_in_the_middle_of_the_decision_finds_pair_pads_bag_and_words()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Upright);
        await page.SignInAsync();
        var fitting = await page.StartFittingAsync("Araminta Coldwater", years: 15);
        await page.ReadAsync("Length, left foot", "239");
        await page.ReadAsync("Length, right foot", "238");
        await page.ReadAsync("Ball, left foot", "89");
        await page.GetByRole(AriaRole.Link, new() { Name = "See the shortlist" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Decide on" }).ClickAsync();
        var pair = await page.Locator(".pairhead h2").TextContentAsync();
        await page.Locator(".key.bare[aria-expanded]").First.ClickAsync();
        var wool = page.GetByRole(AriaRole.Group, new() { Name = "loose wool" }).GetByRole(AriaRole.Button, new() { Name = "Left" });
        await wool.ClickAsync();
        await Expect(wool).ToHaveAttributeAsync("aria-pressed", "true");
        await page.GetByRole(AriaRole.Button, new() { Name = "One more of Satin ribbon, pale pink" }).ClickAsync();
        await Expect(page.GetByText("Satin ribbon, pale pink").Last).ToBeVisibleAsync();
        var note = page.GetByLabel("Advice for", new() { Exact = false });
        await note.FillAsync("Loosen the drawstring after class.");
        await note.BlurAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Feet", Exact = true }).ClickAsync();
        await Expect(page.GetByLabel("Length, left foot", new() { Exact = true })).ToHaveValueAsync("239");

        await page.GotoAsync($"{fitting}/decision");

        await Expect(page.Locator(".pairhead h2")).ToHaveTextAsync(pair!);
        await Expect(wool).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Satin ribbon, pale pink" }).Locator("output")).ToHaveTextAsync("1");
        await Expect(note).ToHaveValueAsync("Loosen the drawstring after class.");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sell for" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Open the sheet" })).ToBeVisibleAsync();
    }
}
