using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser.Support;

/// <summary>A thumb on the screen, whose taps are counted.</summary>
internal sealed class Thumb(IPage page)
{
    /// <summary>Taps so far, those into fields counted.</summary>
    public int Taps { get; private set; }

    public async Task TapAsync(ILocator key)
    {
        await key.TapAsync();
        Taps++;
    }

    /// <summary>Taps a key by the words on it.</summary>
    public Task TapAsync(string key, bool exact = false) => TapAsync(page.GetByRole(AriaRole.Button, new() { Name = key, Exact = exact }).First);

    /// <summary>Taps a link by its words.</summary>
    public Task FollowAsync(string link, bool exact = false) => TapAsync(page.GetByRole(AriaRole.Link, new() { Name = link, Exact = exact }).First);

    /// <summary>Taps one of several keys, and waits until it is kept.</summary>
    public async Task ChooseAsync(string what, string answer)
    {
        var key = page.GetByRole(AriaRole.Group, new() { Name = what }).GetByRole(AriaRole.Button, new() { Name = answer, Exact = true }).First;
        await TapAsync(key);
        await Expect(key).ToHaveAttributeAsync("aria-pressed", "true");
    }

    /// <summary>Taps into a field and types.</summary>
    public async Task TypeAsync(ILocator field, string text)
    {
        await TapAsync(field);
        await field.PressSequentiallyAsync(text);
        await field.PressAsync("Tab");
    }

    /// <summary>One tap into the first field; the keypad's tick goes on from field to field.</summary>
    public async Task ReadAsync(params string[] numbers)
    {
        await TapAsync(page.GetByLabel("Length, left foot", new() { Exact = true }));
        foreach (var number in numbers)
        {
            await page.Keyboard.TypeAsync(number);
            await page.Keyboard.PressAsync("Enter");
        }

        await Expect(page.Locator(".number.read")).ToHaveCountAsync(numbers.Length);
    }

    /// <summary>A day so many years and a little ago, as it is typed.</summary>
    public static string Born(int yearsAgo) => DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date)
        .AddYears(-yearsAgo).AddDays(-40).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
