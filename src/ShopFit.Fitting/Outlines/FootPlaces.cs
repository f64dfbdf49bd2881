namespace ShopFit.Fitting.Outlines;

/// <summary>The named places of a foot seen from above: where its outline turns, and where labels and dimension lines go.</summary>
/// <remarks>
/// The greatest forward is the length; outer joint less inner joint is the ball breadth; the two toe edges are the
/// toe breadth apart; the tip of the fourth toe is the toe slope behind the length; the second toe's tip less the
/// big toe's is the lead. All values are held within what can be drawn.
/// </remarks>
public sealed class FootPlaces
{
    /// <summary>Breadth of each toe as a share of the toe breadth, big toe first *(cp)*.</summary>
    private static readonly double[] ToeShares = [0.335, 0.185, 0.170, 0.160, 0.150];

    /// <summary>Where the tip of each toe lies within its breadth *(cp)*.</summary>
    private static readonly double[] TipShares = [0.47, 0.5, 0.5, 0.5, 0.46];

    /// <summary>How far the clefts reach back behind the shorter neighbour, as a share of the length *(cp)*.</summary>
    private static readonly double[] CleftDepths = [0.024, 0.015, 0.014, 0.013];

    private FootPlaces(FootShape shape)
    {
        Length = DrawnLimits.Length(shape.Length);
        BallBreadth = DrawnLimits.BallBreadth(shape.BallBreadth, Length);
        ToeBreadth = DrawnLimits.ToeBreadth(shape.ToeBreadth, BallBreadth);
        HeelBreadth = DrawnLimits.HeelBreadth(shape.HeelBreadth, Length);
        var heelToBall = DrawnLimits.Held(shape.HeelToBall ?? (0.739 * Length), 0.62 * Length, 0.80 * Length);
        var lead = DrawnLimits.Held(shape.SecondToeLead ?? -2, -0.08 * Length, 0.08 * Length);
        var slope = DrawnLimits.Held(shape.ToeSlope ?? 16, 0, 0.18 * Length);

        InnerJoint = new(-DrawnLimits.InnerShare * BallBreadth, heelToBall);
        OuterJoint = new((1 - DrawnLimits.InnerShare) * BallBreadth, heelToBall - (0.10 * Length));
        HeelInner = new(-HeelBreadth / 2, 0.145 * Length);
        HeelOuter = new(HeelBreadth / 2, 0.145 * Length);
        InnerWaist = new(-0.80 * Math.Min(HeelBreadth / 2, DrawnLimits.InnerShare * BallBreadth), 0.45 * Length);

        var innerEdge = InnerJoint.Across + (DrawnLimits.InnerTuck * (BallBreadth - ToeBreadth));
        ToeWidths = [.. ToeShares.Select(share => share * ToeBreadth)];
        var lefts = LeftEdges(innerEdge, ToeWidths);
        var tips = TipsForward(lead, slope, heelToBall);
        Tips = [.. tips.Select((forward, toe) => new OutlinePoint(lefts[toe] + (ToeWidths[toe] * TipShares[toe]), forward))];
        Clefts = [.. CleftDepths.Select((depth, toe) => new OutlinePoint(lefts[toe + 1], Math.Min(tips[toe], tips[toe + 1]) - (depth * Length)))];
        InnerToeEdge = new(innerEdge, Math.Max(tips[0] - (0.66 * ToeWidths[0]), heelToBall + (0.04 * Length)));
        OuterToeEdge = new(innerEdge + ToeBreadth, Math.Max(tips[4] - (0.62 * ToeWidths[4]), heelToBall - (0.06 * Length)));
    }

    /// <summary>Length as drawn, mm.</summary>
    public double Length { get; }

    /// <summary>Ball breadth as drawn, mm.</summary>
    public double BallBreadth { get; }

    /// <summary>Toe breadth as drawn, mm.</summary>
    public double ToeBreadth { get; }

    /// <summary>Heel breadth as drawn, mm.</summary>
    public double HeelBreadth { get; }

    /// <summary>The back of the heel, where both axes begin.</summary>
    public OutlinePoint HeelBack { get; }

    /// <summary>The widest part of the heel, big toe's side.</summary>
    public OutlinePoint HeelInner { get; }

    /// <summary>The widest part of the heel, little toe's side.</summary>
    public OutlinePoint HeelOuter { get; }

    /// <summary>The hollow of the arch.</summary>
    public OutlinePoint InnerWaist { get; }

    /// <summary>The joint of the big toe.</summary>
    public OutlinePoint InnerJoint { get; }

    /// <summary>The joint of the little toe.</summary>
    public OutlinePoint OuterJoint { get; }

    /// <summary>The inner edge of the big toe at its nail.</summary>
    public OutlinePoint InnerToeEdge { get; }

    /// <summary>The outer edge of the little toe at its nail.</summary>
    public OutlinePoint OuterToeEdge { get; }

    /// <summary>The breadth of each toe, big toe first, mm.</summary>
    public IReadOnlyList<double> ToeWidths { get; }

    /// <summary>The tips of the five toes, big toe first.</summary>
    public IReadOnlyList<OutlinePoint> Tips { get; }

    /// <summary>The four clefts between the toes, from the big toe outwards.</summary>
    public IReadOnlyList<OutlinePoint> Clefts { get; }

    /// <summary>The tip of the longest toe: where the length is written.</summary>
    public OutlinePoint LongestTip => Tips.MaxBy(tip => tip.Forward);

    /// <summary>The places of a foot.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value of the shape is not finite.</exception>
    public static FootPlaces Of(FootShape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return new(shape);
    }

    private static double[] LeftEdges(double innerEdge, IReadOnlyList<double> widths)
    {
        var lefts = new double[widths.Count];
        lefts[0] = innerEdge;
        for (var toe = 1; toe < lefts.Length; toe++)
        {
            lefts[toe] = lefts[toe - 1] + widths[toe - 1];
        }

        return lefts;
    }

    private double[] TipsForward(double lead, double slope, double heelToBall)
    {
        var first = Length - Math.Max(0, lead);
        var second = Length + Math.Min(0, lead);
        var fourth = Length - slope;
        var third = ((second + fourth) / 2) + (0.012 * (Length - Math.Max(second, fourth)));
        var fifth = Math.Max(fourth - (0.045 * Length) - (0.30 * slope), heelToBall);
        return [first, second, third, fourth, fifth];
    }
}
