using System.Diagnostics;
using System.Globalization;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Benchmarks;

/// <summary>How fast feet are scored against forms, and how long a shortlist takes, on one core.</summary>
internal static class ScoreBenchmark
{
    private const int Sizes = 20_000;
    private const int Runs = 40;

    public static void Run(TextWriter output)
    {
        var defaults = FitDefaults.Standard;
        var shoes = SyntheticCatalogue.Of(Sizes, defaults);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"foot-form scores a second, one core:      {ScoresASecond(shoes, defaults):N0}"));

        Reading[] quick =
        [
            Reading.Of(Side.Left, Trait.Length, 238), Reading.Of(Side.Right, Trait.Length, 236.5),
            Reading.Of(Side.Left, Trait.BallBreadth, 90), Reading.Of(Side.Right, Trait.BallBreadth, 89.5),
        ];
        var feet = FeetBelief.Prior(Sex.Female, 14, defaults).After(quick, defaults).Belief;
        var question = new ShortlistQuestion { Feet = feet, Shoes = shoes, Kind = "pointe", From = ShortlistFrom.Catalogue };
        Report(output, "length and width known, catalogue", question);
        Report(output, "length and width known, shelf", question with { From = ShortlistFrom.Shelf });
        Report(output, "nothing known, catalogue", question with { Feet = FeetBelief.Prior(Sex.Female, 14, defaults) });

        Report(output, "and what is worth one walk, shelf", question with { From = ShortlistFrom.Shelf }, asked => FetchList.Of(asked, _ => ["B3"]));

        var first = Shortlist.Of(question).Pairs[0].Shoe;
        TryOn[] tried = [new(first.Sku, false, [new(Side.Left, "toes-flat", 2), new(Side.Right, "ball-sides", 1)], [])];
        Report(output, "and one pair tried that did not fit", question with { TryOns = tried });
    }

    private static void Report(TextWriter output, string what, ShortlistQuestion question, Func<ShortlistQuestion, object>? ask = null)
    {
        ask ??= asked => Shortlist.Of(asked);
        for (int warm = 0; warm < 10; warm++)
        {
            _ = ask(question);
        }

        // Wall-clock time counts what else the machine does; processor time does not.
        using var process = Process.GetCurrentProcess();
        var processorBefore = process.TotalProcessorTime;
        double[] times = new double[Runs];
        for (int run = 0; run < Runs; run++)
        {
            long started = Stopwatch.GetTimestamp();
            _ = ask(question);
            times[run] = Stopwatch.GetElapsedTime(started).TotalMilliseconds;
        }

        process.Refresh();
        double processor = (process.TotalProcessorTime - processorBefore).TotalMilliseconds / Runs;
        Array.Sort(times);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"shortlist over {question.Shoes.Count:N0} sizes, {what + ":",-38} median {times[Runs / 2]:0.0} ms, p95 {times[Runs * 95 / 100]:0.0} ms, processor {processor:0.0} ms"));
    }

    private static double ScoresASecond(IReadOnlyList<ShoeOnFile> shoes, FitDefaults defaults)
    {
        var criteria = defaults.CriteriaOf("pointe")!;
        double[] needs = [238, 77, 212, 63, 36.5, 16, 64, 5.2, -2];
        double[] eases = new double[criteria.Count];
        double total = 0;
        long scored = 0;
        long started = Stopwatch.GetTimestamp();
        while (Stopwatch.GetElapsedTime(started) < TimeSpan.FromSeconds(2))
        {
            foreach (var shoe in shoes)
            {
                for (int c = 0; c < eases.Length; c++)
                {
                    eases[c] = (c < ShoeForm.Parts ? shoe.Form[(FormPart)c] : 0) - needs[c];
                }

                total += FootScore.Of(criteria, eases);
            }

            scored += shoes.Count;
        }

        return total < 0 ? 0 : scored / Stopwatch.GetElapsedTime(started).TotalSeconds;
    }
}
