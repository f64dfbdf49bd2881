using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;

namespace ShopFit.Web.App.Layout;

public sealed class OwnCornerTests : BunitContext
{
    public OwnCornerTests() => Services.AddLocalization();

    [Fact]
    public void It_says_who_has_signed_in_and_lets_them_go()
    {
        var corner = Render<OwnCorner>(parameters => parameters.Add(it => it.Name, "Isolde"));

        Assert.Equal("Isolde", corner.Find("summary").TextContent);
        Assert.Equal("Sign out", corner.Find("a[href='/sign-out']").TextContent);
    }

    [Fact]
    public void It_offers_every_dress_that_the_tokens_know()
    {
        var corner = Render<OwnCorner>();

        Assert.Equal(["light", "dark", "as-tablet"], corner.FindAll("[data-wear-theme]").Select(key => key.GetAttribute("data-wear-theme")));
        Assert.Equal(["usual", "high"], corner.FindAll("[data-wear-contrast]").Select(key => key.GetAttribute("data-wear-contrast")));
    }
}
