namespace ShopFit.Fitting.Beliefs;

/// <summary>Plain arithmetic on spans.</summary>
internal static class Vectors
{
    /// <summary>Σ aᵢbᵢ.</summary>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    /// <summary>
    /// The lower triangle C with C·Cᵀ = <paramref name="covariance"/> (row-major). A direction without any spread gets a zero column.
    /// </summary>
    /// <exception cref="ArgumentException">The matrix is no covariance: a variance came out negative.</exception>
    public static double[] Cholesky(ReadOnlySpan<double> covariance, int size)
    {
        double[] lower = new double[size * size];
        for (int j = 0; j < size; j++)
        {
            double variance = covariance[(j * size) + j];
            double left = variance;
            for (int k = 0; k < j; k++)
            {
                left -= lower[(j * size) + k] * lower[(j * size) + k];
            }

            // Rounding may leave a little on either side of nothing.
            double rounding = 1e-10 * Math.Max(variance, 1e-12);
            if (left < -rounding)
            {
                throw new ArgumentException("These numbers are no covariance: a combination of them would vary less than not at all.", nameof(covariance));
            }

            if (left <= rounding)
            {
                continue;
            }

            double pivot = Math.Sqrt(left);
            lower[(j * size) + j] = pivot;
            for (int i = j + 1; i < size; i++)
            {
                double sum = covariance[(i * size) + j];
                for (int k = 0; k < j; k++)
                {
                    sum -= lower[(i * size) + k] * lower[(j * size) + k];
                }

                lower[(i * size) + j] = sum / pivot;
            }
        }

        return lower;
    }
}
