using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>A whole fitting of a new dancer's first pair, by taps alone and counted: typing is her name, her people's, and numbers.</summary>
public sealed class FirstPairTests(RunningShop shop, ITestOutputHelper output) : IClassFixture<RunningShop>
{
    // Common practice, no source: a minute's work for a thumb.
    private const int MostTaps = 25;

    private int _taps;

    [Theory]
    [InlineData(1024, 768)]
    [InlineData(768, 1024)]
    public async Task A_first_pair_by_quick_readings_takes_at_most_25_taps(int width, int height)
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, new() { Width = width, Height = height });
        await page.SignInAsync();
        await page.GotoAsync("/dancers/new");
        await TypeAsync(page.GetByLabel("Name", new() { Exact = true }), $"Leonora Marshwiggin {width}");
        await TypeAsync(page.GetByLabel("Born on"), DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date).AddYears(-13).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        await TypeAsync(page.GetByLabel("Parent or guardian"), "Agatha Marshwiggin");
        await TypeAsync(page.GetByLabel("How to reach them"), "01632 960177");
        await TapAsync(page.GetByRole(AriaRole.Checkbox));
        await TapAsync(page.GetByRole(AriaRole.Button, new() { Name = "Put on file" }));
        await TapAsync(page.GetByRole(AriaRole.Button, new() { Name = "Start a fitting" }));

        await ChooseAsync(page, "First pair?", "Yes");
        await ChooseAsync(page, "Sore today?", "Nothing sore");
        await ChooseAsync(page, "The teacher says", "yes, today");
        await TapAsync(page.GetByRole(AriaRole.Button, new() { Name = "Yes to all 6" }));
        await TapAsync(page.GetByRole(AriaRole.Link, new() { Name = "Measure the feet" }));

        // One tap into the first field; the keypad's tick goes on from field to field.
        await TapAsync(page.GetByLabel("Length, left foot", new() { Exact = true }));
        foreach (var number in new[] { "236", "237,5", "88", "88" })
        {
            await page.Keyboard.TypeAsync(number);
            await page.Keyboard.PressAsync("Enter");
        }

        await Expect(page.Locator(".number.read")).ToHaveCountAsync(4);
        await ChooseAsync(page, "Toes, longest to fourth", "medium");
        await ChooseAsync(page, "Second toe, by the big toe", "level");
        await ChooseAsync(page, "Forefoot, height at joints", "medium");
        await ChooseAsync(page, "Squeeze, by hand", "some");
        await ChooseAsync(page, "Point, ankle and instep", "medium");
        await ChooseAsync(page, "Strength, rising on two feet", "steady");
        await TapAsync(page.GetByRole(AriaRole.Link, new() { Name = "See the shortlist" }));
        await TapAsync(page.GetByRole(AriaRole.Link, new() { Name = "Decide on" }));
        // The pair of the link is kept once it has left the address.
        await page.WaitForURLAsync(address => address.EndsWith("/decision", StringComparison.Ordinal));
        await TapAsync(page.GetByRole(AriaRole.Button, new() { Name = "Sell for" }));
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Open the sheet" })).ToBeVisibleAsync(new() { Timeout = 20_000 });

        output.WriteLine($"{_taps} taps at {width} x {height}");
        Assert.InRange(_taps, 1, MostTaps);
    }

    private async Task ChooseAsync(IPage page, string what, string answer)
    {
        var key = page.GetByRole(AriaRole.Group, new() { Name = what }).GetByRole(AriaRole.Button, new() { Name = answer, Exact = true }).First;
        await TapAsync(key);
        await Expect(key).ToHaveAttributeAsync("aria-pressed", "true");
    }

    private async Task TypeAsync(ILocator field, string text)
    {
        await TapAsync(field);
        await field.PressSequentiallyAsync(text);
        await field.PressAsync("Tab");
    }

    private async Task TapAsync(ILocator key)
    {
        await key.TapAsync();
        _taps++;
    }
}
