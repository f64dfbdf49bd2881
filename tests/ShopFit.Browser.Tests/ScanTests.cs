using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>A scanner that plugs in as a keyboard: its code opens the pair, wherever the focus was left; a person's typing does not.</summary>
public sealed class ScanTests(RunningShop shop) : IClassFixture<RunningShop>
{
    private readonly Books _books = new(shop);

    [Fact]
    public async Task A_scan_at_the_try_ons_puts_the_pair_on_and_slow_keys_do_not()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Flat);
        await page.SignInAsync();
        var fitting = await page.StartFittingAsync("Marigold Tenby-Rowe", years: 15);
        await page.GotoAsync($"{fitting}/try-ons");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "0 pairs, 0 walks" })).ToBeVisibleAsync();
        var code = await _books.SomeCodeAsync("pointe");

        // At a person's pace nothing happens.
        await page.EvaluateAsync("document.activeElement?.blur()");
        await page.Keyboard.TypeAsync(code, new() { Delay = 150 });
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByLabel("Scan a pair, or type its code")).ToHaveValueAsync("");

        await page.Keyboard.TypeAsync(code, new() { Delay = 8 });
        await page.Keyboard.PressAsync("Enter");

        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "1 pair, 0 walks" })).ToBeVisibleAsync();

        // Into a note a code is only letters.
        var note = page.GetByLabel("In your own words");
        await note.ClickAsync();
        await page.Keyboard.TypeAsync(code, new() { Delay = 8 });
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync("was on the box", new() { Delay = 100 });
        await Expect(note).ToHaveValueAsync($"{code}\nwas on the box");
        await page.Keyboard.PressAsync("Tab");
        await Expect(note).ToHaveAttributeAsync("data-heard", $"{code}\nwas on the box");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "1 pair, 0 walks" })).ToBeVisibleAsync();
    }
}
