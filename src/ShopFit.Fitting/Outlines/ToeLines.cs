namespace ShopFit.Fitting.Outlines;

/// <summary>The short lines that make a foot look like one: clefts between the toes, and nails.</summary>
/// <param name="Clefts">Four lines that part the toes.</param>
/// <param name="Nails">Five nails, big toe first. Only on a bare foot: under a shoe they are left out.</param>
public sealed record ToeLines(IReadOnlyList<OpenLine> Clefts, IReadOnlyList<OpenLine> Nails)
{
    /// <summary>How far each cleft runs back, as a share of the length *(cp)*.</summary>
    private static readonly double[] CleftReach = [0.062, 0.046, 0.042, 0.036];

    /// <summary>The lines of a foot.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value of the shape is not finite.</exception>
    public static ToeLines Of(FootShape shape)
    {
        var places = FootPlaces.Of(shape);
        return new(
            [.. places.Clefts.Select((cleft, toe) => Cleft(cleft, toe, CleftReach[toe] * places.Length))],
            [.. places.Tips.Select((tip, toe) => Nail(tip, places.ToeWidths[toe], big: toe == 0))]);
    }

    private static OpenLine Cleft(OutlinePoint cleft, int toe, double back)
    {
        // The inner clefts lean one way and the outer ones the other, as toes spread.
        var drift = -0.10 * back * (toe - 0.6);
        var from = cleft with { Forward = cleft.Forward + 0.2 };
        var pull = new OutlinePoint(cleft.Across + (0.2 * drift), cleft.Forward - (0.5 * back));
        var to = new OutlinePoint(cleft.Across + drift, cleft.Forward - back);

        // A parabola with one pull is the cubic whose handles lie two thirds of the way to it.
        return new([new(from, from.Towards(pull, 2.0 / 3), to.Towards(pull, 2.0 / 3), to)]);
    }

    private static OpenLine Nail(OutlinePoint tip, double toeWidth, bool big)
    {
        var half = toeWidth * (big ? 0.26 : 0.25);
        var height = toeWidth * (big ? 0.46 : 0.42);
        var top = tip.Forward - (0.13 * toeWidth);
        OutlinePoint At(double across, double down) => new(tip.Across + (across * half), top - (down * height));
        var bottom = At(0, 1.05);
        return new(
        [
            new(At(-1, 0.25), At(-1, 1), At(-0.7, 1.05), bottom),
            new(bottom, At(0.7, 1.05), At(1, 1), At(1, 0.25)),
        ]);
    }
}
