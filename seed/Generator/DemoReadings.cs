using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Seed;

/// <summary>One trait as the fitter read it off both feet, or off one.</summary>
/// <param name="Trait">What was read.</param>
/// <param name="Left">Off the left foot: mm, or a word; null where only the other was read.</param>
/// <param name="Right">Off the right foot, likewise.</param>
/// <param name="Method">How; empty for a word.</param>
internal sealed record DemoReading(Trait Trait, double? Left, double? Right, string Method)
{
    internal bool IsWord => Method.Length == 0;
}

/// <summary>Reads true feet as people do: off the gauge, with the tape, in words, and now and then wrongly.</summary>
internal static class DemoReadings
{
    /// <summary>How often a number is grossly wrong, and by how much, mm *(cp)*.</summary>
    private const double Misread = 0.006;
    private const double MisreadBy = 10;

    /// <summary>Numbers are read to halves of a millimetre.</summary>
    private const double PerMillimetre = 2;

    private static readonly Trait[] Words = [Trait.ToeSlope, Trait.SecondToeLead, Trait.ForefootDepth, Trait.Squeeze, Trait.PointRange, Trait.Strength];

    /// <summary>All that is read at a visit.</summary>
    /// <param name="feet">The true feet.</param>
    /// <param name="kind">Kind of footwear.</param>
    /// <param name="sex">Whom words compare with.</param>
    /// <param name="age">The age in years, likewise.</param>
    /// <param name="known">Whether the feet were read not long ago: then the numbers alone are read again.</param>
    /// <param name="random">The dancer's stream.</param>
    internal static IReadOnlyList<DemoReading> Of(double[] feet, string kind, Sex sex, double age, bool known, DemoRandom random)
    {
        var readings = new List<DemoReading> { Number(feet, Trait.Length, "gauge", both: true, random) };
        var dressed = kind is "pointe" or "demi-pointe";
        readings.Add(Number(feet, Trait.BallBreadth, "gauge", both: random.Chance(0.6), random));
        if (dressed && random.Chance(0.25))
        {
            readings.Add(Number(feet, Trait.BallGirth, "tape", both: true, random));
        }

        if (dressed && random.Chance(0.12))
        {
            readings.Add(Number(feet, Trait.HeelToBall, "gauge", both: true, random));
        }

        if (random.Chance(0.08))
        {
            readings.Add(Number(feet, Trait.HeelBreadth, "calliper", both: true, random));
        }

        var everybody = Population.Of(sex, age, FitDefaults.Standard);
        var said = dressed ? (known ? [Trait.Strength] : Words) : known ? [] : new[] { Trait.Squeeze };
        readings.AddRange(said.Select(trait => Word(feet, trait, everybody, random)));
        return readings;
    }

    /// <summary>The same in the words of the fit model.</summary>
    internal static IEnumerable<Reading> AsRead(IEnumerable<DemoReading> readings) =>
        from reading in readings
        from foot in new[] { (Side: Side.Left, Value: reading.Left), (Side: Side.Right, Value: reading.Right) }
        where foot.Value.HasValue
        select new Reading(foot.Side, reading.Trait, foot.Value.GetValueOrDefault(), reading.IsWord ? ReadingUnit.Word : ReadingUnit.Millimetres);

    private static DemoReading Number(double[] feet, Trait trait, string method, bool both, DemoRandom random)
    {
        var left = Once(Side.Left);
        return new DemoReading(trait, left, both ? Once(Side.Right) : null, method);

        double Once(Side side)
        {
            var read = feet[(Traits.Count * (int)side) + (int)trait] + (FitDefaults.Standard.ReadingSd[(int)trait] * random.Normal());
            read += random.Chance(Misread) ? (random.Chance(0.5) ? MisreadBy : -MisreadBy) : 0;
            return Math.Round(read * PerMillimetre, MidpointRounding.AwayFromZero) / PerMillimetre;
        }
    }

    // An ordered answer as the fit model takes it: two thresholds in the population, and some noise.
    private static DemoReading Word(double[] feet, Trait trait, Gaussian everybody, DemoRandom random)
    {
        var rules = FitDefaults.Standard.Words;
        var (mean, sd) = (everybody.Mean[(int)trait], Math.Sqrt(everybody.Variance((int)trait)));
        var (lower, upper) = (mean + (sd * StandardNormal.Quantile(rules.LowerPercentile)), mean + (sd * StandardNormal.Quantile(rules.UpperPercentile)));
        var slip = sd * rules.NoiseShare * random.Normal();
        return new DemoReading(trait, Said(Side.Left), Said(Side.Right), "");

        double Said(Side side)
        {
            var seen = feet[(Traits.Count * (int)side) + (int)trait] + slip;
            return seen < lower ? 0 : seen < upper ? 1 : 2;
        }
    }
}
