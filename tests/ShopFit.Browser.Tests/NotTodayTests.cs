using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>A dancer whose size is not on the shelf: said plainly, closed, thought over, wished for, and gone on with on another tablet.</summary>
public sealed class NotTodayTests(RunningShop shop, ITestOutputHelper output) : IClassFixture<RunningShop>
{
    [Theory]
    [InlineData(1024, 768)]
    [InlineData(768, 1024)]
    public async Task Nothing_on_the_shelf_becomes_a_wish_and_she_comes_back_to_what_was_read(int width, int height)
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, new() { Width = width, Height = height });
        await page.SignInAsync();
        var thumb = new Thumb(page);
        await page.GotoAsync("/dancers/new");
        await thumb.TypeAsync(page.GetByLabel("Name", new() { Exact = true }), $"Theodora Winsloe {width}");
        await thumb.TypeAsync(page.GetByLabel("Born on"), Thumb.Born(38));
        await thumb.TapAsync("Put on file");
        await thumb.TapAsync("Start a fitting");
        await thumb.ChooseAsync("First pair?", "No");
        await thumb.ChooseAsync("Sore today?", "Nothing sore");
        await thumb.FollowAsync("Measure the feet");
        await thumb.ReadAsync("292", "291", "112", "112");
        await thumb.FollowAsync("See the shortlist");
        await Expect(page.GetByText("No pair on the shelf is likely to fit")).ToBeVisibleAsync();

        // Closed, and opened again within the ten seconds.
        await thumb.FollowAsync("Decision");
        await thumb.TapAsync("Not today");
        await thumb.ChooseAsync("Why not?", "Not on the shelf");
        await thumb.TapAsync("Close the fitting");
        await Expect(page.GetByText("closed", new() { Exact = false }).First).ToBeVisibleAsync();
        await thumb.TapAsync("Undo");
        await Expect(page.GetByText("Undone.")).ToBeVisibleAsync();

        // What would fit can be had: it is wished for.
        await thumb.FollowAsync("Shortlist", exact: true);
        await thumb.TapAsync(page.GetByRole(AriaRole.Group, new() { Name = "Where from" }).GetByRole(AriaRole.Button).Nth(1));
        await Expect(page).ToHaveURLAsync(new Regex("from=all", RegexOptions.None, TimeSpan.FromSeconds(1)));
        await thumb.TapAsync(page.Locator("li.pair", new() { HasText = "order" }).First.GetByRole(AriaRole.Button, new() { Name = "over the feet" }));
        await page.Locator("li.pair.laid", new() { HasText = "order" }).WaitForAsync();
        await thumb.FollowAsync("Decide on");
        await page.WaitForURLAsync(address => address.EndsWith("/decision", StringComparison.Ordinal));
        await thumb.TapAsync("Wish for an order");
        await thumb.TapAsync("In 4 weeks");
        await thumb.TapAsync("Close the fitting");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "To be ordered" })).ToBeVisibleAsync();

        // The other tablet sees the wish, and starts her next fitting from what is known.
        await using var second = await Tablet.TakeAsync();
        var other = await second.OpenAsync(shop, new() { Width = height, Height = width });
        await other.SignInAsync();
        await other.GotoAsync("/");
        var wishes = other.GetByRole(AriaRole.Link, new() { Name = $"Theodora Winsloe {width}" });
        await Expect(wishes).ToHaveCountAsync(2); // ended today, and among the wishes
        await wishes.First.TapAsync();
        await other.GetByRole(AriaRole.Link, new() { Name = "Theodora’s page" }).TapAsync();
        await other.GetByRole(AriaRole.Button, new() { Name = "Start a fitting" }).TapAsync();
        await Expect(other).ToHaveURLAsync(new Regex("/arrival$", RegexOptions.None, TimeSpan.FromSeconds(1)));
        var draft = other.Url;
        await other.GetByRole(AriaRole.Link, new() { Name = "Feet", Exact = true }).TapAsync();
        await Expect(other.GetByLabel("Length, left foot", new() { Exact = true })).ToHaveAttributeAsync("placeholder", new Regex("^292|^291.5|^291|^292.5", RegexOptions.None, TimeSpan.FromSeconds(1)));
        await other.ReadAsync("Length, left foot", "292");

        // The first tablet goes on where the other stopped.
        await page.GotoAsync("/");
        await thumb.TapAsync(page.GetByRole(AriaRole.Link, new() { Name = $"Theodora Winsloe {width}" }).First);
        await page.WaitForURLAsync(new Regex(draft[(draft.IndexOf("/fittings/", StringComparison.Ordinal))..draft.LastIndexOf('/')], RegexOptions.None, TimeSpan.FromSeconds(1)));
        await thumb.FollowAsync("Feet", exact: true);
        await Expect(page.GetByLabel("Length, left foot", new() { Exact = true })).ToHaveValueAsync("292");

        output.WriteLine($"{thumb.Taps} taps at {width} x {height}");
    }
}
