using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ShopFit.Fitting.Beliefs;

/// <summary>Plain arithmetic on spans.</summary>
internal static class Vectors
{
    /// <summary>Σ aᵢbᵢ.</summary>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        ref double left = ref MemoryMarshal.GetReference(a);
        ref double right = ref MemoryMarshal.GetReference(b);
        var sums = Vector256<double>.Zero;
        int i = 0;
        for (; i <= a.Length - Vector256<double>.Count; i += Vector256<double>.Count)
        {
            // Multiplied and added apart: fused, the last bit would depend on the machine.
            sums += Vector256.LoadUnsafe(ref left, (nuint)i) * Vector256.LoadUnsafe(ref right, (nuint)i);
        }

        double sum = Vector256.Sum(sums);
        for (; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    /// <summary>values += factor · numbers.</summary>
    public static void AddScaled(Span<double> values, ReadOnlySpan<double> numbers, double factor)
    {
        ref double to = ref MemoryMarshal.GetReference(values);
        ref double from = ref MemoryMarshal.GetReference(numbers);
        var factors = Vector256.Create(factor);
        int i = 0;
        for (; i <= values.Length - Vector256<double>.Count; i += Vector256<double>.Count)
        {
            var sum = Vector256.LoadUnsafe(ref to, (nuint)i) + (factors * Vector256.LoadUnsafe(ref from, (nuint)i));
            sum.StoreUnsafe(ref to, (nuint)i);
        }

        for (; i < values.Length; i++)
        {
            values[i] += factor * numbers[i];
        }
    }

    /// <summary>values += Σ factor · column, each column from <paramref name="start"/> on.</summary>
    /// <remarks>Four columns at a time: the values are fetched and put back a quarter as often, and added in the same order.</remarks>
    public static void AddScaled(Span<double> values, double[][] columns, int start, ReadOnlySpan<double> factors)
    {
        int column = 0;
        for (; column <= factors.Length - 4; column += 4)
        {
            ref double to = ref MemoryMarshal.GetReference(values);
            ref double first = ref columns[column][start];
            ref double second = ref columns[column + 1][start];
            ref double third = ref columns[column + 2][start];
            ref double fourth = ref columns[column + 3][start];
            var (a, b) = (Vector256.Create(factors[column]), Vector256.Create(factors[column + 1]));
            var (c, d) = (Vector256.Create(factors[column + 2]), Vector256.Create(factors[column + 3]));
            int i = 0;
            for (; i <= values.Length - Vector256<double>.Count; i += Vector256<double>.Count)
            {
                var sum = Vector256.LoadUnsafe(ref to, (nuint)i) + (a * Vector256.LoadUnsafe(ref first, (nuint)i));
                sum += b * Vector256.LoadUnsafe(ref second, (nuint)i);
                sum += c * Vector256.LoadUnsafe(ref third, (nuint)i);
                sum += d * Vector256.LoadUnsafe(ref fourth, (nuint)i);
                sum.StoreUnsafe(ref to, (nuint)i);
            }

            for (; i < values.Length; i++)
            {
                values[i] += (factors[column] * columns[column][start + i]) + (factors[column + 1] * columns[column + 1][start + i])
                    + (factors[column + 2] * columns[column + 2][start + i]) + (factors[column + 3] * columns[column + 3][start + i]);
            }
        }

        for (; column < factors.Length; column++)
        {
            AddScaled(values, columns[column].AsSpan(start, values.Length), factors[column]);
        }
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
