using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopFit.Browser.Support;
using UglyToad.PdfPig;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>A grown dancer comes for another pair: from a search with a slip to her receipt, and back, by taps.</summary>
public sealed partial class GrownDancerTests(RunningShop shop, ITestOutputHelper output) : IClassFixture<RunningShop>
{
    private readonly Books _books = new(shop);

    [Theory]
    [InlineData(1024, 768)]
    [InlineData(768, 1024)]
    public async Task She_is_found_fitted_overruled_and_sold_to_and_the_sale_is_taken_back(int width, int height)
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, new() { Width = width, Height = height });
        await page.SignInAsync();
        var thumb = new Thumb(page);
        await page.GotoAsync("/dancers/new");
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync($"Philippa Quarrendon {width}");
        await page.GetByLabel("Born on").FillAsync(Thumb.Born(36));
        await page.GetByRole(AriaRole.Button, new() { Name = "Put on file" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Philippa" })).ToBeVisibleAsync();

        // Found with a slip in each of her names.
        await thumb.FollowAsync("Dancers", exact: true);
        await thumb.TypeAsync(page.GetByRole(AriaRole.Searchbox), $"Philipa Quarendon {width}");
        await thumb.FollowAsync($"Philippa Quarrendon {width}");
        await thumb.TapAsync("Start a fitting");
        await thumb.ChooseAsync("First pair?", "No");
        await thumb.ChooseAsync("Sore today?", "Nothing sore");
        await thumb.ChooseAsync("What did the last pair do?", "too long");
        await thumb.FollowAsync("Measure the feet");
        await thumb.ReadAsync("240", "239", "90", "90");

        await thumb.FollowAsync("See the shortlist");
        await thumb.TapAsync("Filters");
        var maker = page.GetByRole(AriaRole.Group, new() { Name = "Maker" }).GetByRole(AriaRole.Button).First;
        await thumb.TapAsync(maker);
        await Expect(maker).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(page).ToHaveURLAsync(new Regex("maker=", RegexOptions.None, TimeSpan.FromSeconds(1)));
        await thumb.TapAsync(maker);
        await Expect(maker).ToHaveAttributeAsync("aria-pressed", "false");
        await thumb.TapAsync("Fetched");
        await thumb.FollowAsync("Try-ons");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "0 pairs, 1 walk" })).ToBeVisibleAsync();

        await thumb.TapAsync("Next");
        await thumb.ChooseAsync("Does it fit?", "It does not fit");
        await thumb.TapAsync("The rest is as it should be");
        // All of a position answered, the next one is open.
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Demi-plié" })).ToHaveAttributeAsync("aria-pressed", "true");
        await thumb.ChooseAsync("Toes, flat, left", "short of the end");
        await thumb.TypeAsync(page.GetByLabel("In your own words"), "She curls her toes.");
        await thumb.TapAsync("Next:");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "2 pairs, 1 walk" })).ToBeVisibleAsync();

        // Put on by mistake, taken off the record, and brought back within ten seconds.
        await thumb.TapAsync("It was not tried on");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "1 pair, 1 walk" })).ToBeVisibleAsync();
        await thumb.TapAsync("Undo");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "2 pairs, 1 walk" })).ToBeVisibleAsync();
        await thumb.ChooseAsync("Does it fit?", "It does not fit");
        await thumb.TapAsync("Next:");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "3 pairs, 1 walk" })).ToBeVisibleAsync();
        await thumb.ChooseAsync("Does it fit?", "It fits");

        // She wants another pair than the one that fits: the fitter says why, and which smaller size was asked for.
        await thumb.FollowAsync("Shortlist", exact: true);
        await thumb.TapAsync(page.Locator("li.pair").Nth(1).GetByRole(AriaRole.Button, new() { Name = "over the feet" }));
        await page.Locator("li.pair.laid").Nth(0).WaitForAsync();
        await thumb.FollowAsync("Decide on");
        await page.WaitForURLAsync(address => address.EndsWith("/decision", StringComparison.Ordinal));
        var reason = page.Locator(".overrule .reasons button").First;
        await thumb.TapAsync(reason);
        await Expect(reason).ToHaveAttributeAsync("aria-pressed", "true");
        await thumb.TapAsync("A smaller size was asked for");
        await thumb.TapAsync(page.GetByRole(AriaRole.Group, new() { Name = "Which size was asked for?" }).GetByRole(AriaRole.Button).First);
        await thumb.TapAsync("One more of Satin ribbon, pale pink");
        await thumb.TapAsync("One more of Strong thread, pale pink");
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Strong thread, pale pink" }).Locator("output")).ToHaveTextAsync("1");
        await thumb.TapAsync("Give a discount");
        await thumb.TapAsync("10%", exact: true);
        await Expect(page.GetByText("10% off").First).ToBeVisibleAsync();
        await thumb.TapAsync("Sell for");
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Open the receipt" })).ToBeVisibleAsync(new() { Timeout = 20_000 });

        var fitting = page.Url[..page.Url.LastIndexOf('/')];
        var code = Assert.Single(await _books.SoldInAsync(fitting[(fitting.LastIndexOf('/') + 1)..]));
        var onHand = await _books.OnHandAsync(code);
        await MoneyEqualsItsLinesAsync(page);

        await thumb.FollowAsync("The sale");
        await thumb.TapAsync("Take the whole sale back");
        await thumb.TypeAsync(page.GetByLabel("What went wrong"), "The wrong pair was rung up.");
        await thumb.TapAsync("Take back £");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Was it a mistake?" })).ToHaveCountAsync(0);
        Assert.Equal(onHand + 1, await _books.OnHandAsync(code));
        await page.GotoAsync($"{fitting}/decision");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Sell for" })).ToBeVisibleAsync();

        output.WriteLine($"{thumb.Taps} taps at {width} x {height}");
    }

    // What the receipt says in all is what its lines say together.
    private async Task MoneyEqualsItsLinesAsync(IPage page)
    {
        var address = await page.GetByRole(AriaRole.Link, new() { Name = "Open the receipt" }).GetAttributeAsync("href");
        var answer = await page.APIRequest.GetAsync(shop.Address + address);
        Assert.Equal("application/pdf", answer.Headers["content-type"]);
        using var receipt = PdfDocument.Open(await answer.BodyAsync());
        var text = string.Join(' ', receipt.GetPages().SelectMany(sheet => sheet.GetWords()).Select(word => word.Text));
        decimal Pounds(Match match) => decimal.Parse(match.Groups["pounds"].Value, System.Globalization.CultureInfo.InvariantCulture);
        var lines = text[text.IndexOf("Amount", StringComparison.Ordinal)..text.IndexOf("Prices include tax", StringComparison.Ordinal)];
        Assert.InRange(Amount().Count(lines), 3, 9); // the shoes, ribbon and thread, and pads where there are any
        Assert.Equal(Pounds(Paid().Match(text)), Amount().Matches(lines).Sum(Pounds));
    }

    [GeneratedRegex(@"% £(?<pounds>\d+\.\d\d)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Amount();

    [GeneratedRegex(@"Paid £(?<pounds>\d+\.\d\d)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Paid();
}
