using ShopFit.Fitting.Beliefs;

namespace ShopFit.Seed;

/// <summary>A stream of chance that is known by its name: the same numbers at every run and on every machine.</summary>
/// <remarks>
/// SplitMix64 (Steele, Lea and Flood 2014), begun at the FNV-1a hash of the name. Each dancer, model and list has a stream of
/// its own, so that a change in one place does not invent everybody else anew.
/// </remarks>
internal sealed class DemoRandom
{
    private ulong _state;

    private DemoRandom(ulong state) => _state = state;

    internal static DemoRandom Of(string name)
    {
        var hash = 14695981039346656037UL;
        foreach (var letter in name)
        {
            hash = (hash ^ letter) * 1099511628211UL;
        }

        return new DemoRandom(hash);
    }

    /// <summary>From 0 up to, not including, 1.</summary>
    internal double Next() => (Bits() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A standard normal number.</summary>
    internal double Normal() => StandardNormal.Quantile(((Bits() >> 12) + 0.5) * (1.0 / (1UL << 52)));

    internal bool Chance(double probability) => Next() < probability;

    /// <summary>From 0 up to, not including, <paramref name="count"/>.</summary>
    internal int Below(int count) => (int)(Next() * count);

    /// <summary>A whole number, both ends included.</summary>
    internal int Between(int from, int to) => from + Below(to - from + 1);

    internal T Pick<T>(IReadOnlyList<T> among) => among[Below(among.Count)];

    /// <summary>One of them, each as often as its weight.</summary>
    internal T Pick<T>(IReadOnlyList<(T What, double Weight)> among)
    {
        var target = Next() * among.Sum(one => one.Weight);
        foreach (var (what, weight) in among)
        {
            target -= weight;
            if (target < 0)
            {
                return what;
            }
        }

        return among[^1].What;
    }

    private ulong Bits()
    {
        _state += 0x9E3779B97F4A7C15UL;
        var value = (_state ^ (_state >> 30)) * 0xBF58476D1CE4E5B9UL;
        value = (value ^ (value >> 27)) * 0x94D049BB133111EBUL;
        return value ^ (value >> 31);
    }
}
