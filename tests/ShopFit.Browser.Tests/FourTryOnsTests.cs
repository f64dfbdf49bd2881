using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>Four pairs tried by taps alone: what is seen of each names the next, with its place, its chance and its reason.</summary>
public sealed class FourTryOnsTests(RunningShop shop, ITestOutputHelper output) : IClassFixture<RunningShop>
{
    private static readonly (string Position, string Check, string Answer)[][] Seen =
    [
        [("Demi-plié", "Toes, flat, left", "short of the end"), ("En pointe", "Heel fabric, left", "a fold")],
        [("Flat", "Toe hold, left", "squeezed"), ("En pointe", "Outer toes, right", "pressed")],
        [("En pointe", "Drop, left", "sinks"), ("En pointe", "Arch, left", "behind it")],
    ];

    [Theory]
    [InlineData(1024, 768)]
    [InlineData(768, 1024)]
    public async Task Each_answer_moves_what_is_next_until_a_pair_fits_and_is_sold(int width, int height)
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, new() { Width = width, Height = height });
        await page.SignInAsync();
        var thumb = new Thumb(page);
        await page.StartFittingAsync($"Euphemia Garthwaite {width}", years: 16);
        await thumb.FollowAsync("Arrival", exact: true);
        await thumb.ChooseAsync("First pair?", "No");
        await thumb.FollowAsync("Feet", exact: true);
        await thumb.ReadAsync("239", "238", "89", "89");
        await thumb.FollowAsync("See the shortlist");
        await thumb.TapAsync("Fetched");
        await thumb.FollowAsync("Try-ons");

        var tried = new List<string>();
        foreach (var answers in Seen)
        {
            await thumb.TapAsync("Next:");
            await Expect(page.GetByRole(AriaRole.Heading, new() { NameRegex = Pairs(tried.Count + 1) })).ToBeVisibleAsync();
            tried.Add((await page.Locator(".head h2").TextContentAsync())!);
            await thumb.ChooseAsync("Does it fit?", "It does not fit");
            foreach (var (position, check, answer) in answers)
            {
                await thumb.TapAsync(position);
                await thumb.ChooseAsync(check, answer);
            }

            await thumb.TapAsync("The rest is as it should be");
            await Expect(page.Locator(".says")).ToContainTextAsync("in 10");
            await Expect(page.Locator(".says")).ToContainTextAsync("last one");
        }

        await thumb.TapAsync("Next:");
        await Expect(page.GetByRole(AriaRole.Heading, new() { NameRegex = Pairs(4) })).ToBeVisibleAsync();
        tried.Add((await page.Locator(".head h2").TextContentAsync())!);
        await thumb.ChooseAsync("Does it fit?", "It fits");

        // Another tablet, or a reload, finds every answer.
        await page.ReloadAsync();
        await thumb.TapAsync(page.GetByRole(AriaRole.List, new() { Name = "Pairs in hand" }).GetByRole(AriaRole.Button, new() { Name = tried[0] }));
        await thumb.TapAsync("En pointe");
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Heel fabric, right" }).GetByRole(AriaRole.Button, new() { Name = "a fold" })).ToHaveAttributeAsync("aria-pressed", "true");
        await thumb.TapAsync(page.GetByRole(AriaRole.List, new() { Name = "Pairs in hand" }).GetByRole(AriaRole.Button, new() { Name = tried[3] }));

        await thumb.TapAsync("Decide on");
        await page.WaitForURLAsync(address => address.EndsWith("/decision", StringComparison.Ordinal));
        await thumb.TapAsync("Sell for");
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Open the sheet" })).ToBeVisibleAsync(new() { Timeout = 20_000 });

        output.WriteLine($"{thumb.Taps} taps at {width} x {height}: {string.Join(", then ", tried)}");
    }

    private static Regex Pairs(int count) => new($"^{count} pairs?, ", RegexOptions.None, TimeSpan.FromSeconds(1));
}
