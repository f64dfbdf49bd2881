using System.Globalization;
using Bunit;

namespace ShopFit.Web.Shared;

public sealed class LetteringTests : BunitContext
{
    [Fact]
    public void Places_are_written_with_a_point_whatever_the_country()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

            var text = Render<Lettering>(parameters => parameters.Add(it => it.X, 12.5).Add(it => it.Y, -3.25).AddChildContent("left")).Find("text");

            Assert.Equal(("12.5", "-3.25", "left"), (text.GetAttribute("x"), text.GetAttribute("y"), text.TextContent));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(true, "middle")]
    [InlineData(false, "start")]
    public void It_stands_at_its_place_or_over_it(bool centred, string anchor) =>
        Assert.Equal(anchor, Render<Lettering>(parameters => parameters.Add(it => it.Centred, centred)).Find("text").GetAttribute("text-anchor"));
}
