using ShopFit.Fitting.Beliefs;

namespace ShopFit.Benchmarks.TryOns;

/// <summary>Numbers drawn by a seeded source.</summary>
internal static class Chance
{
    public static double Normal(Random random) => StandardNormal.Quantile(Math.Clamp(random.NextDouble(), 1e-12, 1 - 1e-12));

    public static double[] Draw(Gaussian belief, Random random)
    {
        double[] lower = Vectors.Cholesky(belief.Covariance, belief.Size);
        double[] standard = [.. Enumerable.Range(0, belief.Size).Select(_ => Normal(random))];
        return [.. Enumerable.Range(0, belief.Size).Select(i => belief.Mean[i] + Vectors.Dot(lower.AsSpan(i * belief.Size, belief.Size), standard))];
    }

    public static T[] Shuffled<T>(IEnumerable<T> items, Random random)
    {
        T[] shuffled = [.. items];
        random.Shuffle(shuffled);
        return shuffled;
    }
}
