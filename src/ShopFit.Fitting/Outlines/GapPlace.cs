namespace ShopFit.Fitting.Outlines;

/// <summary>A rectangle of a drawing, mm.</summary>
/// <param name="AcrossFrom">Smallest across.</param>
/// <param name="AcrossTo">Largest across.</param>
/// <param name="ForwardFrom">Smallest forward.</param>
/// <param name="ForwardTo">Largest forward.</param>
public readonly record struct OutlineBox(double AcrossFrom, double AcrossTo, double ForwardFrom, double ForwardTo);

/// <summary>Where on the drawing an ease that leaves its band is shown: the gap between foot and shoe, and a collar outside both.</summary>
/// <param name="Criterion">Id of the criterion.</param>
/// <param name="From">Share of the length where the stretch begins.</param>
/// <param name="To">Share of the length where it ends.</param>
/// <param name="OuterSideOnly">Whether only the little toe's half is meant.</param>
/// <remarks>
/// A foot outside its shoe is hatched, a shoe outside the foot dotted. Crown, vamp, shank and toe line cannot be
/// seen from above and have no place.
/// </remarks>
public sealed record GapPlace(string Criterion, double From, double To, bool OuterSideOnly = false)
{
    /// <summary>Breadth of the collar of the same texture outside the outer line, mm: it shows 2 mm from a metre away.</summary>
    public const double CollarBreadth = 6;

    /// <summary>Past the side of any foot, mm.</summary>
    private const double Aside = 200;

    /// <summary>All of them.</summary>
    public static IReadOnlyList<GapPlace> All { get; } =
    [
        new("length", 0.92, 1.02),
        new("box", 0.80, 0.95),
        new("taper", 0.76, 1.03, OuterSideOnly: true),
        new("ball", 0.60, 0.80),
        new("heel", -0.04, 0.31),
    ];

    /// <summary>The place of a criterion, or null where it cannot be seen from above.</summary>
    public static GapPlace? Find(string criterion) => All.FirstOrDefault(place => place.Criterion == criterion);

    /// <summary>The rectangle to which gap and collar are clipped.</summary>
    /// <param name="footLength">Length of the foot, mm.</param>
    /// <param name="shoeLength">Inner length of the shoe, mm. The longer of the two sets the scale, so that neither end is cut off.</param>
    public OutlineBox Box(double footLength, double shoeLength)
    {
        var length = Math.Max(footLength, shoeLength);
        return new(OuterSideOnly ? 0 : -Aside, Aside, From * length, To * length);
    }
}
