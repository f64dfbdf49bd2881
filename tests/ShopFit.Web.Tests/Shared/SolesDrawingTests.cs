using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Outlines;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Web.Shared;

public sealed class SolesDrawingTests : BunitContext
{
    public SolesDrawingTests() => Services.AddLocalization();

    [Fact]
    public void Her_left_foot_is_at_the_left_as_she_stands_and_at_the_right_for_whoever_faces_her()
    {
        Assert.True(LabelAt(Open(facing: false), "dancer’s left") < LabelAt(Open(facing: false), "dancer’s right"));
        Assert.True(LabelAt(Open(facing: true), "dancer’s left") > LabelAt(Open(facing: true), "dancer’s right"));
    }

    [Fact]
    public void The_drawing_is_one_picture_with_a_spoken_label_and_a_bar_of_ten_millimetres()
    {
        var drawing = Open(facing: false);

        Assert.Equal("Both soles, drawn to scale", drawing.Find("svg[role=img]").GetAttribute("aria-label"));
        Assert.Contains("10 mm", drawing.Markup, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(238, 250)]
    [InlineData(254, 250)]
    [InlineData(262, 300)]
    [InlineData(320, 350)]
    public void The_ruler_reaches_past_the_longest_foot(double length, double reach) =>
        Assert.Equal(reach, SolesPicture.Of([new(Side.Left, new FootShape(length))], facing: false).Reach);

    [Fact]
    public void A_place_out_of_its_band_is_marked_with_millimetres_and_a_word_and_not_by_colour_alone()
    {
        var drawing = Open(facing: false, Fit("heel", 2), Fit("length", 0.5), Fit("ball", -9));

        var marks = drawing.FindAll("text.mark").Select(mark => mark.TextContent.Trim()).ToList();
        Assert.Equal(["3 loose", "4 tight"], marks.Take(2));
        Assert.All(drawing.FindAll(".collar"), collar => Assert.StartsWith("url(#", collar.GetAttribute("stroke"), StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_shoe_nothing_is_marked()
    {
        Assert.Empty(Open(facing: false).FindAll(".collar, .shoe, text.mark"));
    }

    private IRenderedComponent<SolesDrawing> Open(bool facing, params CriterionFit[] places)
    {
        var shoe = places.Length is 0
            ? null
            : ShoeForm.FromLabel(new SizeLabel(SizeSystem.Find("eu")!, 38), FitDefaults.Standard);
        SoleView[] soles = [.. new[] { Side.Left, Side.Right }.Select(foot => new SoleView(foot, new FootShape(238)) { Shoe = shoe, Places = foot is Side.Left ? places : [] })];
        return Render<SolesDrawing>(parameters => parameters.Add(it => it.Soles, soles).Add(it => it.Facing, facing).Add(it => it.Spoken, "Both soles, drawn to scale"));
    }

    private static double LabelAt(IRenderedComponent<SolesDrawing> drawing, string label) => double.Parse(
        drawing.FindAll("text").Single(text => text.TextContent.Trim() == label).GetAttribute("x")!,
        System.Globalization.CultureInfo.InvariantCulture);

    private static CriterionFit Fit(string criterion, double ease) =>
        new(Side.Left, FitDefaults.Standard.CriteriaOf("pointe")!.Single(each => each.Id == criterion), ease, ease - 2, ease + 2, 0.5);
}
