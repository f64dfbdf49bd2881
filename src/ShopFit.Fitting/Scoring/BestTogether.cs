namespace ShopFit.Fitting.Scoring;

/// <summary>Chooses pairs that are to be fetched together: so that one of them fits in as many draws as possible.</summary>
/// <remarks>
/// Pairs that fit in the same draws add nothing to each other. Taking again and again the pair that adds most covers at least
/// 1 − 1/e of what the best choice covers (Nemhauser, Wolsey and Fisher 1978); for three of some dozens the best itself is cheap to find.
/// </remarks>
internal static class BestTogether
{
    /// <summary>Up to three places in <paramref name="fits"/>, whose union is as large as that of any other three.</summary>
    /// <param name="fits">For each pair, the draws in which it fits; those that fit most often first.</param>
    /// <param name="wanted">How many, 1 to 3; fewer where there are fewer pairs.</param>
    public static int[] Of(IReadOnlyList<ulong[]> fits, int wanted)
    {
        int[] greedy = Greedily(fits, wanted);
        return greedy.Length < 3 ? greedy : BestThree(fits, greedy);
    }

    /// <summary>The pair that adds most, again and again; of several that add as much, the first.</summary>
    public static int[] Greedily(IReadOnlyList<ulong[]> fits, int wanted)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(wanted, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(wanted, 3);
        var chosen = new List<int>();
        ulong[] covered = new ulong[DrawBits.Words];
        while (chosen.Count < Math.Min(wanted, fits.Count))
        {
            int best = Enumerable.Range(0, fits.Count).Except(chosen).MaxBy(index => DrawBits.CountBeyond(covered, fits[index]));
            chosen.Add(best);
            DrawBits.Add(covered, fits[best]);
        }

        return [.. chosen];
    }

    // Every three that can still beat the best so far. Pairs stand in falling order, so a bound that fails once fails from there on.
    private static int[] BestThree(IReadOnlyList<ulong[]> fits, int[] start)
    {
        int[] best = start;
        int most = DrawBits.Count(DrawBits.Union(start.Select(index => fits[index])));
        int[] counts = [.. fits.Select(bits => DrawBits.Count(bits))];
        ulong[] two = new ulong[DrawBits.Words];
        for (int i = 0; i < fits.Count && 3 * counts[i] > most; i++)
        {
            for (int j = i + 1; j < fits.Count && counts[i] + (2 * counts[j]) > most; j++)
            {
                fits[i].CopyTo(two, 0);
                DrawBits.Add(two, fits[j]);
                int byTwo = DrawBits.Count(two);
                for (int k = j + 1; k < fits.Count && byTwo + counts[k] > most; k++)
                {
                    int byThree = byTwo + DrawBits.CountBeyond(two, fits[k]);
                    if (byThree > most)
                    {
                        (most, best) = (byThree, [i, j, k]);
                    }
                }
            }
        }

        return best;
    }
}
