using System.Reflection;
using Microsoft.AspNetCore.Components;
using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>What holds of every page: it can be used by anybody, by thumb, at any width, and says nothing to the console.</summary>
public sealed class EveryPageTests(RunningShop shop) : IClassFixture<RunningShop>
{
    // Where a page opens one thing of many, the thing is found behind the first such link of its list.
    private static readonly (string Route, string From, string? Link)[] Pages =
    [
        ("/", "/", null),
        ("/dancers", "/dancers", null),
        ("/dancers/new", "/dancers/new", null),
        ("/dancers/{Id:guid}", "/dancers", "a[href^='/dancers/']:not([href='/dancers/new'])"),
        ("/catalogue", "/catalogue", null),
        ("/catalogue/import", "/catalogue/import", null),
        ("/sales", "/sales", null),
        ("/shelf", "/shelf", null),
        ("/shop", "/shop", null),
        ("/shop/fit", "/shop/fit", null),
        ("/shop/fit/published", "/shop/fit/published", null),
        ("/shop/fit/{Group}", "/shop/fit/bands.pointe", null),
        ("/shop/log", "/shop/log", null),
        ("/shop/people", "/shop/people", null),
        ("/shelf/{ItemId:guid}", "/catalogue", "td a[href^='/shelf/']"),
    ];

    // Visited by other tests: each says so there.
    private static readonly string[] Elsewhere = ["/fittings/{Id:guid}/{Station}", "/first-manager"];

    private static readonly (string Route, int? Status)[] Answers = [("/sign-in", null), ("/not-permitted", 403), ("/error", 500), ("/not-found", 404), ("/sign-out", null)];

    [Fact]
    public async Task Every_page_can_be_used_by_everybody()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Flat);
        var judge = new PageJudge(page);
        await page.SignInAsManagerAsync();

        foreach (var (_, from, link) in Pages)
        {
            await page.GotoAsync(from);
            var address = link is null ? from : await page.Locator(link).First.GetAttributeAsync("href");
            await LookAsync(page, judge, address!);
        }

        judge.FindNoFault();
    }

    [Fact]
    public async Task Every_answer_that_is_not_a_page_of_work_can_be_used_by_everybody()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Upright);
        var judge = new PageJudge(page);
        foreach (var (route, status) in Answers)
        {
            judge.ExpectedStatus = status;
            await LookAsync(page, judge, route);
        }

        judge.FindNoFault();
    }

    [Fact]
    public void No_page_is_left_out()
    {
        var routes = typeof(Web.Data.ShopDbContext).Assembly.GetTypes().SelectMany(type => type.GetCustomAttributes<RouteAttribute>()).Select(route => route.Template);

        Assert.Empty(routes.Except([.. Pages.Select(page => page.Route), .. Answers.Select(answer => answer.Route), .. Elsewhere], StringComparer.Ordinal));
    }

    private static async Task LookAsync(IPage page, PageJudge judge, string address)
    {
        await page.GotoAsync(address);
        await Expect(page.Locator("h1").First).ToBeVisibleAsync();
        await judge.JudgeAsync(address);
    }
}
