using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>A whole fitting of a new dancer's first pair, by taps alone and counted: typing is her name, her people's, and numbers.</summary>
public sealed class FirstPairTests(RunningShop shop, ITestOutputHelper output) : IClassFixture<RunningShop>
{
    // Common practice, no source: a minute's work for a thumb.
    private const int MostTaps = 25;

    [Theory]
    [InlineData(1024, 768)]
    [InlineData(768, 1024)]
    public async Task A_first_pair_by_quick_readings_takes_at_most_25_taps(int width, int height)
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, new() { Width = width, Height = height });
        await page.SignInAsync();
        var thumb = new Thumb(page);
        await page.GotoAsync("/dancers/new");
        await thumb.TypeAsync(page.GetByLabel("Name", new() { Exact = true }), $"Leonora Marshwiggin {width}");
        await thumb.TypeAsync(page.GetByLabel("Born on"), Thumb.Born(13));
        await thumb.TypeAsync(page.GetByLabel("Parent or guardian"), "Agatha Marshwiggin");
        await thumb.TypeAsync(page.GetByLabel("How to reach them"), "01632 960177");
        await thumb.TapAsync(page.GetByRole(AriaRole.Checkbox));
        await thumb.TapAsync(page.GetByRole(AriaRole.Button, new() { Name = "Put on file" }));
        await thumb.TapAsync(page.GetByRole(AriaRole.Button, new() { Name = "Start a fitting" }));

        await thumb.ChooseAsync("First pair?", "Yes");
        await thumb.ChooseAsync("Sore today?", "Nothing sore");
        await thumb.ChooseAsync("The teacher says", "yes, today");
        await thumb.TapAsync(page.GetByRole(AriaRole.Button, new() { Name = "Yes to all 6" }));
        await thumb.TapAsync(page.GetByRole(AriaRole.Link, new() { Name = "Measure the feet" }));

        await thumb.ReadAsync("236", "237,5", "88", "88");
        await thumb.ChooseAsync("Toes, longest to fourth", "medium");
        await thumb.ChooseAsync("Second toe, by the big toe", "level");
        await thumb.ChooseAsync("Forefoot, height at joints", "medium");
        await thumb.ChooseAsync("Squeeze, by hand", "some");
        await thumb.ChooseAsync("Point, ankle and instep", "medium");
        await thumb.ChooseAsync("Strength, rising on two feet", "steady");
        await thumb.TapAsync(page.GetByRole(AriaRole.Link, new() { Name = "See the shortlist" }));
        await thumb.TapAsync(page.GetByRole(AriaRole.Link, new() { Name = "Decide on" }));
        // The pair of the link is kept once it has left the address.
        await page.WaitForURLAsync(address => address.EndsWith("/decision", StringComparison.Ordinal));
        await thumb.TapAsync(page.GetByRole(AriaRole.Button, new() { Name = "Sell for" }));
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Open the sheet" })).ToBeVisibleAsync(new() { Timeout = 20_000 });

        output.WriteLine($"{thumb.Taps} taps at {width} x {height}");
        Assert.InRange(thumb.Taps, 1, MostTaps);
    }
}
