using Bunit;
using Microsoft.Extensions.DependencyInjection;

namespace ShopFit.Web.Features.Settings;

public sealed class ShopPageTests : ManagerPageTest
{
    [Fact]
    public async Task What_is_typed_is_saved_as_one_form()
    {
        var page = Open();
        Field(page, "Name of the shop").Input("Larch Lane");
        Field(page, "Shoes").Input("5,5");
        Field(page, "Currency").Change("JPY");
        page.FindAll("input[type=checkbox]")[4].Change(false);

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("Saved.", page.Markup, StringComparison.Ordinal));
        var now = (await SeeAsync()).Settings;
        Assert.Equal(("Larch Lane", "JPY", 550), (now.Name, now.Currency, now.TaxRates["shoes"]));
        Assert.DoesNotContain("tap", now.Kinds);
    }

    [Fact]
    public async Task What_is_wrong_is_said_at_its_field_and_everything_typed_stays()
    {
        var page = Open();
        Field(page, "Name of the shop").Input(" ");
        Field(page, "Days in which").Input("14.5");
        Field(page, "Pads").Input("20.125");

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll(".problem").Count));
        Assert.Contains(page.FindAll(".problem"), problem => problem.TextContent.StartsWith("Days to come back: a whole number, 0 to 365, not “14.5”.", StringComparison.Ordinal));
        Assert.Equal("20.125", Field(page, "Pads").GetAttribute("value"));

        Field(page, "Days in which").Input("14");
        Field(page, "Pads").Input("20");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.StartsWith("Name of the shop: 1 to 200 letters", page.Find(".problem").TextContent, StringComparison.Ordinal));
        Assert.Equal(0, (await SeeAsync()).Version);
    }

    [Fact]
    public async Task The_second_of_two_managers_is_told_keeps_what_she_typed_and_does_not_undo_the_rest()
    {
        var page = Open();
        Field(page, "Name of the shop").Input("Mine");
        var seen = await SeeAsync();
        await new ChangeShop(Shop.Writes, Shop.Clock).RunAsync(Other, Guid.CreateVersion7(), seen.Version, seen.Settings with { Name = "Theirs", ReturnDays = 30 }, Stop);

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("Bram saved other settings", page.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Equal("Mine", Field(page, "Name of the shop").GetAttribute("value"));
        Assert.Contains("Theirs", page.Find(".theirs").TextContent, StringComparison.Ordinal);
        Assert.Equal("30", Field(page, "Days in which").GetAttribute("value"));

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("Saved.", page.Markup, StringComparison.Ordinal));
        var now = (await SeeAsync()).Settings;
        Assert.Equal(("Mine", 30), (now.Name, now.ReturnDays));
    }

    private Task<SeenShop> SeeAsync() => Services.GetRequiredService<SettingsQueries>().ShopAsync(Stop);

    private IRenderedComponent<ShopPage> Open()
    {
        var page = Render<ShopPage>();
        page.WaitForElement("form");
        return page;
    }
}
