using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Beliefs;

/// <summary>Finds readings that are grossly wrong, all of them together, so that their order does not matter.</summary>
/// <remarks>
/// Each reading either has its usual error or, rarely, a far larger one (two normals, Box and Tiao 1968); more rarely still, all
/// readings of one trait share such an error. Every combination is weighed by how probable it makes all readings, so
/// that absurd ones which agree with each other are found as well as one alone. Where the combinations are too many, the most
/// probable are followed on. What a reading should have been is judged by all the others, each with its own weight (leave one out).
/// </remarks>
internal static class Misreadings
{
    // All combinations of nine readings of nine traits. With more readings, those left out do not show: see MisreadingsTests.
    private const int MostFollowed = 512;

    // Of very many readings fewer combinations are followed, so that the time does not grow with their number.
    private const int MostSteps = 20_000;

    /// <summary>What was expected of a reading by all the others, and how much it counts: 1, or less where it is in doubt.</summary>
    internal readonly record struct Verdict(double Expected, double ExpectedSd, double Weight);

    /// <summary>The order in which readings are judged: the same whatever the order in which they were given, and a trait's together.</summary>
    public static IEnumerable<NumberReading> InOrder(IEnumerable<NumberReading> readings) =>
        readings.OrderBy(reading => TraitOf(reading)).ThenBy(reading => reading.Index).ThenBy(reading => reading.Variance).ThenBy(reading => reading.Value);

    /// <summary>A verdict on each reading.</summary>
    /// <param name="priors">What was believed before any of them: each possibility with its probability.</param>
    /// <param name="readings">The readings, <see cref="InOrder"/>.</param>
    /// <param name="rules">How often readings are wrong, by how much, and when they are asked for again.</param>
    public static Verdict[] Judge(IReadOnlyList<(double Weight, Gaussian Feet)> priors, IReadOnlyList<NumberReading> readings, GrossReadings rules)
    {
        double[] weights = Weights(priors, readings, rules);
        double[] variances = [.. readings.Select((reading, i) => reading.Variance / weights[i])];
        var prior = Gaussian.OfMixture(priors);
        double[] residuals = [.. readings.Select(reading => reading.Value - prior.Mean[reading.Index])];
        double[] precision = Precision(prior, readings, variances);
        var verdicts = new Verdict[readings.Count];
        for (int i = 0; i < verdicts.Length; i++)
        {
            // The prediction of reading i by all others, from the inverse of the joint covariance.
            var row = precision.AsSpan(i * verdicts.Length, verdicts.Length);
            double variance = 1 / row[i];
            double error = Vectors.Dot(row, residuals) * variance;
            verdicts[i] = new Verdict(readings[i].Value - error, Math.Sqrt(Math.Max(0, variance - variances[i])), weights[i]);
        }

        return verdicts;
    }

    private static int TraitOf(NumberReading reading) => reading.Index % Traits.Count;

    // The precision that is expected of each reading, as a share of its usual one; 1 where it is not in doubt.
    private static double[] Weights(IReadOnlyList<(double Weight, Gaussian Feet)> priors, IReadOnlyList<NumberReading> readings, GrossReadings rules)
    {
        var combinations = Follow(priors, readings, rules);
        double highest = combinations.Max(combination => combination.LogWeight);
        double total = combinations.Sum(combination => Math.Exp(combination.LogWeight - highest));
        double[] wrong = new double[readings.Count];
        double[] weights = new double[readings.Count];
        foreach (var combination in combinations)
        {
            combination.AddTo(Math.Exp(combination.LogWeight - highest) / total, wrong, weights);
        }

        // To measure once more costs little, so that is asked long before a reading is given up.
        return [.. weights.Select((weight, i) => wrong[i] >= rules.AskFrom ? weight : 1)];
    }

    private static ReadingCombination[] Follow(IReadOnlyList<(double Weight, Gaussian Feet)> priors, IReadOnlyList<NumberReading> readings, GrossReadings rules)
    {
        int most = Math.Min(MostFollowed, MostSteps / Math.Max(1, readings.Count));
        int[] traits = [.. readings.Select(reading => reading.Index).Distinct()];
        ReadingCombination[] followed = [.. priors.Select(prior => ReadingCombination.Of(Math.Log(prior.Weight), prior.Feet, traits))];
        foreach (var ofTrait in readings.GroupBy(TraitOf).Select(group => group.ToArray()))
        {
            if (ofTrait.Length > 1)
            {
                double shared = rules.SdFactor * rules.SdFactor * ofTrait.Max(reading => reading.Variance);
                int feet = ofTrait.Select(reading => reading.Index).Distinct().Count();
                followed = MostProbable(most, followed.SelectMany(combination => new[]
                {
                    combination.Sharing(0, feet, 1 - rules.SharedChance),
                    combination.Sharing(shared, feet, rules.SharedChance),
                }));
            }

            for (int i = 0; i < ofTrait.Length; i++)
            {
                var reading = ofTrait[i];
                int place = i;
                bool lastOfFoot = i + 1 == ofTrait.Length || ofTrait[i + 1].Index != reading.Index;
                followed = MostProbable(most, followed.SelectMany(combination => new[]
                {
                    combination.With(reading, wrong: false, place, ofTrait.Length, lastOfFoot, rules),
                    combination.With(reading, wrong: true, place, ofTrait.Length, lastOfFoot, rules),
                }));
            }
        }

        return followed;
    }

    private static ReadingCombination[] MostProbable(int most, IEnumerable<ReadingCombination> combinations)
    {
        ReadingCombination[] all = [.. combinations];
        return all.Length <= most ? all : [.. all.OrderByDescending(combination => combination.LogWeight).Take(most)];
    }

    // The inverse of the covariance of all readings together.
    private static double[] Precision(Gaussian prior, IReadOnlyList<NumberReading> readings, double[] variances)
    {
        int count = readings.Count;
        double[] covariance = new double[count * count];
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j < count; j++)
            {
                covariance[(i * count) + j] = prior.Covariance[(readings[i].Index * prior.Size) + readings[j].Index];
            }

            covariance[(i * count) + i] += variances[i];
        }

        return Vectors.Inverse(covariance, count);
    }
}
