namespace ShopFit.Fitting.Outlines;

/// <summary>A foot seen from above as a closed path: back of the heel, outer side, little toe to big toe, inner side.</summary>
/// <remarks>
/// The two sides are functions of the forward and the toe edge is a function of the across, and two facing handles
/// never reach past each other, so the path cannot cross itself. Proportions chosen by eye *(cp)*.
/// </remarks>
public static class FootOutline
{
    /// <summary>The steepest that the outer side may lean in towards the little toe.</summary>
    private const double SteepestLean = 0.32;

    /// <summary>The outline of a foot.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value of the shape is not finite.</exception>
    public static Outline Of(FootShape shape)
    {
        var places = FootPlaces.Of(shape);
        return new([.. OuterSide(places), .. Toes(places), .. InnerSide(places)]);
    }

    private static IEnumerable<OutlineCurve> OuterSide(FootPlaces at)
    {
        yield return OutlineCurve.Between(at.HeelBack, Heading.Outward, 0.54 * at.HeelOuter.Across, at.HeelOuter, Heading.Toeward, 0.54 * at.HeelOuter.Forward);

        var rise = at.OuterJoint.Forward - at.HeelOuter.Forward;
        yield return OutlineCurve.Between(at.HeelOuter, Heading.Toeward, 0.42 * rise, at.OuterJoint, Heading.Toeward, 0.44 * rise);

        var toEdge = at.OuterToeEdge.Forward - at.OuterJoint.Forward;
        var lean = Math.Clamp(0.8 * (at.OuterJoint.Across - at.OuterToeEdge.Across) / toEdge, 0, SteepestLean);
        var leaning = new Heading(-lean, 1);
        yield return OutlineCurve.Between(at.OuterJoint, Heading.Toeward, 0.40 * toEdge, at.OuterToeEdge, leaning, 0.34 * toEdge);

        var little = at.Tips[4];
        yield return OutlineCurve.Between(
            at.OuterToeEdge, leaning, 0.55 * (little.Forward - at.OuterToeEdge.Forward),
            little, Heading.Inward, 0.56 * (at.OuterToeEdge.Across - little.Across));
    }

    private static IEnumerable<OutlineCurve> Toes(FootPlaces at)
    {
        for (var toe = 4; toe > 0; toe--)
        {
            var (tip, cleft, next) = (at.Tips[toe], at.Clefts[toe - 1], at.Tips[toe - 1]);
            var (down, up) = (tip.Across - cleft.Across, cleft.Across - next.Across);
            yield return OutlineCurve.Between(tip, Heading.Inward, 0.72 * down, cleft, Heading.Inward, 0.20 * down);
            yield return OutlineCurve.Between(cleft, Heading.Inward, 0.20 * up, next, Heading.Inward, 0.72 * up);
        }
    }

    private static IEnumerable<OutlineCurve> InnerSide(FootPlaces at)
    {
        var big = at.Tips[0];
        yield return OutlineCurve.Between(
            big, Heading.Inward, 0.60 * (big.Across - at.InnerToeEdge.Across),
            at.InnerToeEdge, Heading.Heelward, 0.58 * (big.Forward - at.InnerToeEdge.Forward));

        yield return Down(at.InnerToeEdge, 0.40, at.InnerJoint, 0.40);
        yield return Down(at.InnerJoint, 0.40, at.InnerWaist, 0.46);
        yield return Down(at.InnerWaist, 0.46, at.HeelInner, 0.40);
        yield return OutlineCurve.Between(at.HeelInner, Heading.Heelward, 0.54 * at.HeelInner.Forward, at.HeelBack, Heading.Outward, -0.54 * at.HeelInner.Across);
    }

    private static OutlineCurve Down(OutlinePoint from, double first, OutlinePoint to, double second)
    {
        var fall = from.Forward - to.Forward;
        return OutlineCurve.Between(from, Heading.Heelward, first * fall, to, Heading.Heelward, second * fall);
    }
}
