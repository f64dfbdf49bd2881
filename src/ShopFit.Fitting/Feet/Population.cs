using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;

namespace ShopFit.Fitting.Feet;

/// <summary>The feet of everybody of one sex and age, as a Gaussian over both feet.</summary>
internal static class Population
{
    /// <summary>The Gaussian over 12 traits of the left and then of the right foot.</summary>
    /// <remarks>
    /// Adults: the survey's block. Children: length from the growth table; the other surveyed traits keep the
    /// adults' regression on length. The rest by conditional regressions. Between the feet, traits i and j
    /// covary by √(ρᵢρⱼ) of what they do on one foot.
    /// </remarks>
    public static Gaussian Of(Sex sex, double? ageYears, FitDefaults defaults)
    {
        var (mean, covariance) = OneFoot(sex, ageYears, defaults);
        const int Count = Traits.Count;
        double[] both = new double[2 * Count];
        double[] joint = new double[4 * Count * Count];
        for (int i = 0; i < Count; i++)
        {
            both[i] = mean[i];
            both[Count + i] = mean[i];
            for (int j = 0; j < Count; j++)
            {
                double within = covariance[(i * Count) + j];
                double between = within * Math.Sqrt(defaults.LeftRightCorrelation[i] * defaults.LeftRightCorrelation[j]);
                joint[(i * 2 * Count) + j] = within;
                joint[((Count + i) * 2 * Count) + Count + j] = within;
                joint[(i * 2 * Count) + Count + j] = between;
                joint[((Count + i) * 2 * Count) + j] = between;
            }
        }

        return new Gaussian(both, joint);
    }

    /// <summary>How each trait changes with a mm of length, on average.</summary>
    public static double[] SlopesOnLength(Gaussian population)
    {
        double[] slopes = new double[Traits.Count];
        for (int i = 0; i < slopes.Length; i++)
        {
            slopes[i] = population.Covariance[i] / population.Covariance[0];
        }

        return slopes;
    }

    private static (double[] Mean, double[] Covariance) OneFoot(Sex sex, double? ageYears, FitDefaults defaults)
    {
        const int Count = Traits.Count;
        double[] mean = new double[Count];
        double[] covariance = new double[Count * Count];
        var adult = defaults.Adults[(int)sex];
        var (length, lengthSd) = ageYears is { } age
            ? GrowthCurve.LengthAt(sex, age, defaults)
            : (adult.Means[0], adult.Sds[0]);
        int surveyed = SurveyedFeet.SurveyTraits.Count;

        double AdultCovariance(int i, int j) => adult.Sds[i] * adult.Sds[j] * adult.Correlations[(i * surveyed) + j];
        double Slope(int i) => AdultCovariance(i, 0) / AdultCovariance(0, 0);

        // A change of the length's variance travels along the regressions; what the regressions leave over stays.
        double added = (lengthSd * lengthSd) - AdultCovariance(0, 0);
        for (int i = 0; i < surveyed; i++)
        {
            int row = (int)SurveyedFeet.SurveyTraits[i];
            mean[row] = adult.Means[i] + (Slope(i) * (length - adult.Means[0]));
            for (int j = 0; j < surveyed; j++)
            {
                covariance[(row * Count) + (int)SurveyedFeet.SurveyTraits[j]] = AdultCovariance(i, j) + (Slope(i) * Slope(j) * added);
            }
        }

        foreach (var derived in defaults.DerivedTraits)
        {
            int row = (int)derived.Trait;
            int given = (int)(derived.Given ?? Trait.Length);
            mean[row] = derived.Constant + (derived.Slope * mean[given]);
            for (int j = 0; j < Count; j++)
            {
                double shared = derived.Slope * covariance[(given * Count) + j];
                covariance[(row * Count) + j] = shared;
                covariance[(j * Count) + row] = shared;
            }

            covariance[(row * Count) + row] =
                (derived.Slope * derived.Slope * covariance[(given * Count) + given]) + (derived.SdLeft * derived.SdLeft);
        }

        return (mean, covariance);
    }
}
