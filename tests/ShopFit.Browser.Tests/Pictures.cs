using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>Takes the pictures of the README; not a test of its own, so it runs only when asked for (tests/pictures.sh).</summary>
public sealed class Pictures(RunningShop shop) : IClassFixture<RunningShop>
{
    private static readonly string Folder = Path.Combine(Repository.Root, "tests", "pictures");

    [Fact(Explicit = true)]
    public async Task Of_the_stations_and_the_sheet()
    {
        Directory.CreateDirectory(Folder);
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Flat);
        await page.SignInAsync();
        await page.GotoAsync("/dancers");
        await page.GetByRole(AriaRole.Searchbox).FillAsync("Tilly Fernsby-Quoin");
        await page.GetByRole(AriaRole.Link, new() { Name = "Tilly Fernsby-Quoin" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "fitting" }).First.ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Measure the feet" }).ClickAsync();
        await page.WaitForURLAsync(url => url.EndsWith("/feet", StringComparison.Ordinal));
        await page.ReadAsync("Length, left foot", "238.5");
        await page.ReadAsync("Length, right foot", "237");
        await page.ReadAsync("Ball, left foot", "88");
        await page.SayAsync("Toes, longest to fourth", "medium");
        await page.SayAsync("Second toe, by the big toe", "level");
        await page.SayAsync("Forefoot, height at joints", "medium");
        await page.SayAsync("Squeeze, by hand", "some");
        await page.SayAsync("Point, ankle and instep", "very flexible");
        await TakeAsync(page, "feet");

        await page.GetByRole(AriaRole.Link, new() { Name = "See the shortlist" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Listitem).First).ToBeVisibleAsync();
        await TakeAsync(page, "shortlist");
        await page.GetByRole(AriaRole.Button, new() { Name = "Fetched" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Try-ons" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Next:" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "1 pair, 1 walk" })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "It does not fit" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "En pointe" }).ClickAsync();
        foreach (var (check, seen) in new[] { ("Drop, left", "held"), ("Heel fabric, left", "a fold"), ("Arch, left", "on it"), ("Arch, right", "behind it") })
        {
            var key = page.GetByRole(AriaRole.Group, new() { Name = check }).GetByRole(AriaRole.Button, new() { Name = seen });
            await key.ClickAsync();
            await Expect(key).ToHaveAttributeAsync("aria-pressed", "true");
        }

        await Expect(page.Locator(".says")).ToContainTextAsync("last one");
        await page.Locator(".positions").ScrollIntoViewIfNeededAsync();
        await page.EvaluateAsync("document.querySelector('.positions').scrollIntoView()");
        await TakeAsync(page, "try-ons");
        await page.GetByRole(AriaRole.Link, new() { Name = "Shortlist", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Decide on" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Sell for" })).ToBeVisibleAsync();
        await TakeAsync(page, "decision");

        await page.GetByRole(AriaRole.Button, new() { Name = "Sell for" }).ClickAsync();
        var sheet = page.GetByRole(AriaRole.Link, new() { Name = "Open the sheet" });
        await Expect(sheet).ToBeVisibleAsync();
        var answer = await page.APIRequest.GetAsync(shop.Address + await sheet.GetAttributeAsync("href"));
        await File.WriteAllBytesAsync(Path.Combine(Folder, "sheet.pdf"), await answer.BodyAsync(), TestContext.Current.CancellationToken);
        Assert.True(answer.Ok);
    }

    private static async Task TakeAsync(IPage page, string name)
    {
        await page.EvaluateAsync("document.activeElement?.blur()");
        foreach (var (screen, colours, kind) in new[] { (Tablet.Upright, ColorScheme.Light, ""), (Tablet.Flat, ColorScheme.Dark, "-dark"), (Tablet.Flat, ColorScheme.Light, "") })
        {
            await page.SetViewportSizeAsync(screen.Width, screen.Height);
            await page.EmulateMediaAsync(new() { ColorScheme = colours });
            await page.WaitForTimeoutAsync(150);
            await page.ScreenshotAsync(new() { Path = Path.Combine(Folder, $"{name}-{screen.Width}{kind}.png") });
        }
    }
}
