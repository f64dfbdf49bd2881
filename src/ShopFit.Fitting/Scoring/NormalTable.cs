using ShopFit.Fitting.Beliefs;

namespace ShopFit.Fitting.Scoring;

/// <summary>The normal distribution from a table, right to 2e-7: for bounds of many thousand pairs.</summary>
internal static class NormalTable
{
    private const double End = 8;
    private const int PerUnit = 512;

    private static readonly double[] Values =
        [.. Enumerable.Range(0, (int)(2 * End * PerUnit) + 2).Select(i => StandardNormal.Cdf(((double)i / PerUnit) - End))];

    /// <summary>Probability of lying between two limits.</summary>
    public static double Between(double lower, double upper) => Math.Max(0, Below(upper) - Below(lower));

    private static double Below(double x)
    {
        if (x <= -End)
        {
            return 0;
        }

        if (x >= End)
        {
            return 1;
        }

        double place = (x + End) * PerUnit;
        int i = (int)place;
        return Values[i] + ((place - i) * (Values[i + 1] - Values[i]));
    }
}
