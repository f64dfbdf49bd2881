namespace ShopFit.Fitting.Outlines;

/// <summary>Where in a shoe each pad goes, as closed shapes to be filled: the same on screen and paper.</summary>
/// <remarks>They show the place, not the size in the bag; a side pad is drawn broader than it is thick, so that it is seen. All by eye *(cp)*.</remarks>
public static class PadPlaces
{
    /// <summary>How broad a side pad is drawn, as a share of the breadth at the joints.</summary>
    private const double SidePadShare = 0.10;

    /// <summary>How far forward a heel cushion reaches at the sides, as a share of the length.</summary>
    private const double HeelCushionEnds = 0.12;

    /// <summary>Handle of a quarter of an ellipse drawn as one cubic: 4/3 (√2 − 1).</summary>
    private const double QuarterHandle = 0.5522847498307936;

    /// <summary>The shapes of a pad in a shoe; empty where the place of that pad is not known, as of one that the shop added.</summary>
    /// <param name="padId">Id of the pad, such as <c>heel-cushion</c>.</param>
    /// <param name="shape">The shoe.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value of the shape is not finite.</exception>
    public static IReadOnlyList<Outline> Of(string padId, ShoeShape shape)
    {
        var at = ShoePlaces.Of(shape);
        var length = at.Length;
        return padId switch
        {
            "second-toe-hollow" => [UnderTips(at, front: 0.035, ends: 0.09, back: 0.14, hollow: 0.055)],
            "loose-wool" => [UnderTips(at, front: 0.015, ends: 0.05, back: 0.085, hollow: 0)],
            "first-toe-lift" => [Ellipse(new(at.AcrossBox(0.17), 0.925 * length), 0.13 * at.BoxBreadth, 0.045 * length)],
            "toe-spacer" => [Ellipse(new(at.AcrossBox(0.335), 0.885 * length), 0.035 * at.BoxBreadth, 0.05 * length)],
            "toe-cap" => [ToeCap(at)],
            "heel-cushion" => [HeelCushion(at)],
            "joint-cushion" => [AtOuterSide(at, at.OuterJoint.Forward, 0.085 * length), AtInnerSide(at, at.InnerJoint.Forward, 0.085 * length)],
            "toe-cushion" => [AtOuterSide(at, at.BoxOuter.Forward - (0.035 * length), 0.065 * length), AtInnerSide(at, 0.855 * length, 0.065 * length)],
            _ => [],
        };
    }

    private static Outline AtOuterSide(ShoePlaces at, double middle, double half) =>
        SidePad([.. Clip(ShoeOutline.OuterSide(at), middle - half, middle + half)], Heading.Inward, SidePadShare * at.BallBreadth);

    private static Outline AtInnerSide(ShoePlaces at, double middle, double half) =>
        SidePad([.. Clip(ShoeOutline.InnerSide(at), middle - half, middle + half)], Heading.Outward, SidePadShare * at.BallBreadth);

    /// <summary>A stretch of the side, closed by a bow into the shoe.</summary>
    private static Outline SidePad(IReadOnlyList<OutlineCurve> side, Heading intoShoe, double breadth)
    {
        // A cubic whose two handles stand off by four thirds stands off by one in its middle.
        var (end, start) = (side[^1].To, side[0].From);
        var reach = breadth * 4 / 3;
        return new([.. side, new(end, end.Towards(start, 0.25).Along(intoShoe, reach), start.Towards(end, 0.25).Along(intoShoe, reach), start)]);
    }

    private static Outline HeelCushion(ShoePlaces at)
    {
        OutlineCurve[] round =
        [
            .. Clip(ShoeOutline.InnerSide(at), 0, HeelCushionEnds * at.Length),
            .. Clip(ShoeOutline.OuterSide(at), 0, HeelCushionEnds * at.Length),
        ];

        // With both handles as far back as the heel the bow stands off by a quarter of the height of its ends, and leaning
        // in it stays within a narrow heel.
        var (outer, inner) = (round[^1].To, round[0].From);
        return new([.. round, new(outer, new(0.6 * outer.Across, 0), new(0.6 * inner.Across, 0), inner)]);
    }

