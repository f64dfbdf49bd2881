using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Beliefs;

/// <summary>What is believed about a dancer's two feet: a Gaussian over 12 traits of each, in the traits' own units.</summary>
/// <remarks>
/// Immutable. Index of a trait: 12 * side + trait. Where the sex is not known, a belief for each is kept
/// with its weight, and what is asked of it is answered by the Gaussian with the mean and covariance of both together.
/// </remarks>
public sealed class FeetBelief
{
    private readonly Part[] _parts;

    private FeetBelief(Part[] parts)
    {
        _parts = parts;
        Joint = Gaussian.OfMixture([.. parts.Select(part => (part.Weight, part.Feet))]);
    }

    /// <summary>Both feet as one Gaussian.</summary>
    internal Gaussian Joint { get; }

    /// <summary>What is believed of somebody of this sex and age before anything is read.</summary>
    /// <param name="sex">Null: a mixture of both.</param>
    /// <param name="ageYears">Age in years; null: adult. Below 2 counts as 2 (<see cref="Growth.Youngest"/>).</param>
    /// <param name="defaults">The numbers of the shop.</param>
    /// <exception cref="ArgumentOutOfRangeException">The age is negative or not finite.</exception>
    /// <exception cref="ArgumentException">The numbers of the shop make no covariance.</exception>
    public static FeetBelief Prior(Sex? sex, double? ageYears, FitDefaults defaults)
    {
        if (ageYears is { } age)
        {
            RefuseAge(age, nameof(ageYears));
        }

        Sex[] sexes = sex is { } known ? [known] : [Sex.Female, Sex.Male];
        return new([.. sexes.Select(each =>
        {
            var population = Population.Of(each, ageYears, defaults);
            Vectors.Cholesky(population.Covariance, population.Size);
            return new Part(each, 1.0 / sexes.Length, population, population);
        })]);
    }

    /// <summary>The belief after all these readings together; their order does not matter.</summary>
    /// <remarks>
    /// Of a repeated word the last holds; repeated numbers are independent readings. Give all readings of a fitting at once:
    /// a reading given twice counts twice. A reading far from what all others say is weighed down and told.
    /// </remarks>
    /// <exception cref="ArgumentException">A reading has a problem (<see cref="Reading.Check"/>).</exception>
    public ReadFeet After(IReadOnlyList<Reading> readings, FitDefaults defaults)
    {
        for (int i = 0; i < readings.Count; i++)
        {
            if (readings[i].Check() is { } problem)
            {
                throw new ArgumentException($"Reading {i} cannot be used: {problem.Code}.", nameof(readings));
            }
        }

        // Sorted, so that the order given does not even show in the last bits.
        NumberReading[] numbers = [.. Misreadings.InOrder(readings
            .Select((reading, place) => (reading, place))
            .Where(entry => entry.reading.Unit != ReadingUnit.Word)
            .Select(entry => NumberReading.Of(entry.place, entry.reading, defaults)))];
        var words = readings
            .Where(reading => reading.Unit == ReadingUnit.Word)
            .GroupBy(reading => (Traits.Count * (int)reading.Foot) + (int)reading.Trait)
            .OrderBy(group => group.Key)
            .Select(group => (Index: group.Key, Word: (int)group.Last().Value))
            .ToArray();

        var verdicts = Misreadings.Judge([.. _parts.Select(part => (part.Weight, part.Feet))], numbers, defaults.Gross);
        var after = new (Part Part, double LogWeight)[_parts.Length];
        for (int i = 0; i < _parts.Length; i++)
        {
            after[i] = _parts[i].After(numbers, verdicts, words, defaults.Words);
        }

        double highest = after.Max(entry => entry.LogWeight);
        double total = after.Sum(entry => Math.Exp(entry.LogWeight - highest));
        var belief = new FeetBelief([.. after.Select(entry => entry.Part with { Weight = Math.Exp(entry.LogWeight - highest) / total })]);
        var doubts = numbers
            .Select((number, i) => (number.Place, Verdict: verdicts[i]))
            .Where(entry => entry.Verdict.Weight < 1)
            .OrderBy(entry => entry.Place)
            .Select(entry => new DoubtfulReading(entry.Place, entry.Verdict.Expected, entry.Verdict.ExpectedSd, entry.Verdict.Weight));
        return new ReadFeet(belief, [.. doubts]);
    }

    /// <summary>The belief some time later: carried along the growth curve, and less sure.</summary>
    /// <remarks>
    /// The length gains the curve's mean step; the other traits follow by the population's regression on length. The
    /// uncertainty of the step, half of it and 2 mm a year, spreads over all traits and both feet in the proportions of
    /// the population, so that a strength noted two years ago is no more certain than a length of then.
    /// </remarks>
    /// <param name="sex">Null: each possibility follows its own curve.</param>
    /// <param name="fromAgeYears">Age at the readings.</param>
    /// <param name="toAgeYears">Age now.</param>
    /// <param name="defaults">The numbers of the shop.</param>
    /// <exception cref="ArgumentOutOfRangeException">An age is negative or not finite, or the second is below the first.</exception>
    public FeetBelief CarriedForward(Sex? sex, double fromAgeYears, double toAgeYears, FitDefaults defaults)
    {
        RefuseAge(fromAgeYears, nameof(fromAgeYears));
        RefuseAge(toAgeYears, nameof(toAgeYears));
        ArgumentOutOfRangeException.ThrowIfLessThan(toAgeYears, fromAgeYears);
        return new([.. _parts.Select(part => part.Later(sex ?? part.Sex, fromAgeYears, toAgeYears, defaults))]);
    }

