using System.Numerics;

namespace ShopFit.Fitting.Scoring;

/// <summary>A bit for each of the fixed draws: in which of them something fits.</summary>
internal static class DrawBits
{
    /// <summary>Bits of a word.</summary>
    public const int Word = 64;

    /// <summary>Words for all draws.</summary>
    public const int Words = Draws.Count / Word;

    public static bool Has(ReadOnlySpan<ulong> bits, int draw) => (bits[draw / Word] >> (draw % Word) & 1) != 0;

    public static int Count(ReadOnlySpan<ulong> bits)
    {
        int count = 0;
        foreach (ulong word in bits)
        {
            count += BitOperations.PopCount(word);
        }

        return count;
    }

    /// <summary>How many bits are set in <paramref name="more"/> and not in <paramref name="bits"/>.</summary>
    public static int CountBeyond(ReadOnlySpan<ulong> bits, ReadOnlySpan<ulong> more)
    {
        int count = 0;
        for (int i = 0; i < bits.Length; i++)
        {
            count += BitOperations.PopCount(more[i] & ~bits[i]);
        }

        return count;
    }

    /// <summary>bits = bits or more.</summary>
    public static void Add(Span<ulong> bits, ReadOnlySpan<ulong> more)
    {
        for (int i = 0; i < bits.Length; i++)
        {
            bits[i] |= more[i];
        }
    }

    /// <summary>The draws in which any of these fits.</summary>
    public static ulong[] Union(IEnumerable<ulong[]> all)
    {
        ulong[] union = new ulong[Words];
        foreach (ulong[] bits in all)
        {
            Add(union, bits);
        }

        return union;
    }
}
