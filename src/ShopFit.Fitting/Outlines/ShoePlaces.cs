namespace ShopFit.Fitting.Outlines;

/// <summary>The named places of the inside of a pointe shoe seen from above.</summary>
/// <remarks>Breadths are split over the axis as those of a foot are, so that a gap between the two shows alike on both sides.</remarks>
public sealed class ShoePlaces
{
    private ShoePlaces(ShoeShape shape)
    {
        Length = DrawnLimits.Length(shape.Length);
        BallBreadth = DrawnLimits.BallBreadth(shape.BallGirth / FootShape.GirthPerBreadth, Length);
        BoxBreadth = DrawnLimits.ToeBreadth(shape.BoxBreadth, BallBreadth);
        HeelBreadth = DrawnLimits.HeelBreadth(shape.HeelBreadth, Length);
        ToeSlope = DrawnLimits.Held(shape.ToeSlope, 2, 0.14 * Length);

        InnerJoint = new(-DrawnLimits.InnerShare * BallBreadth, 0.739 * Length);
        OuterJoint = new((1 - DrawnLimits.InnerShare) * BallBreadth, 0.639 * Length);
        HeelInner = new(-HeelBreadth / 2, 0.14 * Length);
        HeelOuter = new(HeelBreadth / 2, 0.14 * Length);
        InnerWaist = new(-0.74 * Math.Min(HeelBreadth / 2, DrawnLimits.InnerShare * BallBreadth), 0.45 * Length);

        // A squarer box has a wider platform. As shares of the length, so that a small shoe keeps the look of a large one.
        var platformTo = Math.Clamp(0.592 - (0.96 * ToeSlope / Length), 0.45, 0.58);
        BoxInner = new(InnerJoint.Across + (DrawnLimits.InnerTuck * (BallBreadth - BoxBreadth)), 0.905 * Length);
        BoxOuter = new(BoxInner.Across + BoxBreadth, Length - ToeSlope - ShoulderFall);
        PlatformInner = new(AcrossBox(0.16), Length);
        PlatformOuter = new(AcrossBox(platformTo), Length);
        Shoulder = new(AcrossBox(0.77), Length - ToeSlope);
    }

    /// <summary>Inner length as drawn, mm.</summary>
    public double Length { get; }

    /// <summary>Breadth at the joints as drawn, mm.</summary>
    public double BallBreadth { get; }

    /// <summary>Breadth of the box as drawn, mm.</summary>
    public double BoxBreadth { get; }

    /// <summary>Breadth of the heel as drawn, mm.</summary>
    public double HeelBreadth { get; }

    /// <summary>Slope of the box as drawn, mm.</summary>
    public double ToeSlope { get; }

    /// <summary>The back of the heel, where both axes begin.</summary>
    public OutlinePoint HeelBack { get; }

    /// <summary>The widest part of the heel, big toe's side.</summary>
    public OutlinePoint HeelInner { get; }

    /// <summary>The widest part of the heel, little toe's side.</summary>
    public OutlinePoint HeelOuter { get; }

    /// <summary>The waist under the arch.</summary>
    public OutlinePoint InnerWaist { get; }

    /// <summary>Where the big toe's joint lies.</summary>
    public OutlinePoint InnerJoint { get; }

    /// <summary>Where the little toe's joint lies.</summary>
    public OutlinePoint OuterJoint { get; }

    /// <summary>The side of the box at the big toe.</summary>
    public OutlinePoint BoxInner { get; }

    /// <summary>The side of the box at the little toe.</summary>
    public OutlinePoint BoxOuter { get; }

    /// <summary>The end of the platform at the big toe.</summary>
    public OutlinePoint PlatformInner { get; }

    /// <summary>The end of the platform towards the little toe.</summary>
    public OutlinePoint PlatformOuter { get; }

    /// <summary>Where the box passes over the fourth toe.</summary>
    public OutlinePoint Shoulder { get; }

    /// <summary>How far the box falls from the shoulder to its outer side, mm.</summary>
    internal double ShoulderFall => 0.12 * Length;

    /// <summary>The places of a shoe.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value of the shape is not finite.</exception>
    public static ShoePlaces Of(ShoeShape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return new(shape);
    }

    /// <summary>The across at a share of the box breadth from its inner side.</summary>
    internal double AcrossBox(double share) => BoxInner.Across + (share * BoxBreadth);
}
