using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Dancers;

public sealed class NewDancerPageTests : PageTest
{
    [Fact]
    public void A_birthday_that_makes_her_a_child_asks_for_whoever_answers_for_her()
    {
        var page = Open();
        Assert.Empty(page.FindAll("section.minor"));

        Line(page, "Born on").Input("2014-03-01");

        Assert.Single(page.FindAll("section.minor"));
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
    public void Once_on_file_her_page_opens()
    {
        var page = Open();
        Line(page, "Name").Input("Ottoline Marsh");

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("/dancers/", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
    }

    private IRenderedComponent<NewDancerPage> Open()
    {
        Services.AddLocalization();
        Services.AddDancers().AddFittings();
        return Render<NewDancerPage>();
    }

    private static IElement Line(IRenderedComponent<NewDancerPage> page, string label) =>
        page.Find($"#{page.FindAll("label").Single(each => each.TextContent.Trim().StartsWith(label, StringComparison.Ordinal)).GetAttribute("for")}");
}
