namespace ShopFit.Fitting.Beliefs;

/// <summary>
/// Updates a Gaussian by ordered answers: each answer is replaced by a Gaussian site whose effect has the right mean and
/// variance given all the others, again and again until nothing moves (expectation propagation, Minka 2001).
/// </summary>
/// <remarks>
/// One answer alone gives the exact mean and covariance. Several give the same result in any order once settled; the order
/// given still decides the last bits, so callers sort their answers first.
/// </remarks>
internal static class ExpectationPropagation
{
    private const int MostSweeps = 200;
    private const double Settled = 1e-11;

    // What moves a belief by less is not worth laying on it.
    private const double Nothing = 1e-13;

    // Many small changes let rounding pile up; the sites laid on the prior afresh do not.
    private const int SweepsToAfresh = 16;

    /// <summary>The belief after all answers, and ln of the probability of these answers.</summary>
    public static (Gaussian Belief, double LogEvidence) After(Gaussian prior, IReadOnlyList<OrdinalAnswer> answers)
    {
        if (answers.Count == 0)
        {
            return (prior, 0);
        }

        double[] precision = new double[answers.Count];
        double[] shift = new double[answers.Count];
        double[] logScale = new double[answers.Count];
        double[] gain = new double[prior.Size];
        double[] mean = [.. prior.Mean];
        double[] covariance = [.. prior.Covariance];
        for (int sweep = 1; sweep <= MostSweeps; sweep++)
        {
            double moved = 0;
            for (int i = 0; i < answers.Count; i++)
            {
                var answer = answers[i];
                double variance = Kernel.Project(covariance, answer.Direction, gain);
                double centre = Vectors.Dot(answer.Direction, mean);
                if (!(variance > 0))
                {
                    continue;
                }

                var (newPrecision, newShift, newLogScale) = Site(answer, centre, variance, precision[i], shift[i]);
                double change = Math.Max(Math.Abs(newPrecision - precision[i]) * variance, Math.Abs(newShift - shift[i]) * Math.Sqrt(variance));
                logScale[i] = newLogScale;
                if (change > Nothing)
                {
                    moved = Math.Max(moved, change);
                    Kernel.AddSite(mean, covariance, gain, variance, centre, newPrecision - precision[i], newShift - shift[i]);
                    (precision[i], shift[i]) = (newPrecision, newShift);
                }
            }

            if (moved < Settled)
            {
                break;
            }

            if (sweep % SweepsToAfresh == 0)
            {
                LayAfresh();
            }
        }

        double logEvidence = LayAfresh();
        return (new Gaussian(mean, covariance), logEvidence);

        double LayAfresh()
        {
            prior.Mean.CopyTo(mean);
            prior.Covariance.CopyTo(covariance);
            double log = 0;
            for (int i = 0; i < answers.Count; i++)
            {
                log += logScale[i] + Kernel.AddSite(mean, covariance, answers[i].Direction, precision[i], shift[i]);
            }

            return log;
        }
    }

    private static (double Precision, double Shift, double LogScale) Site(
        OrdinalAnswer answer, double centre, double variance, double precision, double shift)
    {
        // The cavity: what is believed of h·x without this answer. Sites of a log-concave answer never make it wider than it can be.
        double left = 1 - (precision * variance);
        double cavityVariance = variance / left;
        double cavityCentre = (centre - (shift * variance)) / left;

        double seenVariance = cavityVariance + (answer.Noise * answer.Noise);
        double seenSd = Math.Sqrt(seenVariance);
        var seen = TruncatedNormal.Between((answer.Lower - cavityCentre) / seenSd, (answer.Upper - cavityCentre) / seenSd);

        double gain = cavityVariance / seenVariance;
        double tiltedCentre = cavityCentre + (gain * seenSd * seen.Mean);
        double taken = gain * cavityVariance * (1 - seen.Variance);
        double tiltedVariance = cavityVariance - taken;

        double newPrecision = Math.Max(0, taken / (tiltedVariance * cavityVariance));
        double newShift = (tiltedCentre / tiltedVariance) - (cavityCentre / cavityVariance);

        double growth = 1 + (newPrecision * cavityVariance);
        double exponent = ((2 * newShift * cavityCentre) + (newShift * newShift * cavityVariance) - (newPrecision * cavityCentre * cavityCentre)) / (2 * growth);
        double newLogScale = seen.LogProbability - exponent + (0.5 * Math.Log(growth));

        // An answer that counts half leaves half of its site.
        return (answer.Weight * newPrecision, answer.Weight * newShift, answer.Weight * newLogScale);
    }
}
