namespace ShopFit.Fitting.Outlines;

/// <summary>A point of a drawing in mm: across (positive towards the little toe) and forward from the back of the heel.</summary>
/// <param name="Across">mm, positive towards the little toe.</param>
/// <param name="Forward">mm from the back of the heel.</param>
public readonly record struct OutlinePoint(double Across, double Forward);

/// <summary>One cubic Bézier piece of an outline.</summary>
/// <param name="From">Where it starts.</param>
/// <param name="FirstHandle">Its first control point.</param>
/// <param name="SecondHandle">Its second control point.</param>
/// <param name="To">Where it ends.</param>
public readonly record struct OutlineCurve(OutlinePoint From, OutlinePoint FirstHandle, OutlinePoint SecondHandle, OutlinePoint To);

/// <summary>A closed path in mm, drawn by screen and paper alike.</summary>
/// <param name="Curves">Its pieces, each starting where the one before ends.</param>
public sealed record Outline(IReadOnlyList<OutlineCurve> Curves);

/// <summary>What is needed to draw a foot from above, in mm; what is null is filled in from the rest.</summary>
public sealed record FootShape(double Length)
{
    /// <summary>Straight across the joints.</summary>
    public double? BallBreadth { get; init; }

    /// <summary>Across the toes at the nail bases.</summary>
    public double? ToeBreadth { get; init; }

    /// <summary>Widest part of the heel.</summary>
    public double? HeelBreadth { get; init; }

    /// <summary>Heel to the joint of the big toe.</summary>
    public double? HeelToBall { get; init; }

    /// <summary>Second toe tip ahead of the big toe tip.</summary>
    public double? SecondToeLead { get; init; }

    /// <summary>From the longest toe tip back to the fourth.</summary>
    public double? ToeSlope { get; init; }
}
