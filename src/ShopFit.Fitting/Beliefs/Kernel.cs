namespace ShopFit.Fitting.Beliefs;

/// <summary>The updates of a Gaussian, in place, on spans.</summary>
internal static class Kernel
{
    /// <summary>Writes P·h to <paramref name="gain"/> and answers h · P · h.</summary>
    public static double Project(ReadOnlySpan<double> covariance, ReadOnlySpan<double> h, Span<double> gain)
    {
        int size = h.Length;
        gain.Clear();
        for (int j = 0; j < size; j++)
        {
            if (h[j] == 0)
            {
                continue;
            }

            Vectors.AddScaled(gain, covariance.Slice(j * size, size), h[j]);
        }

        return Vectors.Dot(h, gain);
    }

    /// <summary>
    /// Kalman's update with one number y = h·x + e, in Joseph's form (Bucy and Joseph 1968):
    /// P ← (I − K·h)·P·(I − K·h)ᵀ + K·r·Kᵀ, which stays positive definite whatever the rounding. Answers ln p(y).
    /// </summary>
    public static double Observe(Span<double> mean, Span<double> covariance, ReadOnlySpan<double> h, double value, double errorVariance)
    {
        int size = mean.Length;
        double[] buffer = new double[2 * size];
        var gain = buffer.AsSpan(0, size);
        var left = buffer.AsSpan(size, size);
        double variance = Project(covariance, h, gain) + errorVariance;
        double surprise = value - Vectors.Dot(h, mean);

        // A = (I − K·h)·P = P − K·(P·h)ᵀ, with K = P·h / variance.
        for (int i = 0; i < size; i++)
        {
            double k = gain[i] / variance;
            mean[i] += k * surprise;
            for (int j = 0; j < size; j++)
            {
                covariance[(i * size) + j] -= k * gain[j];
            }
        }

        // A·(I − K·h)ᵀ + K·r·Kᵀ = A − (A·h)·Kᵀ + K·r·Kᵀ.
        for (int i = 0; i < size; i++)
        {
            left[i] = Vectors.Dot(covariance.Slice(i * size, size), h) - (errorVariance * gain[i] / variance);
        }

        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j < size; j++)
            {
                covariance[(i * size) + j] -= left[i] * gain[j] / variance;
            }
        }

        Symmetrise(covariance, size);
        return (-0.5 * ((surprise * surprise / variance) + Math.Log(variance))) - StandardNormal.HalfLogTwoPi;
    }

    /// <summary>
    /// Multiplies the Gaussian by exp(shift·z − precision·z²/2) with z = h·x: a site of expectation propagation.
    /// Answers ln of the mass that is left.
    /// </summary>
    public static double AddSite(Span<double> mean, Span<double> covariance, ReadOnlySpan<double> h, double precision, double shift)
    {
        double[] gain = new double[mean.Length];
        double variance = Project(covariance, h, gain);
        return AddSite(mean, covariance, gain, variance, Vectors.Dot(h, mean), precision, shift);
    }

    /// <summary>The same, where P·h, the variance and the mean of z are known already.</summary>
    public static double AddSite(
        Span<double> mean, Span<double> covariance, ReadOnlySpan<double> gain, double variance, double centre, double precision, double shift)
    {
        int size = mean.Length;
        double growth = 1 + (precision * variance);
        double step = (shift - (precision * centre)) / growth;
        double shrink = precision / growth;
        for (int i = 0; i < size; i++)
        {
            mean[i] += gain[i] * step;
            if (gain[i] != 0)
            {
                Vectors.AddScaled(covariance.Slice(i * size, size), gain, -shrink * gain[i]);
            }
        }

        double exponent = ((2 * shift * centre) + (shift * shift * variance) - (precision * centre * centre)) / (2 * growth);
        return exponent - (0.5 * Math.Log(growth));
    }

    private static void Symmetrise(Span<double> covariance, int size)
    {
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j < i; j++)
            {
                double middle = 0.5 * (covariance[(i * size) + j] + covariance[(j * size) + i]);
                covariance[(i * size) + j] = middle;
                covariance[(j * size) + i] = middle;
            }
        }
    }
}
