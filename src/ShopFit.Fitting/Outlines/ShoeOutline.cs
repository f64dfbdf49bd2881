using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Outlines;

/// <summary>The inside of a pointe shoe seen from above as a closed path, in the order of <see cref="FootOutline"/>.</summary>
public static class ShoeOutline
{
    /// <summary>How far the handles at the shoulder reach towards their corner, 0 to 1 *(cp)*.</summary>
    private const double ShoulderRoundness = 0.6;

    /// <summary>The outline of the inside of a shoe.</summary>
    public static Outline Of(ShoeForm form) => Of(ShoeShape.Of(form));

    /// <summary>The outline of the inside of a shoe.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value of the shape is not finite.</exception>
    public static Outline Of(ShoeShape shape)
    {
        var at = ShoePlaces.Of(shape);
        return new([.. OuterSide(at), OutlineCurve.Straight(at.PlatformOuter, at.PlatformInner), .. InnerSide(at)]);
    }

    /// <summary>The platform, to be drawn once more as a heavy line.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value of the shape is not finite.</exception>
    public static OpenLine Platform(ShoeShape shape)
    {
        var at = ShoePlaces.Of(shape);
        return new([OutlineCurve.Straight(at.PlatformInner, at.PlatformOuter)]);
    }

    /// <summary>From the back of the heel round the little toe's side to the platform: it only ever goes toeward.</summary>
    internal static IEnumerable<OutlineCurve> OuterSide(ShoePlaces at)
    {
        yield return OutlineCurve.Between(at.HeelBack, Heading.Outward, 0.56 * at.HeelOuter.Across, at.HeelOuter, Heading.Toeward, 0.56 * at.HeelOuter.Forward);
        yield return Up(at.HeelOuter, 0.54, at.OuterJoint);
        yield return Up(at.OuterJoint, 0.42, at.BoxOuter);

        // At the shoulder the path leans by the harmonic mean of the steepness on its two sides, which lies between them.
        // So the line through the shoulder meets the side of the box and the front of the platform in two corners, and
        // handles that stop short of the corners keep the shoulder round outwards.
        var toPlatform = at.Shoulder.Across - at.PlatformOuter.Across;
        var toSide = at.BoxOuter.Across - at.Shoulder.Across;
        var (gentle, steep) = (at.ToeSlope / toPlatform, at.ShoulderFall / toSide);
        var lean = 2 * gentle * steep / (gentle + steep);
        var overShoulder = new Heading(-1, lean);
        var toFrontCorner = at.ToeSlope / lean;
        yield return OutlineCurve.Between(
            at.BoxOuter, Heading.Toeward, ShoulderRoundness * (at.ShoulderFall - (lean * toSide)),
            at.Shoulder, overShoulder, ShoulderRoundness * toSide);
        yield return OutlineCurve.Between(
            at.Shoulder, overShoulder, ShoulderRoundness * toFrontCorner,
            at.PlatformOuter, Heading.Inward, ShoulderRoundness * (toPlatform - toFrontCorner));
    }

    /// <summary>From the platform round the big toe's side to the back of the heel: it only ever goes heelward.</summary>
    internal static IEnumerable<OutlineCurve> InnerSide(ShoePlaces at)
    {
        yield return OutlineCurve.Between(
            at.PlatformInner, Heading.Inward, 0.62 * (at.PlatformInner.Across - at.BoxInner.Across),
            at.BoxInner, Heading.Heelward, 0.60 * (at.Length - at.BoxInner.Forward));
        yield return Down(at.BoxInner, at.InnerJoint);
        yield return Down(at.InnerJoint, at.InnerWaist);
        yield return Down(at.InnerWaist, at.HeelInner);
        yield return OutlineCurve.Between(at.HeelInner, Heading.Heelward, 0.56 * at.HeelInner.Forward, at.HeelBack, Heading.Outward, -0.56 * at.HeelInner.Across);
    }

    private static OutlineCurve Up(OutlinePoint from, double first, OutlinePoint to)
    {
        var rise = to.Forward - from.Forward;
        return OutlineCurve.Between(from, Heading.Toeward, first * rise, to, Heading.Toeward, 0.42 * rise);
    }

    private static OutlineCurve Down(OutlinePoint from, OutlinePoint to)
    {
        var fall = from.Forward - to.Forward;
        return OutlineCurve.Between(from, Heading.Heelward, 0.42 * fall, to, Heading.Heelward, 0.42 * fall);
    }
}
