using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>What holds of every station of a fitting, in each of its states: it can be used by anybody, by a thumb on its knees.</summary>
public sealed class EveryStationTests(RunningShop shop) : IClassFixture<RunningShop>
{
    [Fact]
    public async Task Every_station_can_be_used_by_everybody()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Upright);
        var judge = new PageJudge(page);
        await page.SignInAsync();
        var fitting = await page.StartFittingAsync("Ottilie Brackenbury", years: 13);
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToBeVisibleAsync();
        await judge.JudgeAsync("feet, nothing read");
        await page.GotoAsync($"{fitting}/arrival");
        await page.GetByRole(AriaRole.Group, new() { Name = "First pair?" }).GetByRole(AriaRole.Button, new() { Name = "Yes", Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "yes, today" })).ToBeVisibleAsync();
        await judge.JudgeAsync("arrival, a first pair");
        await page.GetByRole(AriaRole.Group, new() { Name = "First pair?" }).GetByRole(AriaRole.Button, new() { Name = "No", Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "yes, today" })).ToHaveCountAsync(0);
        await judge.JudgeAsync("arrival, another pair");
        await page.GotoAsync($"{fitting}/try-ons");
        await Expect(page.GetByText("Nothing is in hand yet")).ToBeVisibleAsync();
        await judge.JudgeAsync("try-ons, nothing in hand");
        await page.GotoAsync($"{fitting}/feet");
        await page.ReadAsync("Length, left foot", "238");
        await page.ReadAsync("Ball, left foot", "88");
        await page.SayAsync("Toes, longest to fourth", "medium");
        await page.GetByRole(AriaRole.Button, new() { Name = "Tape and calliper" }).ClickAsync();
        var field = page.GetByLabel("Heel breadth, left foot", new() { Exact = true });
        await field.FillAsync("9999");
        await field.PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Alert).First).ToBeVisibleAsync();
        await judge.JudgeAsync("feet with a number that no foot has");
        await page.GetByRole(AriaRole.Button, new() { Name = "view" }).ClickAsync();
        await judge.JudgeAsync("child's view");
        await page.GotoAsync($"{fitting}/shortlist");
        await Expect(page.Locator("li.pair.laid")).ToBeVisibleAsync();
        await judge.JudgeAsync("shortlist");
        await page.GetByRole(AriaRole.Button, new() { Name = "Filters" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Maker" })).ToBeVisibleAsync();
        await judge.JudgeAsync("shortlist, filters open");
        await page.GetByRole(AriaRole.Button, new() { Name = "Filters" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Compare" }).Nth(0).ClickAsync();
        await Expect(page.Locator("button.mark[aria-pressed=true]")).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new() { Name = "Compare" }).Nth(1).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Done comparing" })).ToBeVisibleAsync();
        await judge.JudgeAsync("shortlist, two pairs compared");
        await page.GetByRole(AriaRole.Button, new() { Name = "Done comparing" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Fetched" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Try-ons" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Next:" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "1 pair, 1 walk" })).ToBeVisibleAsync();
        await judge.JudgeAsync("try-ons, a pair on the feet");
        await page.GetByRole(AriaRole.Button, new() { Name = "It does not fit" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "En pointe" }).ClickAsync();
        await page.GetByRole(AriaRole.Group, new() { Name = "Heel fabric, left" }).GetByRole(AriaRole.Button, new() { Name = "a fold" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Heel fabric, right" }).GetByRole(AriaRole.Button, new() { Name = "a fold" })).ToHaveAttributeAsync("aria-pressed", "true");
        await judge.JudgeAsync("try-ons, checks answered en pointe");
        await page.GetByRole(AriaRole.Link, new() { Name = "Shortlist", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Decide on" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Sell for" })).ToBeVisibleAsync();
        await page.Locator(".key.bare[aria-expanded]").First.ClickAsync();
        await judge.JudgeAsync("decision, all pads open");
        await page.GetByRole(AriaRole.Button, new() { Name = "Not today" }).ClickAsync();
        await judge.JudgeAsync("not today");
        await page.GetByRole(AriaRole.Button, new() { Name = "price" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Close the fitting" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Not today" })).ToBeVisibleAsync();
        await judge.JudgeAsync("closed fitting");

        judge.FindNoFault();
    }
}
