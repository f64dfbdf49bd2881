using System.Globalization;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Benchmarks;

/// <summary>Whether chances come true: of the pairs that are given a chance, which share really fits?</summary>
/// <remarks>
/// True feet are drawn from what is believed of everybody, true shoes from what is believed of their forms; readings and words carry
/// the errors that the numbers of the shop say. Then the shortlist is asked, and each of its pairs is put on the true feet.
/// </remarks>
internal static class CalibrationBenchmark
{
    private const int Dancers = 600;
    private const int Sizes = 2_000;
    private const int PairsADancer = 20;
    private const int Bins = 10;
    private const string Kind = "pointe";

    private static readonly FitDefaults Defaults = FitDefaults.Standard;

    public static void Run(TextWriter output)
    {
        var random = new Random(20_260_314);
        var shoes = SyntheticCatalogue.Of(Sizes, Defaults);
        var model = EaseModel.Of(Kind, Defaults);
        var sets = PadSets.Of(model, Defaults);
        var (count, said, fitted) = (new int[Bins], new double[Bins], new int[Bins]);
        for (int dancer = 0; dancer < Dancers; dancer++)
        {
            var prior = FeetBelief.Prior(Sex.Female, 12 + (random.NextDouble() * 18), Defaults);
            double[] feet = Draw(prior.Joint, random);
            var belief = prior.After(Readings(feet, prior.Joint, random), Defaults).Belief;
            var question = new ShortlistQuestion { Feet = belief, Shoes = shoes, Kind = Kind, From = ShortlistFrom.Catalogue, Limit = PairsADancer };
            var differences = new Dictionary<(ShoeLevel, string), double[]>();
            foreach (var pair in Shortlist.Of(question).Pairs)
            {
                int bin = Math.Min(Bins - 1, (int)(pair.ChanceOfFit * Bins));
                count[bin]++;
                said[bin] += pair.ChanceOfFit;
                fitted[bin] += Fits(pair.Shoe, feet, model, sets, differences, random) ? 1 : 0;
            }
        }

        output.WriteLine($"{Dancers} dancers by quick readings, {PairsADancer} pairs each of {Sizes} sizes");
        output.WriteLine("chance      pairs   said   came true");
        foreach (int bin in Enumerable.Range(0, Bins).Where(bin => count[bin] > 0))
        {
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{bin / 10.0:0.0} to {(bin + 1) / 10.0:0.0}  {count[bin],6}  {said[bin] / count[bin],5:0.000}  {(double)fitted[bin] / count[bin],5:0.000}"));
        }

        double error = Enumerable.Range(0, Bins).Sum(bin => Math.Abs(said[bin] - fitted[bin])) / count.Sum();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"expected calibration error  {error:0.000}"));
    }

    // A first fitting: length and ball breadth of both feet in numbers, all else in words.
    private static List<Reading> Readings(double[] feet, Gaussian everybody, Random random)
    {
        var readings = new List<Reading>();
        foreach (var foot in Enum.GetValues<Side>())
        {
            foreach (var row in Traits.All)
            {
                int index = (Traits.Count * (int)foot) + (int)row.Trait;
                if (row.Trait is Trait.Length or Trait.BallBreadth)
                {
                    double read = feet[index] + (Defaults.ReadingSd[(int)row.Trait] * Normal(random));
                    readings.Add(Reading.Of(foot, row.Trait, Math.Clamp(Math.Round(2 * read) / 2, row.Lowest, row.Highest)));
                }
                else if (row.TakesWords)
                {
                    double sd = Math.Sqrt(everybody.Variance(index));
                    double seen = ((feet[index] - everybody.Mean[index]) / sd) + (Defaults.Words.NoiseShare * Normal(random));
                    int word = seen < StandardNormal.Quantile(Defaults.Words.LowerPercentile) ? 0 : seen < StandardNormal.Quantile(Defaults.Words.UpperPercentile) ? 1 : 2;
                    readings.Add(Reading.InWords(foot, row.Trait, word));
                }
            }
        }

        return readings;
    }

    private static bool Fits(ShoeOnFile shoe, double[] feet, EaseModel model, PadSets sets, Dictionary<(ShoeLevel, string), double[]> differences, Random random)
    {
        double[] form = [.. Enumerable.Range(0, ShoeForm.Parts).Select(part => shoe.Form[(FormPart)part])];
        foreach (var level in ShoeLevels.All)
        {
            if (!differences.TryGetValue((level, ShoeLevels.KeyOf(shoe, level)), out double[]? standard))
            {
                standard = [.. Enumerable.Range(0, ShoeForm.Parts).Select(_ => Normal(random))];
                differences[(level, ShoeLevels.KeyOf(shoe, level))] = standard;
            }

            for (int part = 0; part < form.Length; part++)
            {
                form[part] += standard[part] * ShoeLevels.SdOf(shoe.Form, (FormPart)part, level, Defaults);
            }
        }

        return Enum.GetValues<Side>().All(foot =>
        {
            ulong works = ulong.MaxValue;
            for (int c = 0; c < model.Count; c++)
            {
                var row = model.Rows[c];
                double need = row.NeedConstant + row.Need.Sum(term => term.Factor * feet[(Traits.Count * (int)foot) + (int)term.Trait]);
                works &= sets.Steps[c].At((row.Part is { } part ? form[(int)part] : 0) - need);
            }

            return works != 0;
        });
    }

    private static double[] Draw(Gaussian belief, Random random)
    {
        double[] lower = Vectors.Cholesky(belief.Covariance, belief.Size);
        double[] standard = [.. Enumerable.Range(0, belief.Size).Select(_ => Normal(random))];
        return [.. Enumerable.Range(0, belief.Size).Select(i => belief.Mean[i] + Vectors.Dot(lower.AsSpan(i * belief.Size, belief.Size), standard))];
    }

    private static double Normal(Random random) => StandardNormal.Quantile(Math.Clamp(random.NextDouble(), 1e-12, 1 - 1e-12));
}
