using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>A girl of eleven: her father's yes first, no pointe shoe, soft shoes with as much care, and nothing on the screen that is not for her eyes.</summary>
public sealed class ElevenYearOldTests(RunningShop shop, ITestOutputHelper output) : IClassFixture<RunningShop>
{
    private static readonly string[] Stations = ["Arrival", "Feet", "Shortlist", "Try-ons", "Decision"];

    [Theory]
    [InlineData(1024, 768)]
    [InlineData(768, 1024)]
    public async Task She_is_measured_with_consent_and_sold_soft_shoes(int width, int height)
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, new() { Width = width, Height = height });
        await page.SignInAsync();
        var thumb = new Thumb(page);
        await page.GotoAsync("/dancers/new");
        await thumb.TypeAsync(page.GetByLabel("Name", new() { Exact = true }), $"Isabeau Tansywick {width}");
        await thumb.TypeAsync(page.GetByLabel("Born on"), Thumb.Born(11));
        await thumb.TypeAsync(page.GetByLabel("Parent or guardian"), "Hugh Tansywick");
        await thumb.TypeAsync(page.GetByLabel("How to reach them"), "01632 960188");
        await thumb.TapAsync("Put on file");
        await Expect(page.GetByText("Without their yes no feet are measured.")).ToBeVisibleAsync();
        await thumb.TapAsync(page.GetByRole(AriaRole.Checkbox));
        await thumb.TapAsync("Put on file");

        // Pointe is asked for; kindly, not yet.
        await thumb.TapAsync("Pointe", exact: true);
        await thumb.TapAsync("Start a fitting");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Soft shoes for now" })).ToBeVisibleAsync();
        await Expect(page.GetByText("Journal of Dance Medicine & Science")).ToBeVisibleAsync();
        await thumb.FollowAsync("Shortlist", exact: true);
        await Expect(page.GetByText("Fit soft shoes with care")).ToBeVisibleAsync();
        await Expect(page.Locator("li.pair")).ToHaveCountAsync(0);
        await thumb.FollowAsync("Fit soft shoes");
        await Expect(page).ToHaveURLAsync(new Regex("/arrival$", RegexOptions.None, TimeSpan.FromSeconds(1)));
        var refused = page.Url;
        await thumb.TapAsync("Fit soft shoes");
        await page.WaitForURLAsync(address => address != refused && address.EndsWith("/arrival", StringComparison.Ordinal));
        await thumb.ChooseAsync("Sore today?", "Nothing sore");
        await thumb.FollowAsync("Feet", exact: true);
        await thumb.ReadAsync("221", "222", "83", "83");

        foreach (var station in Stations)
        {
            await thumb.FollowAsync(station);
            await Expect(page).ToHaveURLAsync(new Regex($"/{station.ToLowerInvariant()}$", RegexOptions.None, TimeSpan.FromSeconds(1)));
            await SeesHerFeetOnlyAsync(page, thumb);
        }

        await thumb.FollowAsync("Shortlist", exact: true);
        await thumb.TapAsync("Fetched");
        await thumb.FollowAsync("Try-ons");
        await thumb.TapAsync("Next");
        await thumb.ChooseAsync("Does it fit?", "It fits");
        await thumb.TapAsync("Decide on");
        await page.WaitForURLAsync(address => address.EndsWith("/decision", StringComparison.Ordinal));
        await thumb.TapAsync("Sell for");
        var sheet = page.GetByRole(AriaRole.Link, new() { Name = "Open the sheet" });
        await Expect(sheet).ToBeVisibleAsync(new() { Timeout = 20_000 });
        var answer = await page.APIRequest.GetAsync(shop.Address + await sheet.GetAttributeAsync("href"));
        Assert.Equal("application/pdf", answer.Headers["content-type"]);

        output.WriteLine($"{thumb.Taps} taps at {width} x {height}");
    }

    // One tap away on every station, and back by one.
    private static async Task SeesHerFeetOnlyAsync(IPage page, Thumb thumb)
    {
        await thumb.TapAsync("view");
        var view = page.Locator("main.child, .child").First;
        await Expect(view).ToBeVisibleAsync();
        var said = await view.InnerTextAsync();
        Assert.All(["in 10", "likely", "strength", "note", "not ready", "score", "chance", "%"], word => Assert.DoesNotContain(word, said, StringComparison.OrdinalIgnoreCase));
        await thumb.TapAsync(view.GetByRole(AriaRole.Button).First);
        await Expect(page.GetByRole(AriaRole.Navigation, new() { Name = "Stations of the fitting" })).ToBeVisibleAsync();
    }
}
