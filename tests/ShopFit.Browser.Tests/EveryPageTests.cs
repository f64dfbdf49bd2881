using System.Reflection;
using Microsoft.AspNetCore.Components;
using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>What holds of every page: it can be used by anybody, by thumb, at any width, and says nothing to the console.</summary>
public sealed class EveryPageTests(RunningShop shop) : IClassFixture<RunningShop>
{
    private const string Dancer = "a[href^='/dancers/']:not([href='/dancers/new'])";
    private const string Model = "a[href^='/catalogue/models/']";

    // A page of one thing of many is found as a person finds it: by a link of its list, and a link of that.
    private static readonly (string Route, string From, string[] Links)[] Pages =
    [
        ("/", "/", []),
        ("/dancers", "/dancers", []),
        ("/dancers/new", "/dancers/new", []),
        ("/dancers/{Id:guid}", "/dancers", [Dancer]),
        ("/dancers/{Id:guid}/edit", "/dancers", [Dancer, "a[href$='/edit']"]),
        ("/studios", "/studios", []),
        ("/studios/{Id:guid}", "/studios", ["a[href^='/studios/']"]),
        ("/catalogue", "/catalogue", []),
        ("/catalogue/import", "/catalogue/import", []),
        ("/catalogue/sizes/{SizeId:guid}", "/catalogue", ["a[href^='/catalogue/sizes/']"]),
        ("/catalogue/models/{ModelId:guid}", "/catalogue", [Model]),
        ("/catalogue/models/{ModelId:guid}/sample", "/catalogue", [Model, "a[href$='/sample']"]),
        ("/catalogue/makers/{MakerId:guid}", "/catalogue", [Model, "a[href^='/catalogue/makers/']"]),
        ("/sales", "/sales", []),
        ("/sales/new", "/sales/new", []),
        ("/sales/new/{Id:guid}", "/sales/new/0197d3a0-0000-7000-8000-000000000001", []),
        ("/sales/vouchers", "/sales/vouchers", []),
        ("/sales/{Id:guid}", "/sales", ["a[href^='/sales/']:not([href^='/sales/new'], [href='/sales/vouchers'])"]),
        ("/shelf", "/shelf", []),
        ("/shelf/{ItemId:guid}", "/shelf", ["td a[href^='/shelf/']"]),
        ("/shop", "/shop", []),
        ("/shop/fit", "/shop/fit", []),
        ("/shop/fit/published", "/shop/fit/published", []),
        ("/shop/fit/{Group}", "/shop/fit/bands.pointe", []),
        ("/shop/log", "/shop/log", []),
        ("/shop/people", "/shop/people", []),
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

        foreach (var (_, from, links) in Pages)
        {
            var address = from;
            foreach (var link in links)
            {
                await page.GotoAsync(address);
                address = (await page.Locator(link).First.GetAttributeAsync("href"))!;
            }

            await LookAsync(page, judge, address);
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
