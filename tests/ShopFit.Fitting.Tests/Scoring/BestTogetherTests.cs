using CsCheck;

namespace ShopFit.Fitting.Scoring;

public class BestTogetherTests
{
    // Pairs that fit in a few runs of the draws, as sizes side by side do.
    private static readonly Gen<ulong[]> Fits =
        Gen.Select(Gen.Int[0, Draws.Count - 1], Gen.Int[0, Draws.Count / 4]).Array[1, 4].Select(runs =>
        {
            ulong[] bits = new ulong[DrawBits.Words];
            foreach (var (from, length) in runs)
            {
                for (int draw = from; draw < Math.Min(Draws.Count, from + length); draw++)
                {
                    bits[draw / DrawBits.Word] |= 1UL << (draw % DrawBits.Word);
                }
            }

            return bits;
        });

    private static readonly Gen<ulong[][]> Pairs =
        Fits.Array[0, 12].Select(pairs => pairs.OrderByDescending(bits => DrawBits.Count(bits)).ToArray());

    [Fact]
    public void No_other_three_cover_more() =>
        Pairs.Sample(pairs => Covered(pairs, BestTogether.Of(pairs, 3)) == BestByLookingAtAll(pairs), iter: 100);

    [Fact]
    public void They_never_cover_less_than_the_three_that_fit_most_often() =>
        Pairs.Sample(pairs => Covered(pairs, BestTogether.Of(pairs, 3)) >= Covered(pairs, [.. Enumerable.Range(0, Math.Min(3, pairs.Length))]), iter: 200);

    // Nemhauser, Wolsey and Fisher 1978, Mathematical Programming 14: 265-294: greedily chosen, at least 1 - (1 - 1/k)^k of the best.
    [Fact]
    public void Chosen_greedily_they_cover_what_the_theorem_says() =>
        Pairs.Sample(
            pairs => Covered(pairs, BestTogether.Greedily(pairs, 3)) >= (1 - Math.Pow(2.0 / 3, 3)) * BestByLookingAtAll(pairs),
            iter: 100);

    // The pair that fits most often covers two thirds of each half; greedily taken, it leaves both halves to be filled up.
    [Fact]
    public void Greed_is_led_astray_and_all_threes_are_not()
    {
        ulong[][] pairs = [Run(100, 500), Run(0, 300), Run(300, 600), Run(700, 800)];

        Assert.Equal(600, Covered(pairs, BestTogether.Greedily(pairs, 3)));
        Assert.Equal([1, 2, 3], BestTogether.Of(pairs, 3).Order());
    }

    [Fact]
    public void Three_alike_are_not_taken_where_another_adds_something()
    {
        ulong[][] pairs = [Run(0, 600), Run(0, 600), Run(0, 600), Run(700, 800)];

        Assert.Equal([0, 1, 3], BestTogether.Of(pairs, 3).Order());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Fewer_pairs_are_all_taken(int count) =>
        Assert.Equal(count, BestTogether.Of([.. Enumerable.Range(0, count).Select(_ => Run(0, 10))], 3).Distinct().Count());

    private static int Covered(ulong[][] pairs, int[] chosen) => DrawBits.Count(DrawBits.Union(chosen.Select(index => pairs[index])));

    private static int BestByLookingAtAll(ulong[][] pairs)
    {
        int best = 0;
        for (int i = 0; i < pairs.Length; i++)
        {
            for (int j = i; j < pairs.Length; j++)
            {
                for (int k = j; k < pairs.Length; k++)
                {
                    best = Math.Max(best, Covered(pairs, [i, j, k]));
                }
            }
        }

        return best;
    }

    private static ulong[] Run(int from, int to)
    {
        ulong[] bits = new ulong[DrawBits.Words];
        for (int draw = Math.Max(0, from); draw < to; draw++)
        {
            bits[draw / DrawBits.Word] |= 1UL << (draw % DrawBits.Word);
        }

        return bits;
    }
}
