using ShopFit.Fitting.Defaults;

namespace ShopFit.Fitting.Beliefs;

/// <summary>Finds readings that are grossly wrong, all of them together, so that their order does not matter.</summary>
/// <remarks>
/// Each reading either has its usual error or, rarely, a far larger one (two normals, Box and Tiao 1968). Starting with all
/// usual, the one change of mind that makes all readings together most probable is made, until none helps; what one
/// reading should have been is always judged by all the others (leave one out).
/// </remarks>
internal static class Misreadings
{
    /// <summary>What was expected of a reading by all the others, and how much it counts: 1, or less where it is in doubt.</summary>
    internal readonly record struct Verdict(double Expected, double ExpectedSd, double Weight);

    public static Verdict[] Judge(Gaussian prior, IReadOnlyList<NumberReading> readings, GrossReadings rules)
    {
        int count = readings.Count;
        double[] variances = [.. readings.Select(reading => reading.Variance)];
        double[] residuals = [.. readings.Select(reading => reading.Value - prior.Mean[reading.Index])];
        bool[] gross = new bool[count];
        double GrossVariance(int i) => readings[i].Variance * rules.SdFactor * rules.SdFactor;
        double odds = Math.Log(rules.Chance / (1 - rules.Chance));

        double[] precision = Precision(prior, readings, variances);
        double[] pulled = new double[count];
        for (int step = 0; step <= 2 * count; step++)
        {
            Multiply(precision, residuals, pulled);
            int best = -1;
            double bestGain = 1e-9;
            for (int i = 0; i < count; i++)
            {
                // The prediction of reading i by all others, from the inverse of the joint covariance.
                double variance = 1 / precision[(i * count) + i];
                double error = pulled[i] * variance;
                double without = variance - variances[i];
                double change = LogDensity(error, without + GrossVariance(i)) - LogDensity(error, without + readings[i].Variance) + odds;
                double gain = gross[i] ? -change : change;
                if (gain > bestGain)
                {
                    (best, bestGain) = (i, gain);
                }
            }

            if (best < 0)
            {
                break;
            }

            gross[best] = !gross[best];
            variances[best] = gross[best] ? GrossVariance(best) : readings[best].Variance;
            precision = Precision(prior, readings, variances);
        }

        Multiply(precision, residuals, pulled);
        var verdicts = new Verdict[count];
        for (int i = 0; i < count; i++)
        {
            double variance = 1 / precision[(i * count) + i];
            double error = pulled[i] * variance;
            double without = Math.Max(0, variance - variances[i]);
            double change = LogDensity(error, without + GrossVariance(i)) - LogDensity(error, without + readings[i].Variance) + odds;
            double usual = 1 / (1 + Math.Exp(change));

            // To measure once more costs little, so that is asked long before a reading is given up.
            bool doubted = gross[i] || 1 - usual >= rules.AskFrom;
            double weight = doubted ? usual + ((1 - usual) / (rules.SdFactor * rules.SdFactor)) : 1;

            verdicts[i] = new Verdict(readings[i].Value - error, Math.Sqrt(without), weight);
        }

        return verdicts;
    }

    private static double LogDensity(double error, double variance) => -0.5 * ((error * error / variance) + Math.Log(variance));

    private static void Multiply(double[] matrix, double[] vector, double[] result)
    {
        for (int i = 0; i < vector.Length; i++)
        {
            result[i] = Vectors.Dot(matrix.AsSpan(i * vector.Length, vector.Length), vector);
        }
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
