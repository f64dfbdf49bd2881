using System.Diagnostics;
using System.Globalization;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Learning;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Benchmarks.TryOns;

/// <summary>How long the next pair takes on one core, with 2,500 sizes on file and five pairs tried.</summary>
internal static class NextPairBenchmark
{
    private const int Sizes = 2_500;
    private const int TriedPairs = 5;
    private const int Rounds = 31;

    public static void Run(TextWriter output)
    {
        var defaults = FitDefaults.Standard;
        var shop = SimulatedShop.Of(1, Sizes, 1_000, defaults);
        var random = new Random(7);
        var dancer = SimulatedDancer.FromPrior(random, defaults);
        var question = new ShortlistQuestion { Feet = dancer.Read(full: false, 0, random), Shoes = shop.Shoes, Kind = "pointe", Defaults = defaults };
        for (int tries = 0; tries <= TriedPairs; tries++)
        {
            double[] times = new double[Rounds];
            for (int round = 0; round < Rounds; round++)
            {
                long start = Stopwatch.GetTimestamp();
                _ = NextPair.Of(question);
                times[round] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            }

            Array.Sort(times);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{tries} tried: median {times[Rounds / 2]:0.0} ms, fastest {times[0]:0.0}, slowest {times[^1]:0.0}"));
            var next = NextPair.Of(question).List.Pairs[0].Shoe;
            var seen = new TryOn(next.Sku, false, dancer.Answer(shop.TrueForm(next), random), []);
            question = question with { TryOns = [.. question.TryOns, seen] };
        }

        var told = new ToldByFitting { Feet = question.Feet, Kind = "pointe", Tried = [.. question.TryOns.Select(tryOn => shop.Shoes.First(shoe => shoe.Sku == tryOn.Sku))], TryOns = question.TryOns, Defaults = defaults };
        var learnt = LearntOffsets.None;
        long began = Stopwatch.GetTimestamp();
        learnt = learnt.After(told);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"learning from a fitting of {question.TryOns.Count}: {Stopwatch.GetElapsedTime(began).TotalMilliseconds:0.0} ms"));
    }
}
