using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Scoring;

/// <summary>The same standard normal numbers for every question, so that equal questions get equal answers.</summary>
/// <remarks>
/// Each column holds the quantiles of equal shares of the normal distribution in a fixed shuffled order (Latin hypercube
/// sampling, McKay, Beckman and Conover 1979): every column alone is as even as can be. Shuffled by SplitMix64 (Steele, Lea and Flood 2014).
/// </remarks>
internal static class FixedDraws
{
    /// <summary>Draws behind a chance that is shown.</summary>
    public const int Count = 32_768;

    /// <summary>Numbers in a pool: a run of <see cref="Count"/> may start anywhere in its first half.</summary>
    public const int PoolLength = 2 * Count;

    private static readonly Lock Gate = new();
    private static readonly List<double[]> Columns = [];
    private static readonly Lazy<double[]> Quantiles = new(() => EqualShares(Count));
    private static readonly Lazy<double[][]> Pools = new(() =>
    {
        double[] quantiles = EqualShares(PoolLength);
        return [.. Enumerable.Range(0, Levels * ShoeForm.Parts).Select(i => Shuffled(quantiles, ~(ulong)i))];
    });

    private const int Levels = 3;

    /// <summary>A column for one unknown of the joint belief.</summary>
    public static double[] Column(int index)
    {
        lock (Gate)
        {
            while (Columns.Count <= index)
            {
                Columns.Add(Shuffled(Quantiles.Value, (ulong)Columns.Count));
            }

            return Columns[index];
        }
    }

    /// <summary>The pool for a part of the shoe at a level: 0 the maker's, 1 the model's, 2 the pair's own.</summary>
    public static double[] Pool(int level, int part) => Pools.Value[(level * ShoeForm.Parts) + part];

    /// <summary>Where the run of a maker, a model or a pair starts in its pool: by its key alone, so that no other shoe on file changes it.</summary>
    public static int StartOf(string key)
    {
        // FNV-1a, then mixed, because keys that differ in the last letter only must not lie side by side.
        ulong hash = 14695981039346656037;
        foreach (char letter in key)
        {
            hash = (hash ^ letter) * 1099511628211;
        }

        return (int)(Mixed(hash) % Count);
    }

    private static double[] Shuffled(double[] quantiles, ulong seed)
    {
        double[] values = [.. quantiles];
        ulong state = Mixed(seed + 0x5D1CE);
        for (int i = values.Length - 1; i > 0; i--)
        {
            state += 0x9E3779B97F4A7C15;
            int j = (int)(Mixed(state) % (ulong)(i + 1));
            (values[i], values[j]) = (values[j], values[i]);
        }

        return values;
    }

    // The middles of so many equal shares of the normal distribution, ascending.
    private static double[] EqualShares(int count)
    {
        double[] values = new double[count];
        for (int i = 0; i < count / 2; i++)
        {
            values[i] = StandardNormal.Quantile((i + 0.5) / count);
            values[count - 1 - i] = -values[i];
        }

        return values;
    }

    private static ulong Mixed(ulong value)
    {
        value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9;
        value = (value ^ (value >> 27)) * 0x94D049BB133111EB;
        return value ^ (value >> 31);
    }
}
