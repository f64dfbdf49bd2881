using System.Globalization;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Outlines;
using ShopFit.Fitting.Scoring;

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
    private const double LeftAxis = 82.5;
    private const double RightAxis = 198.5;
    private const double AboveReach = 22;
    private const double BelowHeel = 32;
    private const double RulerStep = 50;

    // Toes and their label may stand this far beyond the last figure of the ruler.
    private const double Beyond = 6;

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
    public double Height => Reach + AboveReach + BelowHeel;

    /// <summary>Where the backs of the heels lie before any turning, mm from the top.</summary>
    public double Heel => Reach + AboveReach;

    /// <summary>How the soles are turned.</summary>
    public string? Turn => _facing ? Line($"rotate(180 {(LeftAxis + RightAxis) / 2 * Scale} {Height / 2})") : null;

    /// <summary>The picture of these feet.</summary>
    public static SolesPicture Of(IReadOnlyList<SoleView> soles, bool facing)
    {
        var longest = soles.Count is 0 ? 0 : soles.Max(sole => Math.Max(sole.Shape.Length, sole.Shoe is { } shoe ? shoe[Fitting.Shoes.FormPart.Length] : 0));
        var reach = Math.Max(UsualReach, Math.Ceiling((longest - Beyond) / RulerStep) * RulerStep);
        return new(reach, facing);
    }

    /// <summary>Where the axis of a foot lies before any turning, mm from the left.</summary>
    public double Axis(Side foot) => (foot is Side.Left ? LeftAxis : RightAxis) * Scale;

    /// <summary>An outline in its place on the mat, before any turning.</summary>
    public string Path(Outline outline, Side foot) => SvgPath.Of(outline, foot, Axis(foot), Heel);

    /// <summary>A place on the page: across towards the little toe and forward from the heel of a foot, turned as the drawing is.</summary>
    public OutlinePoint At(Side foot, double across, double forward)
    {
        var x = Axis(foot) + (foot is Side.Left ? -across : across);
        var y = Heel - forward;
        return _facing ? new((LeftAxis + RightAxis) * Scale - x, Height - y) : new(x, y);
    }

    /// <summary>Height on the page of a figure of the ruler.</summary>
    public double RulerAt(double mm) => _facing ? Height - (Heel - mm) : Heel - mm;

    /// <summary>Whether what is forward on the foot is further down on the page.</summary>
    public bool ToesDown => _facing;

    /// <summary>A band across a foot, in shares of a length forward from the heel; the outer half only, or all of it.</summary>
    public string Band(Side foot, double length, double from, double to, bool outerOnly)
    {
        const double FarAcross = 70;
        var axis = Axis(foot);
        var inner = outerOnly ? 0 : FarAcross * Scale;
        var (left, right) = foot is Side.Left ? (axis - FarAcross * Scale, axis + inner) : (axis - inner, axis + FarAcross * Scale);
        return Line($"M{left} {Heel - to * length}H{right}V{Heel - from * length}H{left}Z");
    }

    /// <summary>Everything but an outline: for clipping to what lies outside of it.</summary>
    public string Outside(string path) => Line($"M-99 -99H{Width + 99}V{Height + 99}H-99Z") + path;

    /// <summary>Text for SVG: numbers with a point, two decimals at most.</summary>
    public static string Line(FormattableString text) =>
        string.Format(CultureInfo.InvariantCulture, text.Format, [.. text.GetArguments().Select(value => value is double number ? Math.Round(number, 2) : value)]);
}

/// <summary>Where a criterion shows in the drawing from above.</summary>
/// <param name="From">Start of the marked band, share of the length.</param>
/// <param name="To">End of the marked band, share of the length.</param>
/// <param name="OuterOnly">Only on the side of the little toe.</param>
/// <param name="LabelAcross">Where the words stand: across, share of the ball breadth.</param>
/// <param name="LabelForward">And forward, share of the length.</param>
internal sealed record MarkedPlace(double From, double To, bool OuterOnly, double LabelAcross, double LabelForward)
{
    private static readonly Dictionary<string, MarkedPlace> Places = new(StringComparer.Ordinal)
    {
        ["length"] = new(0.92, 1.02, false, -0.12, 0.845),
        ["box"] = new(0.80, 0.95, false, 0, 0.775),
        ["taper"] = new(0.76, 1.03, true, 0.1, 0.70),
        ["ball"] = new(0.60, 0.80, false, 0.02, 0.615),
        ["heel"] = new(-0.04, 0.31, false, 0, 0.235),
    };

    // A place that is out of its band by less than this is not worth a mark, mm.
    private const double WorthAMark = 0.5;

    /// <summary>The place of a criterion that can be seen from above; null for the others.</summary>
    public static MarkedPlace? Of(string criterionId) => Places.GetValueOrDefault(criterionId);

    /// <summary>The places of a foot that are out of their band and can be drawn.</summary>
    public static IEnumerable<(CriterionFit Fit, MarkedPlace Place, bool Tight)> In(IReadOnlyList<CriterionFit> fits) =>
        from fit in fits
        let place = Of(fit.Criterion.Id)
        where place is not null
        where fit.Ease < fit.Criterion.IdealFrom - WorthAMark || fit.Ease > fit.Criterion.IdealTo + WorthAMark
        select (fit, place, StripPlace.IsTight(fit));
}
