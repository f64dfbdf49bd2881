using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>The first day of a shop: its first manager, and every list while nothing is on it.</summary>
public sealed class NewShopTests(NewShop shop) : IClassFixture<NewShop>
{
    private static readonly string[] EmptyLists = ["/", "/dancers", "/catalogue", "/shelf", "/sales"];

    [Fact]
    public async Task The_first_manager_opens_the_shop_and_every_empty_list_says_what_to_do_next()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Flat);
        var judge = new PageJudge(page);
        await page.GotoAsync("/");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Who keeps this shop?" })).ToBeVisibleAsync();
        await judge.JudgeAsync("first manager");
        await page.GetByLabel("Your name").FillAsync("Wilhelmina Ashdown");
        await page.GetByLabel("Name to sign in with").FillAsync("wilhelmina");
        await page.GetByLabel("Password", new() { Exact = true }).FillAsync("four quiet plain words");
        await page.GetByLabel("The password once more").FillAsync("four quiet plain words");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open the shop" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Navigation).First).ToBeVisibleAsync();

        foreach (var address in EmptyLists)
        {
            await page.GotoAsync(address);
            await Expect(page.Locator("main h1")).ToBeVisibleAsync();
            await judge.JudgeAsync($"{address}, empty");
            // Some words, not a bare table: what is missing and, for a manager, how it gets here.
            await Expect(page.Locator("main p").First).ToBeVisibleAsync();
        }

        judge.FindNoFault();
    }
}
