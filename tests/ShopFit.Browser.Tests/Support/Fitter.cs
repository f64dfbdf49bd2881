using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser.Support;

/// <summary>What a fitter does on her tablet, in the words of the screen.</summary>
internal static class Fitter
{
    private static readonly Regex ArrivalStation = new("/fittings/[0-9a-f-]{36}/arrival$", RegexOptions.None, TimeSpan.FromSeconds(1));

    private static readonly Regex FeetStation = new("/fittings/[0-9a-f-]{36}/feet$", RegexOptions.None, TimeSpan.FromSeconds(1));

    public static Task SignInAsync(this IPage page) => page.SignInAsync("fitter", "satin-and-thread");

    public static Task SignInAsManagerAsync(this IPage page) => page.SignInAsync("manager", "paper-and-ink-well");

    private static async Task SignInAsync(this IPage page, string name, string password)
    {
        await page.GotoAsync("/sign-in");
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync(name);
        await page.GetByLabel("Password").FillAsync(password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).Not.ToHaveTextAsync("Sign in");
    }

    /// <summary>Puts a girl of that age on file with her mother's yes, and starts her fitting. Answers with the fitting's address, without its station.</summary>
    public static async Task<string> StartFittingAsync(this IPage page, string name, int years)
    {
        await page.GotoAsync("/dancers/new");
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync(name);
        var born = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date).AddYears(-years).AddDays(-40);
        await page.GetByLabel("Born on").FillAsync(born.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        await page.GetByLabel("Studio").FillAsync("Larch");
        await page.GetByLabel("Teacher").FillAsync("Odette Marrable");
        await page.GetByLabel("Parent or guardian").FillAsync("Maud Brindlecombe");
        await page.GetByLabel("How to reach them").FillAsync("01632 960123");
        await page.GetByRole(AriaRole.Checkbox).CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Put on file" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = name })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Start a fitting" }).ClickAsync();
        await Expect(page).ToHaveURLAsync(ArrivalStation);
        await page.GetByRole(AriaRole.Link, new() { Name = "Measure the feet" }).ClickAsync();
        await Expect(page).ToHaveURLAsync(FeetStation);
        // What a fitter measures in is remembered; another test may have left it in inches.
        await page.GetByLabel("Lengths in").SelectOptionAsync("mm");
        return page.Url[..page.Url.LastIndexOf('/')];
    }

    /// <summary>Reads a number off the gauge and goes on to the next field, as the keypad's tick does.</summary>
    public static async Task ReadAsync(this IPage page, string what, string number)
    {
        var field = page.GetByLabel(what, new() { Exact = true });
        await field.FillAsync(number);
        await field.PressAsync("Enter");
        // Only what the field calls read was saved; until then the number is in the browser alone.
        await Expect(page.Locator(".number.read, .number.ask").Filter(new() { Has = field })).ToBeVisibleAsync();
        await Expect(field).ToHaveValueAsync(number.Replace(',', '.'));
    }

    /// <summary>Taps one of three words for both feet.</summary>
    public static async Task SayAsync(this IPage page, string what, string word)
    {
        var key = page.GetByRole(AriaRole.Group, new() { Name = what }).GetByRole(AriaRole.Button, new() { Name = word, Exact = true });
        await key.ClickAsync();
        await Expect(key).ToHaveAttributeAsync("aria-pressed", "true");
    }
}
