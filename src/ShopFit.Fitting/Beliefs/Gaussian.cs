namespace ShopFit.Fitting.Beliefs;

/// <summary>A Gaussian over several numbers: a mean and a covariance, row-major.</summary>
/// <remarks>Immutable; an update makes a new one.</remarks>
internal sealed class Gaussian
{
    private readonly double[] _mean;
    private readonly double[] _covariance;

    /// <summary>Takes over both arrays: the caller no longer writes to them.</summary>
    /// <exception cref="ArgumentException">The sizes do not match.</exception>
    public Gaussian(double[] mean, double[] covariance)
    {
        if (covariance.Length != mean.Length * mean.Length)
        {
            throw new ArgumentException("A covariance has a row and a column for each mean.", nameof(covariance));
        }

        _mean = mean;
        _covariance = covariance;
    }

    public int Size => _mean.Length;

    public ReadOnlySpan<double> Mean => _mean;

    public ReadOnlySpan<double> Covariance => _covariance;

    public double Variance(int index) => _covariance[(index * Size) + index];

    /// <summary>Mean and variance of the combination h · x.</summary>
    public (double Mean, double Variance) Along(ReadOnlySpan<double> h)
    {
        double[] gain = new double[Size];
        return (Vectors.Dot(h, _mean), Kernel.Project(_covariance, h, gain));
    }

    /// <summary>The belief after h · x was seen to be <paramref name="value"/>, with an error of that variance.</summary>
    public Gaussian After(ReadOnlySpan<double> h, double value, double errorVariance)
    {
        double[] mean = [.. _mean];
        double[] covariance = [.. _covariance];
        Kernel.Observe(mean, covariance, h, value, errorVariance);
        return new Gaussian(mean, covariance);
    }

    /// <summary>The Gaussian with the mean and covariance of a mixture.</summary>
    public static Gaussian OfMixture(IReadOnlyList<(double Weight, Gaussian Part)> parts)
    {
        if (parts.Count == 1)
        {
            return parts[0].Part;
        }

        int size = parts[0].Part.Size;
        double[] mean = new double[size];
        double[] covariance = new double[size * size];
        foreach (var (weight, part) in parts)
        {
            for (int i = 0; i < size; i++)
            {
                mean[i] += weight * part._mean[i];
            }
        }

        foreach (var (weight, part) in parts)
        {
            for (int i = 0; i < size; i++)
            {
                for (int j = 0; j < size; j++)
                {
                    double between = (part._mean[i] - mean[i]) * (part._mean[j] - mean[j]);
                    covariance[(i * size) + j] += weight * (part._covariance[(i * size) + j] + between);
                }
            }
        }

        return new Gaussian(mean, covariance);
    }
}
