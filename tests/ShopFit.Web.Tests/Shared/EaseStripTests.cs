using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Shared;

public sealed class EaseStripTests : BunitContext
{
    public EaseStripTests() => Services.AddLocalization();

    [Theory]
    [InlineData(0.5, true)]
    [InlineData(-3.5, false)]
    [InlineData(5.5, false)]
    public void The_dot_is_in_the_middle_when_the_ease_is_ideal_and_outside_when_not(double ease, bool ideal)
    {
        var strip = Open(Fit(Side.Left, ease));

        var band = strip.Find(".ideal");
        var (from, width, at) = (Number(band, "x"), Number(band, "width"), Number(strip.Find(".mark"), "cx"));
        Assert.Equal(ideal, at >= from && at <= from + width);
    }

    [Fact]
    public void The_left_foot_is_above_the_right_and_both_carry_their_letter()
    {
        var strip = Open(Fit(Side.Left, 0), Fit(Side.Right, 0));

        Assert.Equal(2, strip.FindAll(".mark").Count);
        Assert.True(Number(strip.FindAll(".mark")[0], "cy") < Number(strip.FindAll(".mark")[1], "cy"));
        Assert.Equal(["L", "R"], strip.FindAll(".letter").Select(letter => letter.TextContent.Trim()));
    }

    [Fact]
    public void One_foot_carries_no_letter() => Assert.Empty(Open(Fit(Side.Left, 0)).FindAll(".letter"));

    [Fact]
    public void The_strip_is_one_picture_that_says_its_sentence()
    {
        Assert.Equal("Length: about right", Open(Fit(Side.Left, 0)).Find("svg[role=img]").GetAttribute("aria-label"));
    }

    [Fact]
    public void Numbers_of_the_drawing_have_points_where_the_language_writes_commas()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

            Assert.DoesNotContain(",", Open(Fit(Side.Left, 0.37)).Find(".whisker").GetAttribute("d"), StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static double Number(IElement element, string name) => double.Parse(element.GetAttribute(name)!, CultureInfo.InvariantCulture);

    private static CriterionFit Fit(Side foot, double ease) =>
        new(foot, FitDefaults.Standard.CriteriaOf("pointe")!.Single(each => each.Id == "length"), ease, ease - 1, ease + 1, 0.5);

    private IRenderedComponent<EaseStrip> Open(params CriterionFit[] fits) =>
        Render<EaseStrip>(parameters => parameters.Add(it => it.Fits, fits).Add(it => it.Spoken, "Length: about right"));
}
