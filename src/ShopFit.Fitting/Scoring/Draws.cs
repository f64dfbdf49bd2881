using System.Buffers;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using ShopFit.Fitting.Beliefs;

namespace ShopFit.Fitting.Scoring;

/// <summary>The fixed draws carried into an ease belief: one row for each of its numbers, one column for each draw.</summary>
/// <remarks>The array is borrowed from the pool; dispose to give it back.</remarks>
internal sealed class Draws : IDisposable
{
    public const int Count = FixedDraws.Count;

    private readonly double[] _values;

    private Draws(double[] values) => _values = values;

    /// <summary>The draws of one number.</summary>
    public Span<double> Row(int index) => _values.AsSpan(index * Count, Count);

    public static Draws Of(Gaussian belief)
    {
        int size = belief.Size;
        double[] lower = Vectors.Cholesky(belief.Covariance, size);
        var draws = new Draws(ArrayPool<double>.Shared.Rent(size * Count));
        for (int row = 0; row < size; row++)
        {
            var values = draws.Row(row);
            values.Fill(belief.Mean[row]);
            for (int column = 0; column <= row; column++)
            {
                double factor = lower[(row * size) + column];
                if (factor != 0)
                {
                    AddScaled(values, FixedDraws.Column(column), factor);
                }
            }
        }

        return draws;
    }

    /// <summary>The draws again, made up of those picked only, each as often as any other, so far as it comes out.</summary>
    public Draws Picked(IReadOnlyList<int> picked, int rows)
    {
        var draws = new Draws(ArrayPool<double>.Shared.Rent(rows * Count));
        for (int row = 0; row < rows; row++)
        {
            var from = Row(row);
            var to = draws.Row(row);
            for (int i = 0; i < Count; i++)
            {
                to[i] = from[picked[i % picked.Count]];
            }
        }

        return draws;
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
            // Multiplied and added apart: fused, the last bit would depend on the machine.
            var sum = Vector256.LoadUnsafe(ref to, (nuint)i) + (factors * Vector256.LoadUnsafe(ref from, (nuint)i));
            sum.StoreUnsafe(ref to, (nuint)i);
        }

        for (; i < values.Length; i++)
        {
            values[i] += factor * numbers[i];
        }
    }

    public void Dispose() => ArrayPool<double>.Shared.Return(_values);
}
