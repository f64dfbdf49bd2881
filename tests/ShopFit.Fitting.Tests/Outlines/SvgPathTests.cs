using System.Globalization;
using System.Text.RegularExpressions;
using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Outlines;

public partial class SvgPathTests
{
    // A wedge whose points are easy to follow by eye: 10 mm towards the little toe, 20 mm towards the toes.
    private static readonly Outline Wedge = new(
    [
        new(new(0, 0), new(1, 0), new(2, 0), new(10, 0)),
        new(new(10, 0), new(10, 5), new(10, 6), new(0, 20)),
        new(new(0, 20), new(0, 10), new(0, 5), new(0, 0)),
    ]);

    [Fact]
    public void A_right_foot_keeps_its_across_and_a_left_one_mirrors_it()
    {
        Assert.Equal("M50 100C51 100 52 100 60 100C60 95 60 94 50 80C50 90 50 95 50 100Z", SvgPath.Of(Wedge, Side.Right, 50, 100));
        Assert.Equal("M50 100C49 100 48 100 40 100C40 95 40 94 50 80C50 90 50 95 50 100Z", SvgPath.Of(Wedge, Side.Left, 50, 100));
    }

    [Fact]
    public void Facing_her_is_half_a_turn_and_never_a_mirror_image()
    {
        var placement = new PagePlacement(Side.Right, 50, 100, Facing: true);

        Assert.Equal("M50 100C49 100 48 100 40 100C40 105 40 106 50 120C50 110 50 105 50 100Z", SvgPath.Of(Wedge, placement));
        Assert.Equal(TurnOnPage(new PagePlacement(Side.Left)), TurnOnPage(new PagePlacement(Side.Left, Facing: true)));
        Assert.Equal(-TurnOnPage(new PagePlacement(Side.Left)), TurnOnPage(new PagePlacement(Side.Right)));
    }

    [Fact]
    public void Numbers_are_hundredths_of_a_millimetre_in_every_culture()
    {
        var before = CultureInfo.CurrentCulture;
        var foot = FootOutline.Of(new FootShape(238.456));
        var expected = SvgPath.Of(foot, Side.Left, 80.5, 300.125);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("sv-SE");

            Assert.Equal(expected, SvgPath.Of(foot, Side.Left, 80.5, 300.125));
            Assert.Matches(OnlyPlainNumbers(), expected);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Minus_nought_is_written_as_nought() =>
        Assert.Equal("M0 0C0 0 0 0 0 0Z", SvgPath.Of(new Outline([new(new(0, 0), new(0.001, 0.001), new(-0.001, -0.001), new(0, 0))]), Side.Left));

    [Fact]
    public void An_open_line_stays_open()
    {
        var lines = ToeLines.Of(new FootShape(240));

        Assert.Equal(4, lines.Clefts.Count);
        Assert.Equal(5, lines.Nails.Count);
        Assert.DoesNotContain("Z", SvgPath.Of(lines.Clefts, new PagePlacement(Side.Left)), StringComparison.Ordinal);
        Assert.Equal(5, SvgPath.Of(lines.Nails, new PagePlacement(Side.Left)).Count(letter => letter == 'M'));
    }

    [Fact]
    public void Outside_is_a_far_rectangle_and_the_outline() =>
        Assert.Equal(
            "M-950 -900H1050V1100H-950Z" + SvgPath.Of(Wedge, Side.Right, 50, 100),
            SvgPath.Outside(Wedge, new PagePlacement(Side.Right, 50, 100)));

    [GeneratedRegex(@"^M-?\d+(\.\d{1,2})? -?\d+(\.\d{1,2})?(C(-?\d+(\.\d{1,2})? ?){6})+Z$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex OnlyPlainNumbers();

    private static int TurnOnPage(PagePlacement placement)
    {
        var (a, b, c) = (placement.Place(new(0, 0)), placement.Place(new(10, 0)), placement.Place(new(0, 20)));
        return Math.Sign(((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X)));
    }
}
