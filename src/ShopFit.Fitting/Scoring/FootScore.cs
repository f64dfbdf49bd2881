namespace ShopFit.Fitting.Scoring;

/// <summary>The score of a foot in a shoe.</summary>
public static class FootScore
{
    /// <summary>Weighted geometric mean of the desirabilities of its eases; one of zero vetoes the shoe (Derringer and Suich 1980, weighted).</summary>
    /// <param name="criteria">The criteria.</param>
    /// <param name="eases">An ease for each, in the same order.</param>
    /// <exception cref="ArgumentException">The two differ in number.</exception>
    public static double Of(IReadOnlyList<Criterion> criteria, ReadOnlySpan<double> eases)
    {
        if (criteria.Count != eases.Length)
        {
            throw new ArgumentException("Each criterion has one ease.", nameof(eases));
        }

        double weights = 0;
        double sum = 0;
        for (int i = 0; i < eases.Length; i++)
        {
            double desirability = criteria[i].Desirability(eases[i]);
            if (desirability <= 0)
            {
                return 0;
            }

            weights += criteria[i].Weight;
            sum += criteria[i].Weight * Math.Log(desirability);
        }

        return Math.Exp(sum / weights);
    }
}
