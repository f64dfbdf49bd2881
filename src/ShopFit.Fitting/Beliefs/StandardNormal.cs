namespace ShopFit.Fitting.Beliefs;

/// <summary>The standard normal distribution, exact enough for every use here (about 1e-14).</summary>
internal static class StandardNormal
{
    /// <summary>½ ln 2π.</summary>
    public const double HalfLogTwoPi = 0.91893853320467274178;

    // Beyond this the series for the middle loses digits and the continued fraction for the tail has them all.
    private const double TailFrom = 2.5;

    public static double Density(double x) => Math.Exp((-0.5 * x * x) - HalfLogTwoPi);

    /// <summary>Φ(x) (Abramowitz and Stegun 1964, 26.2.11 in the middle, 26.2.14 in the tails).</summary>
    public static double Cdf(double x)
    {
        if (x < -TailFrom)
        {
            return Density(x) * Mills(-x);
        }

        if (x > TailFrom)
        {
            return 1 - (Density(x) * Mills(x));
        }

        double term = x;
        double sum = x;
        for (int k = 3; Math.Abs(term) > 1e-17; k += 2)
        {
            term *= x * x / k;
            sum += term;
        }

        return 0.5 + (Density(x) * sum);
    }

    /// <summary>The x with Φ(x) = p.</summary>
    /// <remarks>The rational start of Acklam (2003), relative error 1.2e-9, then one step of Halley's method.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="p"/> is not between 0 and 1.</exception>
    public static double Quantile(double p)
    {
        if (!(p > 0 && p < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(p), p, "A share lies between 0 and 1.");
        }

        double x = QuantileStart(p);
        double error = (Cdf(x) - p) / Density(x);
        return x - (error / (1 + (x * error / 2)));
    }

    private static double QuantileStart(double p)
    {
        const double Low = 0.02425;
        if (p < Low)
        {
            return TailStart(Math.Sqrt(-2 * Math.Log(p)));
        }

        if (p > 1 - Low)
        {
            return -TailStart(Math.Sqrt(-2 * Math.Log(1 - p)));
        }

        double q = p - 0.5;
        double r = q * q;
        return ((((((((((-3.969683028665376e+01 * r) + 2.209460984245205e+02) * r) - 2.759285104469687e+02) * r) + 1.383577518672690e+02) * r) - 3.066479806614716e+01) * r) + 2.506628277459239e+00) * q
            / ((((((((((-5.447609879822406e+01 * r) + 1.615858368580409e+02) * r) - 1.556989798598866e+02) * r) + 6.680131188771972e+01) * r) - 1.328068155288572e+01) * r) + 1);
    }

    private static double TailStart(double q) =>
        ((((((((((-7.784894002430293e-03 * q) - 3.223964580411365e-01) * q) - 2.400758277161838e+00) * q) - 2.549732539343734e+00) * q) + 4.374664141464968e+00) * q) + 2.938163982698783e+00)
        / ((((((((7.784695709041462e-03 * q) + 3.224671290700398e-01) * q) + 2.445134137142996e+00) * q) + 3.754408661907416e+00) * q) + 1);

    // (1 − Φ(x)) / φ(x) for x ≥ 2.5, by its continued fraction from the inside out.
    private static double Mills(double x)
    {
        if (double.IsPositiveInfinity(x))
        {
            return 0;
        }

        const int Depth = 120;
        double fraction = x;
        for (int k = Depth; k >= 1; k--)
        {
            fraction = x + (k / fraction);
        }

        return 1 / fraction;
    }
}
