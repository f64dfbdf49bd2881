using Bunit;
using Microsoft.Extensions.DependencyInjection;

namespace ShopFit.Web.App;

public sealed class NotFoundPageTests : BunitContext
{
    public NotFoundPageTests() => Services.AddLocalization();

    [Fact]
    public void A_wrong_address_says_what_may_be_wrong_with_it_and_leads_back_to_today()
    {
        var page = Render<NotFoundPage>();

        Assert.Equal("There is nothing at this address", Assert.Single(page.FindAll("h1")).TextContent);
        Assert.Contains("It may have moved", page.Find(".lead").TextContent, StringComparison.Ordinal);
        Assert.Equal(("/", "Go to today"), (page.Find("a").GetAttribute("href"), page.Find("a").TextContent));
    }
}
