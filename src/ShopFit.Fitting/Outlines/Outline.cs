namespace ShopFit.Fitting.Outlines;

/// <summary>A closed path in mm, drawn by screen and paper alike.</summary>
/// <param name="Curves">Its pieces, each starting where the one before ends.</param>
public sealed record Outline(IReadOnlyList<OutlineCurve> Curves)
{
    /// <summary>The outline as a polygon, so many points a piece; for tests and for whatever needs straight lines.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pointsPerCurve"/> is not positive.</exception>
    public IReadOnlyList<OutlinePoint> Flatten(int pointsPerCurve)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pointsPerCurve);
        return [.. Curves.SelectMany(curve => Enumerable.Range(0, pointsPerCurve).Select(point => curve.At((double)point / pointsPerCurve)))];
    }
}

/// <summary>An open line of a drawing in mm: a cleft between two toes, a nail, the platform.</summary>
/// <param name="Curves">Its pieces, each starting where the one before ends.</param>
public sealed record OpenLine(IReadOnlyList<OutlineCurve> Curves);
