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

    /// <summary>The inverse of a covariance (row-major), by its Cholesky factor.</summary>
    public static double[] Inverse(ReadOnlySpan<double> covariance, int size)
    {
        double[] lower = Cholesky(covariance, size);
        double[] root = new double[size * size];
        for (int column = 0; column < size; column++)
        {
            root[(column * size) + column] = 1 / lower[(column * size) + column];
            for (int i = column + 1; i < size; i++)
            {
                double sum = 0;
                for (int k = column; k < i; k++)
                {
                    sum -= lower[(i * size) + k] * root[(k * size) + column];
                }

                root[(i * size) + column] = sum / lower[(i * size) + i];
            }
        }

        double[] inverse = new double[size * size];
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = 0;
                for (int k = i; k < size; k++)
                {
                    sum += root[(k * size) + i] * root[(k * size) + j];
                }

                inverse[(i * size) + j] = sum;
                inverse[(j * size) + i] = sum;
            }
        }

        return inverse;
    }
}
