namespace ShopFit.Fitting.Outlines;

/// <summary>Plain geometry of closed polygons, by definition and without haste.</summary>
internal static class Polygon
{
    /// <summary>Twice the area by the shoelace formula; positive where the path turns from across to forward.</summary>
    internal static double SignedArea(IReadOnlyList<OutlinePoint> polygon)
    {
        var twice = 0.0;
        for (var i = 0; i < polygon.Count; i++)
        {
            var (a, b) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            twice += (a.Across * b.Forward) - (b.Across * a.Forward);
        }

        return twice / 2;
    }

    /// <summary>Whether any two sides that are not neighbours cross.</summary>
    internal static bool CrossesItself(IReadOnlyList<OutlinePoint> polygon)
    {
        var count = polygon.Count;
        for (var i = 0; i < count; i++)
        {
            for (var j = i + 2; j < count; j++)
            {
                if (i == 0 && j == count - 1)
                {
                    continue;
                }

                if (Cross(polygon[i], polygon[i + 1], polygon[j], polygon[(j + 1) % count]))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>How far a point lies outside a polygon; nought where it lies within.</summary>
    internal static double DistanceOutside(OutlinePoint point, IReadOnlyList<OutlinePoint> polygon)
    {
        var inside = false;
        var nearest = double.PositiveInfinity;
        for (var i = 0; i < polygon.Count; i++)
        {
            var (a, b) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            if (a.Forward > point.Forward != b.Forward > point.Forward
                && point.Across < a.Across + ((point.Forward - a.Forward) / (b.Forward - a.Forward) * (b.Across - a.Across)))
            {
                inside = !inside;
            }

            nearest = Math.Min(nearest, DistanceToSide(point, a, b));
        }

        return inside ? 0 : nearest;
    }

    private static double DistanceToSide(OutlinePoint point, OutlinePoint a, OutlinePoint b)
    {
        var (across, forward) = (b.Across - a.Across, b.Forward - a.Forward);
        var length = (across * across) + (forward * forward);
        var share = length == 0 ? 0 : Math.Clamp((((point.Across - a.Across) * across) + ((point.Forward - a.Forward) * forward)) / length, 0, 1);
        return double.Hypot(point.Across - a.Across - (share * across), point.Forward - a.Forward - (share * forward));
    }

    private static bool Cross(OutlinePoint a, OutlinePoint b, OutlinePoint c, OutlinePoint d)
    {
        if (Math.Max(a.Across, b.Across) < Math.Min(c.Across, d.Across) || Math.Max(c.Across, d.Across) < Math.Min(a.Across, b.Across)
            || Math.Max(a.Forward, b.Forward) < Math.Min(c.Forward, d.Forward) || Math.Max(c.Forward, d.Forward) < Math.Min(a.Forward, b.Forward))
        {
            return false;
        }

        return Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;
    }

    private static double Side(OutlinePoint a, OutlinePoint b, OutlinePoint point) =>
        ((b.Across - a.Across) * (point.Forward - a.Forward)) - ((b.Forward - a.Forward) * (point.Across - a.Across));
}
