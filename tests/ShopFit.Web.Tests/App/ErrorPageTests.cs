using Bunit;
using Microsoft.Extensions.DependencyInjection;

namespace ShopFit.Web.App;

public sealed class ErrorPageTests : BunitContext
{
    public ErrorPageTests() => Services.AddLocalization();

    [Fact]
    public void A_failure_says_that_what_was_saved_is_kept_and_leads_back_to_today()
    {
        var page = Render<ErrorPage>();

        Assert.Equal("Something went wrong here", Assert.Single(page.FindAll("h1")).TextContent);
        Assert.Contains("Everything that was saved is kept.", page.Find(".lead").TextContent, StringComparison.Ordinal);
        Assert.Equal(("/", "Go to today"), (page.Find("a").GetAttribute("href"), page.Find("a").TextContent));
    }
}
