namespace ShopFit.Fitting.Outlines;

/// <summary>The proportions that foot and shoe share, and the limits within which they can be drawn.</summary>
/// <remarks>
/// Only the drawing is held within these limits, never a reading. What is missing comes from the regressions of
/// surveyed women (ANSUR II, Gordon and others 2014): breadth 40.16 + 0.2134 L, heel breadth 14.53 + 0.2137 L, of
/// which 2.5 mm are left out *(cp)*. The shares were chosen by eye *(cp)*.
/// </remarks>
internal static class DrawnLimits
{
    /// <summary>Share of a breadth at the joints that lies on the big toe's side of the axis.</summary>
    internal const double InnerShare = 0.46;

    /// <summary>Share of (ball breadth − toe breadth) that is taken off on the big toe's side.</summary>
    internal const double InnerTuck = 0.35;

    internal static double Length(double length) => Held(length, 100, 350);

    internal static double BallBreadth(double? breadth, double length) => Held(breadth ?? (40.16 + (0.2134 * length)), 0.26 * length, 0.52 * length);

    internal static double ToeBreadth(double? breadth, double ballBreadth) => Held(breadth ?? (0.86 * ballBreadth), 0.62 * ballBreadth, 1.08 * ballBreadth);

    internal static double HeelBreadth(double? breadth, double length) => Held(breadth ?? (12.03 + (0.2137 * length)), 0.17 * length, 0.40 * length);

    /// <summary>A value held within limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite: nothing can be drawn from it.</exception>
    internal static double Held(double value, double lowest, double highest) =>
        double.IsFinite(value)
            ? Math.Clamp(value, lowest, highest)
            : throw new ArgumentOutOfRangeException(nameof(value), value, "Only finite numbers can be drawn.");
}
