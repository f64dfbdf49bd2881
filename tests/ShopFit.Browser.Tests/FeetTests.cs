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

    [Theory]
    [InlineData(1024, 768)]
    [InlineData(768, 1024)]
    public async Task Both_feet_are_read_turned_round_reloaded_and_seen_on_a_second_page(int width, int height)
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, new() { Width = width, Height = height });
        await page.SignInAsync();
        var fitting = await page.StartFittingAsync($"Rosamund Thistlewick {width}", years: 13);

        await page.GetByRole(AriaRole.Button, new() { Name = "As they stand" }).ClickAsync();
        await Expect(page.Locator(".entries input").First).ToHaveAttributeAsync("aria-label", "Length, left foot");

        // One tap, and the keypad's tick goes from field to field.
        await page.GetByLabel("Length, left foot", new() { Exact = true }).ClickAsync();
        foreach (var typed in new[] { "231,5", "233", "86", "87.5" })
        {
            await page.Keyboard.TypeAsync(typed);
            await page.Keyboard.PressAsync("Enter");
        }

        await ReadAreAsync(page, "231.5", "233", "86", "87.5");

        await page.GetByRole(AriaRole.Button, new() { Name = "As I face them" }).ClickAsync();
        await Expect(page.Locator(".entries input").First).ToHaveAttributeAsync("aria-label", "Length, right foot");
        await page.GetByLabel("Lengths in").SelectOptionAsync("in");
        // The numbers turn into inches first: what is typed before would stand beside them.
        await Expect(page.GetByLabel("Ball, right foot", new() { Exact = true })).ToHaveValueAsync("3.44");
        await page.GetByLabel("Ball, right foot", new() { Exact = true }).FillAsync("3-7/16");
        await page.GetByLabel("Ball, right foot", new() { Exact = true }).PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Ball, right foot: 2 readings, show them" })).ToBeVisibleAsync();

        await page.ReloadAsync();
        await Expect(page.Locator(".entries input").First).ToHaveAttributeAsync("aria-label", "Length, right foot");
        await Expect(page.GetByLabel("Lengths in")).ToHaveValueAsync("in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Ball, right foot: 2 readings, show them" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Ball, right foot" })).ToContainTextAsync("3 7/16 in");
        await page.GetByLabel("Lengths in").SelectOptionAsync("mm");

        var second = await page.Context.NewPageAsync();
        await second.GotoAsync($"{fitting}/feet");
        await Expect(second.GetByLabel("Length, left foot", new() { Exact = true })).ToHaveValueAsync("231.5");
        await Expect(second.Locator(".entries input").First).ToHaveAttributeAsync("aria-label", "Length, right foot");
        await second.GetByRole(AriaRole.Button, new() { Name = "As they stand" }).ClickAsync();
        await Expect(second.Locator(".entries input").First).ToHaveAttributeAsync("aria-label", "Length, left foot");
    }

    private static async Task ReadAreAsync(IPage page, string leftLength, string rightLength, string leftBall, string rightBall)
    {
        await Expect(page.GetByLabel("Length, left foot", new() { Exact = true })).ToHaveValueAsync(leftLength);
        await Expect(page.GetByLabel("Length, right foot", new() { Exact = true })).ToHaveValueAsync(rightLength);
        await Expect(page.GetByLabel("Ball, left foot", new() { Exact = true })).ToHaveValueAsync(leftBall);
        await Expect(page.GetByLabel("Ball, right foot", new() { Exact = true })).ToHaveValueAsync(rightBall);
        await Expect(page.Locator(".number.read")).ToHaveCountAsync(4);
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
