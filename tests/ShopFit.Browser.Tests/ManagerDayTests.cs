using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopFit.Browser.Support;
using static Microsoft.Playwright.Assertions;

namespace ShopFit.Browser;

/// <summary>A manager's day: a studio and what its teacher asks for, a voucher, a sample, and a number of the fit changed and changed back.</summary>
public sealed class ManagerDayTests(RunningShop shop, ITestOutputHelper output) : IClassFixture<RunningShop>
{
    [Theory]
    [InlineData(1024, 768)]
    [InlineData(768, 1024)]
    public async Task Studio_voucher_sample_and_a_band_are_looked_after(int width, int height)
    {
        await using var tablet = await Tablet.TakeAsync();
        var page = await tablet.OpenAsync(shop, new() { Width = width, Height = height });
        await page.SignInAsManagerAsync();
        var thumb = new Thumb(page);

        // A studio whose teacher asks for one model and wants none of another.
        await thumb.FollowAsync("Dancers", exact: true);
        await thumb.FollowAsync("Studios");
        await thumb.TypeAsync(page.GetByLabel("New studio"), $"Hawthorn {width}");
        await thumb.TapAsync("Put on file");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = $"Hawthorn {width}" })).ToBeVisibleAsync();
        await thumb.TypeAsync(page.GetByLabel("Teachers"), "Odette Marrable");
        await thumb.ChooseAsync("Thistlefen Lastworks Moorlace", "asked for");
        await thumb.ChooseAsync("Ostrin Row Marrowby", "not wanted");
        await thumb.TapAsync("Keep", exact: true);
        await Expect(page.Locator(".keys [role=status]")).ToHaveTextAsync("Kept.");
        await page.ReloadAsync();
        await Expect(page.GetByLabel("Teachers")).ToHaveValueAsync("Odette Marrable");
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Ostrin Row Marrowby" }).GetByRole(AriaRole.Button, new() { Name = "not wanted" })).ToHaveAttributeAsync("aria-pressed", "true");

        // A voucher for its dancers: once, and from a bag of forty pounds on.
        await page.GotoAsync("/sales/vouchers");
        await thumb.TypeAsync(page.GetByLabel("Code"), $"HAWTHORN-{width}");
        await thumb.TypeAsync(page.GetByLabel("Per cent off"), "12,5");
        await thumb.TypeAsync(page.GetByLabel("How often in all"), "1");
        await thumb.TypeAsync(page.GetByLabel("From a bag of"), "40");
        await thumb.TapAsync("Make the voucher");
        await Expect(page.GetByText($"HAWTHORN-{width}").First).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Expect(page.GetByText("12.5%").First).ToBeVisibleAsync();

        // A sample of a model that was known by its labels alone; every size follows from it.
        await thumb.FollowAsync("Catalogue", exact: true);
        await thumb.TypeAsync(page.GetByRole(AriaRole.Searchbox), "Brindlewick 6");
        await thumb.FollowAsync("CW-BRI-6-BEC", exact: true);
        await thumb.FollowAsync("Measure this size");
        var length = page.GetByLabel(new Regex("^Length", RegexOptions.None, TimeSpan.FromSeconds(1)));
        await thumb.TypeAsync(length, "2170");
        await thumb.TapAsync("Grade all");
        await Expect(page.GetByText("Length: 2170 cannot be. It is 100 to 350 mm.")).ToBeVisibleAsync();
        await Expect(length).ToHaveValueAsync("2170");
        await length.FillAsync(width == 1024 ? "221" : "222");
        await thumb.TapAsync("Grade all");
        await Expect(page.GetByText("On file. Brindlewick is graded from size 6 beck")).ToBeVisibleAsync();
        await page.GotoAsync("/catalogue?search=Brindlewick");
        await thumb.TypeAsync(page.GetByRole(AriaRole.Searchbox), "Brindlewick 6.5");
        await thumb.FollowAsync("CW-BRI-6.5-BEC", exact: true);
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "The inside" }).GetByRole(AriaRole.Row, new() { Name = "Length" })).ToContainTextAsync("graded from the sample of size 6 beck");

        // A band is changed with a reason, tells who and when, and goes back to its default.
        await page.GotoAsync("/shop/fit/bands.pointe");
        var limit = page.GetByLabel("Length, no fit above", new() { Exact = true });
        await thumb.TapAsync(limit);
        await limit.FillAsync("5,5");
        await thumb.TypeAsync(page.GetByLabel("Why"), "Six is too long in our experience.");
        await thumb.TapAsync("What would it change?");
        await thumb.TapAsync("Save these numbers");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Who changed these numbers" })).ToContainTextAsync("Six is too long");
        await page.ReloadAsync();
        await Expect(limit).ToHaveValueAsync("5.5");
        await page.GotoAsync("/shop/log");
        await Expect(page.GetByText("Six is too long in our experience.").First).ToBeVisibleAsync();
        await page.GotoAsync("/shop/fit/bands.pointe");
        await limit.FillAsync("6");
        await thumb.TypeAsync(page.GetByLabel("Why"), "Back to the default.");
        await thumb.TapAsync("Save these numbers");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Who changed these numbers" })).ToContainTextAsync("Back to the default.");
        await page.ReloadAsync();
        await Expect(limit).ToHaveValueAsync("6");
        await Expect(page.Locator(".word.attention", new() { HasText = "changed" })).ToHaveCountAsync(0);

        output.WriteLine($"{thumb.Taps} taps at {width} x {height}");
    }
}
