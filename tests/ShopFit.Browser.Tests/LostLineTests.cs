using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>The line between tablet and shop is cut: said in words, and everything entered is there again by itself.</summary>
public sealed class LostLineTests(RunningShop shop) : IClassFixture<RunningShop>
{
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
}
