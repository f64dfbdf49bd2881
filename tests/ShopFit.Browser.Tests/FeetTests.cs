using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

public sealed class FeetTests(RunningShop shop) : IClassFixture<RunningShop>
{
    [Fact]
    public async Task A_reload_in_the_middle_of_reading_feet_finds_every_entry()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Flat);
        await page.SignInAsync();
        var fitting = await page.StartFittingAsync("Perpetua Vellacott", years: 13);
        await page.ReadAsync("Length, left foot", "231,5");
        await page.ReadAsync("Length, right foot", "233");
        await page.ReadAsync("Ball, left foot", "86");
        await page.SayAsync("Toes, longest to fourth", "tapered");

        await page.ReloadAsync();

        await AllIsThereAsync(page);
        var another = await (await Tablet.TakeAsync()).OpenAsync(shop, Tablet.Upright);
        await another.SignInAsync();
        await another.GotoAsync($"{fitting}/feet");
        await AllIsThereAsync(another);
    }

    [Fact]
    public async Task A_power_cut_in_the_middle_of_reading_feet_loses_nothing_that_was_saved()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Flat);
        await page.SignInAsync();
        var fitting = await page.StartFittingAsync("Isolde Quennell", years: 14);
        await page.ReadAsync("Length, left foot", "238.5");

        await shop.RestartAfterPowerCutAsync();

        await page.GotoAsync($"{fitting}/feet");
        await Expect(page.GetByLabel("Length, left foot", new() { Exact = true })).ToHaveValueAsync("238.5");
    }

    [Fact]
    public async Task A_number_that_no_foot_can_have_is_explained_and_stays_as_typed()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Upright);
        await page.SignInAsync();
        await page.StartFittingAsync("Wilhelmina Stroud-Ash", years: 12);
        var field = page.GetByLabel("Length, left foot", new() { Exact = true });

        await field.FillAsync("2385");
        await field.PressAsync("Enter");

        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("100");
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("350");
        await Expect(field).ToHaveValueAsync("2385");
        await page.ReloadAsync();
        await Expect(field).ToHaveValueAsync("");
    }

    private static async Task AllIsThereAsync(IPage page)
    {
        await Expect(page.GetByLabel("Length, left foot", new() { Exact = true })).ToHaveValueAsync("231.5");
        await Expect(page.GetByLabel("Length, right foot", new() { Exact = true })).ToHaveValueAsync("233");
        await Expect(page.GetByLabel("Ball, left foot", new() { Exact = true })).ToHaveValueAsync("86");
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Toes, longest to fourth" }).GetByRole(AriaRole.Button, new() { Name = "tapered" }))
            .ToHaveAttributeAsync("aria-pressed", "true");
    }
}
