namespace ShopFit.Fitting.Outlines;

/// <summary>One cubic Bézier piece of an outline.</summary>
/// <param name="From">Where it starts.</param>
/// <param name="FirstHandle">Its first control point.</param>
/// <param name="SecondHandle">Its second control point.</param>
/// <param name="To">Where it ends.</param>
public readonly record struct OutlineCurve(OutlinePoint From, OutlinePoint FirstHandle, OutlinePoint SecondHandle, OutlinePoint To)
{
    /// <summary>The point at a share of the parameter, 0 at the start and 1 at the end.</summary>
    public OutlinePoint At(double share)
    {
        var rest = 1 - share;
        var (a, b, c, d) = (rest * rest * rest, 3 * rest * rest * share, 3 * rest * share * share, share * share * share);
        return new(
            (a * From.Across) + (b * FirstHandle.Across) + (c * SecondHandle.Across) + (d * To.Across),
            (a * From.Forward) + (b * FirstHandle.Forward) + (c * SecondHandle.Forward) + (d * To.Forward));
    }

    /// <summary>A piece that leaves and arrives in given headings, each handle reaching so far along its heading.</summary>
    internal static OutlineCurve Between(OutlinePoint from, Heading leaving, double firstReach, OutlinePoint to, Heading arriving, double secondReach) =>
        new(from, from.Along(leaving, firstReach), to.Along(arriving, -secondReach), to);

    /// <summary>A straight piece.</summary>
    internal static OutlineCurve Straight(OutlinePoint from, OutlinePoint to) =>
        new(from, from.Towards(to, 1.0 / 3), from.Towards(to, 2.0 / 3), to);

    /// <summary>The part between two shares of the parameter, the first below 1.</summary>
    internal OutlineCurve Part(double from, double to) => Split(from).Late.Split((to - from) / (1 - from)).Early;

    /// <summary>The share of the parameter at which a piece that only rises, or only falls, passes a line across.</summary>
    internal double ShareAtForward(double forward)
    {
        var rises = To.Forward >= From.Forward;
        var (low, high) = (0.0, 1.0);

        // 50 halvings: exact to the last bits of a share.
        for (var halving = 0; halving < 50; halving++)
        {
            var middle = (low + high) / 2;
            if (At(middle).Forward < forward == rises)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }

    /// <summary>De Casteljau's subdivision.</summary>
    private (OutlineCurve Early, OutlineCurve Late) Split(double share)
    {
        var (ab, bc, cd) = (From.Towards(FirstHandle, share), FirstHandle.Towards(SecondHandle, share), SecondHandle.Towards(To, share));
        var (abc, bcd) = (ab.Towards(bc, share), bc.Towards(cd, share));
        var middle = abc.Towards(bcd, share);
        return (new(From, ab, abc, middle), new(middle, bcd, cd, To));
    }
}
