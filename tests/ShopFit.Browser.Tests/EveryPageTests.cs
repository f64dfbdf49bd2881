using System.Reflection;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.AspNetCore.Components;
using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>What holds of every page: it can be used by anybody, by thumb, at any width, and says nothing to the console.</summary>
public sealed class EveryPageTests(RunningShop shop) : IClassFixture<RunningShop>
{
    // WCAG 2.2: 1.4.10 asks for 320 pixels; the others are the tablets and laptops of a shop.
    private static readonly int[] Widths = [320, 768, 1024, 1280];

    // Pixels: WCAG 2.2, 2.5.5 (AAA).
    private const int SmallestTarget = 44;

    private static readonly AxeRunOptions Rules = new()
    {
        RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
    };

    private readonly List<string> _visited = [];
    private readonly List<string> _faults = [];

    [Fact]
    public async Task Every_page_can_be_used_by_everybody()
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, Tablet.Flat);
        page.Console += (_, message) => Fault(message.Type is "error", $"console: {message.Text}");
        page.PageError += (_, error) => Fault(true, $"script: {error}");

        await LookAsync(page, "/sign-in", "/sign-in");
        await page.SignInAsManagerAsync();
        await LookAsync(page, "/", "/");
        await LookAsync(page, "/dancers", "/dancers");
        await LookAsync(page, "/dancers/new", "/dancers/new");
        await LookAsync(page, "/catalogue", "/catalogue");
        await LookAsync(page, "/catalogue/import", "/catalogue/import");
        await LookAsync(page, "/sales", "/sales");
        await LookAsync(page, "/shelf", "/shelf");
        await page.GotoAsync("/catalogue");
        await LookAsync(page, "/shelf/{ItemId:guid}", (await page.Locator("td a").First.GetAttributeAsync("href"))!);
        await LookAsync(page, "/not-permitted", "/not-permitted");
        await LookAsync(page, "/error", "/error");
        await LookAsync(page, "/not-found", "/not-found");
        await LookAsync(page, "/sign-out", "/sign-out");

        var fitting = await page.StartFittingAsync("Ottilie Brackenbury", years: 13);
        await page.ReadAsync("Length, left foot", "238");
        await page.ReadAsync("Ball, left foot", "88");
        await page.SayAsync("Toes, longest to fourth", "medium");
        await page.GetByRole(AriaRole.Button, new() { Name = "Tape and calliper" }).ClickAsync();
        var field = page.GetByLabel("Heel breadth, left foot", new() { Exact = true });
        await field.FillAsync("9999");
        await field.PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Alert).First).ToBeVisibleAsync();
        await JudgeAsync(page, "feet with a number that no foot has");
        await LookAsync(page, "/fittings/{Id:guid}/{Station}", $"{fitting}/feet");
        await page.GetByRole(AriaRole.Button, new() { Name = "view" }).ClickAsync();
        await JudgeAsync(page, "child's view");
        await page.GotoAsync($"{fitting}/shortlist");
        await Expect(page.Locator("li.pair.laid")).ToBeVisibleAsync();
        await JudgeAsync(page, "shortlist");
        await page.GetByRole(AriaRole.Link, new() { Name = "Decide on" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Sell for" })).ToBeVisibleAsync();
        await JudgeAsync(page, "decision");
        await page.GetByRole(AriaRole.Button, new() { Name = "Not today" }).ClickAsync();
        await JudgeAsync(page, "not today");
        await page.GetByRole(AriaRole.Button, new() { Name = "price" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Close the fitting" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Not today" })).ToBeVisibleAsync();
        await JudgeAsync(page, "closed fitting");
        await LookAsync(page, "/dancers/{Id:guid}", (await page.GetByRole(AriaRole.Link, new() { Name = "Leave" }).GetAttributeAsync("href"))!);

        Assert.Empty(_faults);
        // The first manager is made where there is nobody yet; its form is the sign-in's, and a test of the site reads it.
        var pages = typeof(Web.Data.ShopDbContext).Assembly.GetTypes().SelectMany(type => type.GetCustomAttributes<RouteAttribute>()).Select(route => route.Template);
        Assert.Equal(["/first-manager"], pages.Except(_visited, StringComparer.Ordinal));
    }

    private async Task LookAsync(IPage page, string route, string address)
    {
        _visited.Add(route);
        // A page that is not there answers so, and that is no fault.
        var from = _faults.Count;
        await page.GotoAsync(address);
        if (route is "/not-found" or "/error" or "/not-permitted")
        {
            _faults.RemoveRange(from, _faults.Count - from);
        }

        await Expect(page.Locator("h1").First).ToBeVisibleAsync();
        await JudgeAsync(page, address);
    }

    private async Task JudgeAsync(IPage page, string name)
    {
        foreach (var colours in new[] { ColorScheme.Dark, ColorScheme.Light })
        {
            await page.EmulateMediaAsync(new() { ColorScheme = colours });
            var result = await page.RunAxe(Rules);
            _faults.AddRange(result.Violations.SelectMany(rule => rule.Nodes.Select(node => $"{name}, {colours}: {rule.Id}: {node.Html}")));
        }

        foreach (var width in Widths)
        {
            await page.SetViewportSizeAsync(width, Tablet.Flat.Height);
            var tooWide = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
            Fault(tooWide > 0, $"{name}: {tooWide} pixels too wide at {width}");
            if (width >= Tablet.Upright.Width)
            {
                foreach (var small in await page.EvaluateAsync<string[]>(SmallTargets, SmallestTarget))
                {
                    Fault(true, $"{name} at {width}: {small}");
                }
            }
        }

        await page.SetViewportSizeAsync(Tablet.Flat.Width, Tablet.Flat.Height);
    }

    // A link within a sentence is as high as its line (WCAG 2.5.5 excepts it), and what is hidden is tapped by nobody. The
    // skip link is for keyboards: it shows itself to them only. A box inside its label is tapped by the label.
    private const string SmallTargets =
        """
        least => [...document.querySelectorAll('a[href], button, input, select, textarea, summary')]
            .filter(e => e.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && !e.closest('.unseen, .skip, p, td') && !(e.type === 'hidden'))
            .map(e => ({ e, box: (e.closest('label') ?? e).getBoundingClientRect() }))
            .filter(({ box }) => box.width > 1 && (box.width < least - 0.5 || box.height < least - 0.5))
            .map(({ e, box }) => `${Math.round(box.width)} x ${Math.round(box.height)}: ${e.outerHTML.slice(0, 120)}`)
        """;

    private void Fault(bool isOne, string what)
    {
        if (isOne)
        {
            _faults.Add(what);
        }
    }
}