    private static Outline ToeCap(ShoePlaces at)
    {
        var edge = Math.Min(0.77 * at.Length, at.BoxOuter.Forward - (0.02 * at.Length));
        OutlineCurve[] round =
        [
            .. Clip(ShoeOutline.OuterSide(at), edge, at.Length),
            OutlineCurve.Straight(at.PlatformOuter, at.PlatformInner),
            .. Clip(ShoeOutline.InnerSide(at), edge, at.Length),
        ];
        return new([.. round, OutlineCurve.Straight(round[^1].To, round[0].From)]);
    }

    /// <summary>A cushion across the tips from the big toe to the fourth; front, ends and back in shares of the length behind the box.</summary>
    private static Outline UnderTips(ShoePlaces at, double front, double ends, double back, double hollow)
    {
        OutlinePoint Behind(double acrossShare, double share, double slopeShare) =>
            new(at.AcrossBox(acrossShare), at.Length - (share * at.Length) - (slopeShare * at.ToeSlope));

        var innerEnd = Behind(0.08, ends, 0);
        var bigToe = Behind(0.29, front, 0);
        var secondToe = Behind(0.4275, front + hollow, 0.1);
        var thirdToe = Behind(0.565, front, 0.45);
        var outerEnd = Behind(0.74, ends, 0.9);
        var middle = Behind(0.43, back, 0.35);
        var backEdge = middle with { Forward = Math.Min(middle.Forward, outerEnd.Forward - (0.02 * at.Length)) };
        OutlineCurve[] overSecondToe = hollow > 0
            ? [Turn(thirdToe, Heading.Inward, secondToe, Heading.Inward), Turn(secondToe, Heading.Inward, bigToe, Heading.Inward)]
            : [Turn(thirdToe, Heading.Inward, bigToe, Heading.Inward)];
        return new(
        [
            Turn(backEdge, Heading.Outward, outerEnd, Heading.Toeward),
            Turn(outerEnd, Heading.Toeward, thirdToe, Heading.Inward),
            .. overSecondToe,
            Turn(bigToe, Heading.Inward, innerEnd, Heading.Heelward),
            Turn(innerEnd, Heading.Heelward, backEdge, Heading.Outward),
        ]);
    }

    /// <summary>A piece whose handles each go half of the way in their own heading.</summary>
    private static OutlineCurve Turn(OutlinePoint from, Heading leaving, OutlinePoint to, Heading arriving)
    {
        double Half(Heading heading) => 0.5 * (heading.Across == 0 ? Math.Abs(to.Forward - from.Forward) : Math.Abs(to.Across - from.Across));
        return OutlineCurve.Between(from, leaving, Half(leaving), to, arriving, Half(arriving));
    }

    private static Outline Ellipse(OutlinePoint centre, double across, double forward)
    {
        var right = centre with { Across = centre.Across + across };
        var top = centre with { Forward = centre.Forward + forward };
        var left = centre with { Across = centre.Across - across };
        var bottom = centre with { Forward = centre.Forward - forward };
        var (h, v) = (QuarterHandle * across, QuarterHandle * forward);
        return new(
        [
            OutlineCurve.Between(right, Heading.Toeward, v, top, Heading.Inward, h),
            OutlineCurve.Between(top, Heading.Inward, h, left, Heading.Heelward, v),
            OutlineCurve.Between(left, Heading.Heelward, v, bottom, Heading.Outward, h),
            OutlineCurve.Between(bottom, Heading.Outward, h, right, Heading.Toeward, v),
        ]);
    }

    /// <summary>The part of a side between two lines across; each piece of a side only rises or only falls.</summary>
    private static IEnumerable<OutlineCurve> Clip(IEnumerable<OutlineCurve> side, double from, double to)
    {
        foreach (var curve in side)
        {
            var (low, high) = (Math.Min(curve.From.Forward, curve.To.Forward), Math.Max(curve.From.Forward, curve.To.Forward));
            if (high <= from || low >= to)
            {
                continue;
            }

            if (low >= from && high <= to)
            {
                yield return curve;
                continue;
            }

            var atFrom = curve.ShareAtForward(Math.Max(low, from));
            var atTo = curve.ShareAtForward(Math.Min(high, to));
            yield return curve.Part(Math.Min(atFrom, atTo), Math.Max(atFrom, atTo));
        }
    }
}