    /// <summary>Best guess of a trait, in its unit.</summary>
    public double Mean(Side side, Trait trait) => Joint.Mean[IndexOf(side, trait)];

    /// <summary>How far off that may be: standard deviation, in the trait's unit.</summary>
    public double Sd(Side side, Trait trait) => Math.Sqrt(Joint.Variance(IndexOf(side, trait)));

    private static int IndexOf(Side side, Trait trait) => (Traits.Count * (int)side) + (int)trait;

    private static void RefuseAge(double ageYears, string name)
    {
        if (!double.IsFinite(ageYears) || ageYears < 0)
        {
            throw new ArgumentOutOfRangeException(name, ageYears, "An age is a number of years, not below zero.");
        }
    }

    /// <summary>The belief if the dancer is of one sex.</summary>
    /// <param name="Sex">Which.</param>
    /// <param name="Weight">Probability of it.</param>
    /// <param name="Feet">The belief then.</param>
    /// <param name="Everybody">The population that words compare with.</param>
    private sealed record Part(Sex Sex, double Weight, Gaussian Feet, Gaussian Everybody)
    {
        public (Part Part, double LogWeight) After(
            NumberReading[] numbers, Misreadings.Verdict[] verdicts, (int Index, int Word)[] words, WordReadings rules)
        {
            double[] mean = [.. Feet.Mean];
            double[] covariance = [.. Feet.Covariance];
            double logWeight = Math.Log(Weight);
            double[] direction = new double[Feet.Size];
            for (int i = 0; i < numbers.Length; i++)
            {
                direction[numbers[i].Index] = 1;
                logWeight += Kernel.Observe(mean, covariance, direction, numbers[i].Value, numbers[i].Variance / verdicts[i].Weight);
                direction[numbers[i].Index] = 0;
            }

            var answers = words.Select(word => InWords(word.Index, word.Word, rules)).ToArray();
            var (feet, logEvidence) = ExpectationPropagation.After(new Gaussian(mean, covariance), answers);
            return (this with { Feet = feet }, logWeight + logEvidence);
        }

        public Part Later(Sex sex, double fromAgeYears, double toAgeYears, FitDefaults defaults)
        {
            var everybody = Population.Of(sex, toAgeYears, defaults);
            double[] slopes = Population.SlopesOnLength(everybody);
            double step = GrowthCurve.MeanStep(sex, fromAgeYears, toAgeYears, defaults);
            double sd = (defaults.Growth.StepSdShare * step) + (defaults.Growth.SdAYear * (toAgeYears - fromAgeYears));
            double share = sd * sd / everybody.Variance(0);
            double[] mean = [.. Feet.Mean];
            double[] covariance = [.. Feet.Covariance];
            for (int i = 0; i < mean.Length; i++)
            {
                mean[i] += step * slopes[i % Traits.Count];
            }

            for (int i = 0; i < covariance.Length; i++)
            {
                covariance[i] += share * everybody.Covariance[i];
            }

            return this with { Feet = new Gaussian(mean, covariance), Everybody = everybody };
        }

        private OrdinalAnswer InWords(int index, int word, WordReadings rules)
        {
            double sd = Math.Sqrt(Everybody.Variance(index));
            double lower = Everybody.Mean[index] + (sd * StandardNormal.Quantile(rules.LowerPercentile));
            double upper = Everybody.Mean[index] + (sd * StandardNormal.Quantile(rules.UpperPercentile));
            double[] direction = new double[Feet.Size];
            direction[index] = 1;
            return new OrdinalAnswer(
                direction,
                word == 0 ? double.NegativeInfinity : word == 1 ? lower : upper,
                word == 0 ? lower : word == 1 ? upper : double.PositiveInfinity,
                sd * rules.NoiseShare);
        }
    }
}

/// <summary>A belief after readings, and which readings it found hard to believe.</summary>
/// <param name="Belief">The belief.</param>
/// <param name="Doubts">Readings to take once more; each is kept and weighed down, never dropped.</param>
public sealed record ReadFeet(FeetBelief Belief, IReadOnlyList<DoubtfulReading> Doubts);

/// <summary>A reading far outside what everything else says.</summary>
/// <param name="Index">Its place in the list that was given.</param>
/// <param name="Expected">What was expected, in the trait's unit.</param>
/// <param name="ExpectedSd">How sure that was, in the trait's unit.</param>
/// <param name="Weight">How much it counts now, above 0 and below 1.</param>
public sealed record DoubtfulReading(int Index, double Expected, double ExpectedSd, double Weight);
