using System.Globalization;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Benchmarks.TryOns;

/// <summary>A dancer with true feet, read with the usual errors, who says and shows at a try-on what her feet feel.</summary>
internal sealed class SimulatedDancer
{
    // A misreading is so many times further off than usual: a length by a centimetre or so (common practice, no source).
    private const double MisreadFactor = 8;

    private readonly double[] _feet;
    private readonly FitDefaults _defaults;

    private SimulatedDancer(double[] feet, FitDefaults defaults) => (_feet, _defaults) = (feet, defaults);

    /// <summary>What anybody would be believed to have: the prior of an adult.</summary>
    public static FeetBelief Everybody(FitDefaults defaults) => FeetBelief.Prior(Sex.Female, null, defaults);

    /// <summary>A dancer whose feet are drawn from the prior.</summary>
    public static SimulatedDancer FromPrior(Random random, FitDefaults defaults) =>
        new(Chance.Draw(Everybody(defaults).Joint, random), defaults);

    /// <summary>A dancer one of whose feet was surveyed; what was not surveyed of it, and the other foot, are drawn given what was.</summary>
    public static SimulatedDancer FromSurvey(IReadOnlyDictionary<Trait, double> surveyed, Random random, FitDefaults defaults)
    {
        var belief = Everybody(defaults).Joint;
        foreach (var (trait, value) in surveyed.OrderBy(entry => entry.Key))
        {
            double[] direction = new double[belief.Size];
            direction[(int)trait] = 1;
            belief = belief.After(direction, value, 1e-6);
        }

        return new(Chance.Draw(belief, random), defaults);
    }

    /// <summary>Real feet of a surveyed population: one row each.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<Trait, double>> Survey(string path)
    {
        string[] lines = File.ReadAllLines(path);
        string[] columns = lines[0].Split(',');
        (string Column, Trait Trait)[] known =
        [
            ("footlength", Trait.Length), ("balloffootlength", Trait.HeelToBall), ("footbreadthhorizontal", Trait.BallBreadth),
            ("balloffootcircumference", Trait.BallGirth), ("heelbreadth", Trait.HeelBreadth),
        ];
        return [.. lines.Skip(1).Where(line => line.Length > 0).Select(line =>
        {
            string[] cells = line.Split(',');
            return known.ToDictionary(entry => entry.Trait, entry => double.Parse(cells[Array.IndexOf(columns, entry.Column)], CultureInfo.InvariantCulture));
        })];
    }

    /// <summary>The truth of a trait, in its unit.</summary>
    public double True(Side foot, Trait trait) => _feet[(Traits.Count * (int)foot) + (int)trait];

    /// <summary>What is believed once she was read. What is doubted is read once more, as the screen asks for.</summary>
    /// <param name="full">Whether every trait is measured; otherwise length and ball breadth are, and all else is taken in words.</param>
    /// <param name="misread">Share of the numbers that are misread.</param>
    /// <param name="random">Where errors come from.</param>
    public FeetBelief Read(bool full, double misread, Random random)
    {
        var readings = Readings(full, misread, random);
        var prior = Everybody(_defaults);
        var read = prior.After(readings, _defaults);
        foreach (var doubt in read.Doubts)
        {
            var doubtful = readings[doubt.Index];
            readings.Add(InNumbers(doubtful.Foot, Traits.Of(doubtful.Trait), misread, random));
        }

        return read.Doubts.Count == 0 ? read.Belief : prior.After(readings, _defaults).Belief;
    }

    private List<Reading> Readings(bool full, double misread, Random random)
    {
        var everybody = Everybody(_defaults).Joint;
        var readings = new List<Reading>();
        foreach (var foot in Enum.GetValues<Side>())
        {
            foreach (var row in Traits.All)
            {
                int index = (Traits.Count * (int)foot) + (int)row.Trait;
                bool inWords = row.Trait is Trait.PointRange or Trait.Strength || (!full && row.TakesWords);
                if (inWords)
                {
                    double sd = Math.Sqrt(everybody.Variance(index));
                    double seen = ((_feet[index] - everybody.Mean[index]) / sd) + (_defaults.Words.NoiseShare * Chance.Normal(random));
                    int word = seen < StandardNormal.Quantile(_defaults.Words.LowerPercentile) ? 0 : seen < StandardNormal.Quantile(_defaults.Words.UpperPercentile) ? 1 : 2;
                    readings.Add(Reading.InWords(foot, row.Trait, word));
                }
                else if (full || row.Trait is Trait.Length or Trait.BallBreadth)
                {
                    readings.Add(InNumbers(foot, row, misread, random));
                }
            }
        }

        return readings;
    }

    private Reading InNumbers(Side foot, TraitRow row, double misread, Random random)
    {
        double sd = _defaults.ReadingSd[(int)row.Trait] * (random.NextDouble() < misread ? MisreadFactor : 1);
        double read = Math.Round(2 * (True(foot, row.Trait) + (sd * Chance.Normal(random)))) / 2;
        return Reading.Of(foot, row.Trait, Math.Clamp(read, row.Lowest, row.Highest));
    }

    /// <summary>All traits without any error.</summary>
    public IReadOnlyList<Reading> ReadExactly() =>
    [
        .. Enum.GetValues<Side>().SelectMany(foot => Traits.All.Select(row =>
            Reading.Of(foot, row.Trait, Math.Clamp(True(foot, row.Trait), row.Lowest, row.Highest)))),
    ];

    /// <summary>The true ease of a criterion, no pads counted.</summary>
    public double Ease(double[] trueForm, Side foot, EaseRow row) =>
        (row.Part is { } part ? trueForm[(int)part] : 0) - row.NeedConstant - row.Need.Sum(term => term.Factor * True(foot, term.Trait));

    /// <summary>Whether some allowed set of pads makes it fit on both feet.</summary>
    public bool Fits(double[] trueForm, EaseModel model, PadSets sets) => Enum.GetValues<Side>().All(foot =>
    {
        ulong works = ulong.MaxValue;
        for (int c = 0; c < model.Count; c++)
        {
            works &= sets.Steps[c].At(Ease(trueForm, foot, model.Rows[c]));
        }

        return works != 0;
    });

    /// <summary>What is seen at a try-on without pads: an answer to every check that changes a belief, with the noise that the shop's numbers say.</summary>
    public IReadOnlyList<CheckAnswer> Answer(double[] trueForm, Random random) =>
    [
        .. Enum.GetValues<Side>().SelectMany(foot => _defaults.Checks.Where(check => !check.OnlyRecorded).Select(check =>
        {
            double seen = check.Sees.Sum(term => term.Factor * Ease(trueForm, foot, EaseModel.RowOf(term.Criterion, _defaults)))
                + (check.Noise * Chance.Normal(random));
            return new CheckAnswer(foot, check.Id, seen < check.Lower ? 0 : seen < check.Upper ? 1 : 2);
        })),
    ];
}
