using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>The line between tablet and shop is cut: said in words, and everything entered is there again by itself.</summary>
public sealed class LostLineTests(RunningShop shop) : IClassFixture<RunningShop>
{
    private readonly Books _books = new(shop);

    [Theory]
    [InlineData(1024, 768)]
    [InlineData(768, 1024)]
    public async Task A_cut_line_is_said_and_the_page_comes_back_by_itself_with_everything_that_was_entered(int width, int height)
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, new() { Width = width, Height = height });
        await page.SignInAsync();
        await page.StartFittingAsync($"Seraphina Holloway-Dunn {width}", years: 14);
        await page.ReadAsync("Length, left foot", "238.5");
        await page.SayAsync("Toes, longest to fourth", "medium");

        var restarting = shop.RestartAfterPowerCutAsync();
        await Expect(page.GetByText("The line to the shop’s computer is gone.")).ToBeVisibleAsync(new() { Timeout = 20_000 });
        await Expect(page.GetByText("Everything you entered before is kept.").First).ToBeVisibleAsync();
        await restarting;

        await Expect(page.GetByText("The line to the shop’s computer is gone.")).ToBeHiddenAsync(new() { Timeout = 60_000 });
        await Expect(page.GetByLabel("Length, left foot", new() { Exact = true })).ToHaveValueAsync("238.5", new() { Timeout = 20_000 });
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Toes, longest to fourth" }).GetByRole(AriaRole.Button, new() { Name = "medium" }))
            .ToHaveAttributeAsync("aria-pressed", "true");

        // And it is alive: the next number is kept too.
        await page.ReadAsync("Length, right foot", "237");
    }

    [Theory]
    [InlineData(1024, 768)]
    [InlineData(768, 1024)]
    public async Task What_is_typed_while_the_line_is_gone_is_kept_once_when_it_is_back(int width, int height)
    {
        await using var line = Line.To(shop);
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(line.Address, new() { Width = width, Height = height });
        await page.SignInAsync();
        var fitting = await page.StartFittingAsync($"Perpetua Winterbourne {width}", years: 14);
        await page.ReadAsync("Length, left foot", "238.5");
        var right = page.GetByLabel("Length, right foot", new() { Exact = true });
        await right.TapAsync();
        await page.Keyboard.TypeAsync("23");

        line.Cut();
        await Expect(page.GetByText("The line to the shop’s computer is gone.")).ToBeVisibleAsync();
        await page.Keyboard.TypeAsync("7,5");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync("8");
        await Expect(page.GetByLabel("Ball, left foot", new() { Exact = true })).ToHaveValueAsync("8");
        line.Mend();

        // The number that was finished is kept; the one half typed waits for its end.
        await Expect(page.GetByText("The line to the shop’s computer is gone.")).ToBeHiddenAsync(new() { Timeout = 60_000 });
        await Expect(page.Locator(".number.read")).ToHaveCountAsync(2);
        await Expect(right).ToHaveValueAsync("237.5");
        await page.Keyboard.TypeAsync("8");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".number.read")).ToHaveCountAsync(3);

        var id = fitting[(fitting.LastIndexOf('/') + 1)..];
        Assert.Equal(["237.5"], await _books.ReadingsAsync(id, "length right"));
        Assert.Equal(["88"], await _books.ReadingsAsync(id, "ball-breadth left"));
    }

    [Theory]
    [InlineData(1024, 768)]
    [InlineData(768, 1024)]
    public async Task What_was_half_typed_when_the_shop_went_stands_in_its_field_again(int width, int height)
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, new() { Width = width, Height = height });
        await page.SignInAsync();
        await page.StartFittingAsync($"Clementina Aske {width}", years: 14);
        await page.ReadAsync("Length, left foot", "238.5");
        await page.GetByLabel("Length, right foot", new() { Exact = true }).TapAsync();
        await page.Keyboard.TypeAsync("23");
        await CutThePowerAsync(page);
        await Expect(page.GetByLabel("Length, right foot", new() { Exact = true })).ToHaveValueAsync("23");
        await Expect(page.Locator(".number.read")).ToHaveCountAsync(1);
        await page.Keyboard.TypeAsync("7");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".number.read")).ToHaveCountAsync(2);
        await Expect(page.GetByLabel("Length, right foot", new() { Exact = true })).ToHaveValueAsync("237");

        // Nothing of a dancer is kept before she is put on file, and yet nothing is typed twice.
        await page.GotoAsync("/dancers/new");
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync($"Araminta Aske {width}");
        await page.GetByLabel("Born on").FillAsync(Thumb.Born(30));
        await page.GetByLabel("Studio").FillAsync("Lar");
        await CutThePowerAsync(page);
        await Expect(page.GetByLabel("Studio")).ToHaveValueAsync("Lar");
        await page.GetByRole(AriaRole.Button, new() { Name = "Put on file" }).TapAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = $"Araminta Aske {width}" })).ToBeVisibleAsync();
    }

    private async Task CutThePowerAsync(IPage page)
    {
        var restarting = shop.RestartAfterPowerCutAsync();
        await Expect(page.GetByText("The line to the shop’s computer is gone.")).ToBeVisibleAsync();
        await restarting;
        await Expect(page.GetByText("The line to the shop’s computer is gone.")).ToBeHiddenAsync(new() { Timeout = 60_000 });
    }
}
