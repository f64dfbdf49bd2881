using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.Studios;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Dancers;

public sealed class NewDancerPageTests : PageTest
{
    [Fact]
    public void A_birthday_that_makes_her_a_child_asks_for_whoever_answers_for_her()
    {
        var page = Open();
        Assert.Empty(page.FindAll("section.minor"));

        Line(page, "Born on").Input("1.3.2014");

        Assert.Single(page.FindAll("section.minor"));
        Assert.Contains("1 March 2014: 12 years", page.Markup, StringComparison.Ordinal);
        Assert.False(page.Find("section.minor input[type=checkbox]").HasAttribute("checked"));
    }

    [Fact]
    public async Task What_is_missing_is_said_beside_its_line_and_what_was_written_stays()
    {
        var page = Open();
        Line(page, "Studio").Input("Larch");

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("Name: write down", page.Find(".problem").TextContent, StringComparison.Ordinal));
        Assert.Equal("Larch", Line(page, "Studio").GetAttribute("value"));
        await using var db = Shop.CreateDbContext();
        Assert.False(await db.Dancers.AnyAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_day_of_birth_that_is_none_is_said_and_stays_as_it_was_typed()
    {
        var page = Open();
        Line(page, "Name").Input("Ottoline Marsh");
        Line(page, "Born on").Input("31.2.2010");

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("“31.2.2010” is no day. Write it like 12.3.2014", page.Find(".problem").TextContent, StringComparison.Ordinal));
        Assert.Equal("31.2.2010", Line(page, "Born on").GetAttribute("value"));
        await using var db = Shop.CreateDbContext();
        Assert.False(await db.Dancers.AnyAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_parent_on_file_is_one_tap_for_the_sister_but_not_their_yes()
    {
        var guardian = await Shop.HasAsync(Guardian.Of(Guid.CreateVersion7(), Shop.ShopId, "Rowan Fernsby", "01632 960123"));
        var sister = Dancer.Of(Guid.CreateVersion7(), Shop.ShopId, "Tilly Fernsby");
        sister.AnsweredForBy(guardian.Id);
        await Shop.HasAsync(sister);
        var page = Open();
        Line(page, "Born on").Input("1.3.2014");

        Line(page, "Parent or guardian").Input("ROWAN");
        Shop.Clock.Advance(TimeSpan.FromSeconds(1));
        page.WaitForAssertion(() => Assert.Contains(page.FindAll("button"), key => key.TextContent == "Rowan Fernsby, who answers for Tilly"));
        page.FindAll("button").Single(key => key.TextContent == "Rowan Fernsby, who answers for Tilly").Click();

        Assert.Equal("01632 960123", Line(page, "How to reach them").GetAttribute("value"));
        Assert.False(page.Find("section.minor input[type=checkbox]").HasAttribute("checked"));
    }

    [Fact]
    public void Once_on_file_her_page_opens()
    {
        var page = Open();
        Line(page, "Name").Input("Ottoline Marsh");
        page.FindAll("button").Single(key => key.TextContent == "Grown").Click();

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("/dancers/", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
    }

    private IRenderedComponent<NewDancerPage> Open()
    {
        Services.AddLocalization();
        Services.AddDancers().AddFittings().AddStudios();
        var page = Render<NewDancerPage>();
        page.WaitForElement("label");
        return page;
    }

    private static IElement Line(IRenderedComponent<NewDancerPage> page, string label) =>
        page.Find($"#{page.FindAll("label").Single(each => each.TextContent.Trim().StartsWith(label, StringComparison.Ordinal)).GetAttribute("for")}");
}
