using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Outlines;

namespace ShopFit.Sheets.TakeHome;

/// <summary>One foot, its shoe and its pads as outlines in mm, and how far they reach from the axis and the heel.</summary>
internal sealed class Sole
{
    public Sole(SheetFoot foot, TakeHomeSheet sheet, Side side)
    {
        Side = side;
        var shape = Shape(foot);
        Foot = FootOutline.Of(shape);
        Clefts = ToeLines.Of(shape).Clefts;
        var places = FootPlaces.Of(shape);
        // The outline is that of a shoe with a box: a soft shoe has no such shape.
        var inside = sheet.Pair is { Construction: not BoxConstruction.None, Inside: { } form }
            ? new ShoeShape(form.Length, form.BallGirth, form.BoxBreadth, form.HeelBreadth, form.ToeSlope)
            : null;
        Shoe = inside is null ? null : ShoeOutline.Of(inside);
        Platform = inside is null ? null : ShoeOutline.Platform(inside);

        // Where the shoe's inside is not drawn, a pad lies where it would in a shoe of the foot's own shape.
        var around = inside ?? new ShoeShape(places.Length, places.BallBreadth * FootShape.GirthPerBreadth, places.ToeBreadth, places.HeelBreadth, foot.ToeSlope ?? 0);
        Pads = [.. sheet.Pads.Where(pad => pad.Foot == side).Select(pad => (pad.Number, PadPlaces.Of(pad.Id, around))).Where(pad => pad.Item2.Count > 0)];

        var points = Foot.Curves.Concat(Shoe?.Curves ?? []).Concat(Pads.SelectMany(pad => pad.Shapes).SelectMany(shape => shape.Curves)).Select(curve => curve.To).ToList();
        Inner = -points.Min(point => point.Across);
        Across = Inner + points.Max(point => point.Across);
        Forward = points.Max(point => point.Forward);
    }

    public Side Side { get; }

    public Outline Foot { get; }

    public IReadOnlyList<OpenLine> Clefts { get; }

    public Outline? Shoe { get; }

    public OpenLine? Platform { get; }

    public IReadOnlyList<(int Number, IReadOnlyList<Outline> Shapes)> Pads { get; }

    /// <summary>Reach from the axis towards the other foot, mm.</summary>
    public double Inner { get; }

    /// <summary>Whole breadth, mm.</summary>
    public double Across { get; }

    /// <summary>Reach forward of the heel, mm.</summary>
    public double Forward { get; }

    private static FootShape Shape(SheetFoot foot) => new(foot.Length)
    {
        BallBreadth = foot.BallBreadth,
        ToeBreadth = foot.ToeBreadth,
        HeelBreadth = foot.HeelBreadth,
        HeelToBall = foot.HeelToBall,
        SecondToeLead = foot.SecondToeLead,
        ToeSlope = foot.ToeSlope,
    };
}
