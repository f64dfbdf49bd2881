namespace ShopFit.Fitting.Beliefs;

/// <summary>A standard normal number known to lie between two limits: how likely that was, its mean and its variance.</summary>
/// <remarks>
/// Where a limit cuts through the bulk, the closed formulas hold. In the tails and for narrow intervals they
/// subtract nearly equal numbers, so there the moments are integrated (Gauss and Legendre, relative to the end nearest
/// to zero), which loses nothing however far out the interval lies.
/// </remarks>
/// <param name="LogProbability">ln P(lower ≤ x ≤ upper).</param>
/// <param name="Mean">Mean within the limits.</param>
/// <param name="Variance">Variance within the limits.</param>
internal readonly record struct TruncatedNormal(double LogProbability, double Mean, double Variance)
{
    private const int Points = 64;

    // Wider than this an interval that holds zero holds all but 1e-4 of the mass on one side at least, and nothing cancels.
    private const double Narrow = 8;

    // A density that has fallen by e⁻⁴⁵ adds nothing to fifteen digits.
    private const double Negligible = 45;

    private static readonly (double Node, double Weight)[] Rule = GaussLegendre();

    /// <summary>The number between <paramref name="lower"/> and <paramref name="upper"/>; either may be infinite.</summary>
    /// <exception cref="ArgumentException">The interval is empty.</exception>
    public static TruncatedNormal Between(double lower, double upper)
    {
        if (!(lower < upper))
        {
            throw new ArgumentException($"Nothing lies between {lower} and {upper}.", nameof(upper));
        }

        if (lower + upper < 0)
        {
            var mirrored = Between(-upper, -lower);
            return mirrored with { Mean = -mirrored.Mean };
        }

        // From here on the end nearest to zero, if any, is the lower one.
        bool inTail = lower > 1;
        if (!inTail && !(upper - lower <= Narrow))
        {
            double densityLow = double.IsInfinity(lower) ? 0 : StandardNormal.Density(lower);
            double densityHigh = double.IsInfinity(upper) ? 0 : StandardNormal.Density(upper);
            double probability = StandardNormal.Cdf(upper) - StandardNormal.Cdf(lower);
            double mean = (densityLow - densityHigh) / probability;
            double pull = ((double.IsInfinity(lower) ? 0 : lower * densityLow) - (double.IsInfinity(upper) ? 0 : upper * densityHigh)) / probability;
            return new(Math.Log(probability), mean, 1 + pull - (mean * mean));
        }

        double start = lower;
        double width = upper - lower;
        if (inTail)
        {
            // Solves a·t + t²/2 = 45 for the t at which the density has become negligible.
            double reach = (2 * Negligible) / (lower + Math.Sqrt((lower * lower) + (2 * Negligible)));
            width = Math.Min(width, reach);
        }

        double peak = Math.Max(start, 0);
        double mass = 0;
        double first = 0;
        foreach (var (node, weight) in Rule)
        {
            double t = width * node;
            double x = start + t;
            double density = weight * Math.Exp(-0.5 * (x - peak) * (x + peak));
            mass += density;
            first += density * t;
        }

        double centre = first / mass;
        double second = 0;
        foreach (var (node, weight) in Rule)
        {
            double t = width * node;
            double x = start + t;
            second += weight * Math.Exp(-0.5 * (x - peak) * (x + peak)) * (t - centre) * (t - centre);
        }

        double log = Math.Log(mass * width) - (0.5 * peak * peak) - StandardNormal.HalfLogTwoPi;
        return new(log, start + centre, second / mass);
    }

    // Nodes and weights on 0 to 1, by Newton's method on the Legendre polynomial.
    private static (double Node, double Weight)[] GaussLegendre()
    {
        var rule = new (double, double)[Points];
        for (int i = 0; i < Points; i++)
        {
            double x = Math.Cos(Math.PI * (i + 0.75) / (Points + 0.5));
            double slope = 0;
            for (int step = 0; step < 20; step++)
            {
                double previous = 1;
                double current = x;
                for (int k = 2; k <= Points; k++)
                {
                    (previous, current) = (current, ((((2 * k) - 1) * x * current) - ((k - 1) * previous)) / k);
                }

                slope = Points * ((x * current) - previous) / ((x * x) - 1);
                x -= current / slope;
            }

            rule[i] = ((1 - x) / 2, 1 / ((1 - (x * x)) * slope * slope));
        }

        return rule;
    }
}
