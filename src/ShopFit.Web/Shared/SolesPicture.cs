using System.Globalization;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Outlines;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Web.Shared;

/// <summary>Lays out the drawing of two soles: where each lies on the mat, the ruler, what is written where. All in mm.</summary>
/// <remarks>
/// The dancer stands with her toes up and her left foot at the left. For a fitter who faces her the whole drawing is turned
/// by half a turn, never mirrored, and only the writing stays upright.
/// </remarks>
internal sealed class SolesPicture
{
    // Proportions of the mat, chosen by eye for a foot of up to 250 mm; a longer foot makes the whole mat larger.
    private const double UsualReach = 250;
    private const double UsualWidth = 253;
    private const double FirstAxis = 82.5;
    private const double SecondAxis = 198.5;
    private const double PastReach = 20;
    private const double BehindHeel = 20;
    private const double Foot = 12;
    private const double RulerStep = 50;

    // Toes and their figure may stand this far beyond the last figure of the ruler.
    private const double Beyond = 4;

    private readonly bool _facing;

    private SolesPicture(double reach, bool facing)
    {
        _facing = facing;
        Reach = reach;
        Scale = reach / UsualReach;
    }

    /// <summary>The last figure of the ruler, mm.</summary>
    public double Reach { get; }

    /// <summary>How much larger than usual the mat is.</summary>
    public double Scale { get; }

    /// <summary>Width of the drawing, mm.</summary>
    public double Width => UsualWidth * Scale;

    /// <summary>Height of the drawing, mm.</summary>
    public double Height => PastReach + Reach + BehindHeel + Foot;

    /// <summary>The picture of these feet.</summary>
    public static SolesPicture Of(IReadOnlyList<SoleView> soles, bool facing)
    {
        var longest = soles.Count is 0 ? 0 : soles.Max(sole => Math.Max(sole.Shape.Length, Math.Max(sole.Shoe?[FormPart.Length] ?? 0, sole.OtherShoe?[FormPart.Length] ?? 0)));
        return new(Math.Max(UsualReach, Math.Ceiling((longest - Beyond) / RulerStep) * RulerStep), facing);
    }

    /// <summary>Where a foot lies: the dancer's left foot at the left, or at the right for somebody who faces her.</summary>
    public PagePlacement Of(Side foot) => new(
        foot,
        (foot is Side.Left != _facing ? FirstAxis : SecondAxis) * Scale,
        _facing ? BehindHeel : PastReach + Reach,
        _facing);

    /// <summary>A place on the page: across towards the little toe and forward from the heel of a foot.</summary>
    public PagePoint At(Side foot, double across, double forward) => Of(foot).Place(new(across, forward));

    /// <summary>Height on the page of a figure of the ruler.</summary>
    public double RulerAt(double mm) => At(Side.Left, 0, mm).Y;

    /// <summary>A rectangle of a foot as a path.</summary>
    public string Path(Side foot, OutlineBox box)
    {
        var (from, to) = (At(foot, box.AcrossFrom, box.ForwardFrom), At(foot, box.AcrossTo, box.ForwardTo));
        return Line($"M{from.X} {from.Y}H{to.X}V{to.Y}H{from.X}Z");
    }

    /// <summary>Text for SVG: numbers with a point, two decimals at most.</summary>
    public static string Line(FormattableString text) =>
        string.Format(CultureInfo.InvariantCulture, text.Format, [.. text.GetArguments().Select(value => value is double number ? Math.Round(number, 2) : value)]);
}
