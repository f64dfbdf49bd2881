using System.Buffers;
using ShopFit.Fitting.Beliefs;

namespace ShopFit.Fitting.Scoring;

/// <summary>The fixed draws carried into an ease belief: one row for each of its numbers, one column for each draw.</summary>
/// <remarks>The array is borrowed from the pool; dispose to give it back.</remarks>
internal sealed class Draws : IDisposable
{
    /// <summary>Draws behind a chance of somebody who has tried nothing yet.</summary>
    public const int Count = FixedDraws.Count;

    /// <summary>Draws once pairs were tried: each of them brings many numbers, and half the draws still tell a chance to less than 0.01.</summary>
    public const int CountAfterTryOns = Count / 2;

    private const int Block = 256;

    private readonly double[] _values;

    private Draws(double[] values, int length) => (_values, Length) = (values, length);

    /// <summary>How many draws there are: <see cref="Count"/> or fewer, a multiple of <see cref="DrawBits.Word"/>.</summary>
    public int Length { get; }

    /// <summary>The draws of one number.</summary>
    public Span<double> Row(int index) => _values.AsSpan(index * Count, Length);

    public static Draws Of(Gaussian belief, int length = Count)
    {
        int size = belief.Size;
        double[] lower = Vectors.Cholesky(belief.Covariance, size);
        var draws = new Draws(ArrayPool<double>.Shared.Rent(size * Count), length);
        // Block by block, so that the columns of a block stay in the nearest cache while all rows are made of them.
        double[][] columns = [.. Enumerable.Range(0, size).Select(FixedDraws.Column)];
        for (int from = 0; from < length; from += Block)
        {
            for (int row = 0; row < size; row++)
            {
                var values = draws.Row(row).Slice(from, Block);
                values.Fill(belief.Mean[row]);
                Vectors.AddScaled(values, columns, from, lower.AsSpan(row * size, row + 1));
            }
        }

        return draws;
    }

    /// <summary>The draws again, made up of those picked only, each as often as any other, so far as it comes out.</summary>
    public Draws Picked(IReadOnlyList<int> picked, int rows)
    {
        int[] places = new int[Length];
        for (int i = 0; i < places.Length; i++)
        {
            places[i] = picked[i % picked.Count];
        }

        var draws = new Draws(ArrayPool<double>.Shared.Rent(rows * Count), Length);
        for (int row = 0; row < rows; row++)
        {
            var from = Row(row);
            var to = draws.Row(row);
            for (int i = 0; i < places.Length; i++)
            {
                to[i] = from[places[i]];
            }
        }

        return draws;
    }

    public void Dispose() => ArrayPool<double>.Shared.Return(_values);
}
