using ShopFit.Fitting.Defaults;

namespace ShopFit.Fitting.Beliefs;

/// <summary>The first readings of a list, each taken to be usual or grossly wrong, and what is then expected of the readings to come.</summary>
/// <remarks>Readings come sorted, so a trait of a foot that has been read for the last time is let go and the numbers shrink.</remarks>
internal sealed class ReadingCombination
{
    private readonly ReadingCombination? _before;
    private readonly bool _sharesError; // by all readings of the trait that is being read
    private readonly double _lastWrong;
    private readonly double _lastWeight;
    private readonly double[] _mean;
    private readonly double[] _covariance;

    private ReadingCombination(ReadingCombination? before, double logWeight, double[] mean, double[] covariance, bool sharesError = false, double lastWrong = 0, double lastWeight = 1)
    {
        (_before, _sharesError, _lastWrong, _lastWeight) = (before, sharesError, lastWrong, lastWeight);
        (_mean, _covariance) = (mean, covariance);
        LogWeight = logWeight;
    }

    /// <summary>ln of how probable this combination and its readings are together, but for what all combinations share.</summary>
    public double LogWeight { get; }

    /// <summary>Nothing read yet.</summary>
    /// <param name="logWeight">ln of how probable this prior is.</param>
    /// <param name="prior">What is believed of all traits.</param>
    /// <param name="traits">Places in it of those that will be read, in the order in which they will be.</param>
    public static ReadingCombination Of(double logWeight, Gaussian prior, int[] traits)
    {
        double[] mean = new double[traits.Length];
        double[] covariance = new double[traits.Length * traits.Length];
        for (int i = 0; i < traits.Length; i++)
        {
            mean[i] = prior.Mean[traits[i]];
            for (int j = 0; j < traits.Length; j++)
            {
                covariance[(i * traits.Length) + j] = prior.Covariance[(traits[i] * prior.Size) + traits[j]];
            }
        }

        return new(null, logWeight, mean, covariance);
    }

    /// <summary>The same before a new trait is read, with an error that all its readings share, or with none.</summary>
    /// <param name="variance">Of the shared error; 0: none.</param>
    /// <param name="feet">How many feet it is read of; they stand first.</param>
    /// <param name="chance">How probable that is.</param>
    public ReadingCombination Sharing(double variance, int feet, double chance)
    {
        double[] covariance = [.. _covariance];
        for (int i = 0; i < feet; i++)
        {
            for (int j = 0; j < feet; j++)
            {
                covariance[(i * _mean.Length) + j] += variance;
            }
        }

        return new(_before, LogWeight + Math.Log(chance), _mean, covariance, variance > 0, _lastWrong, _lastWeight);
    }

    /// <summary>This combination with the next reading, which is of the trait that stands first.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="wrong">Whether it has a gross error of its own.</param>
    /// <param name="place">Its place among the readings of its trait, of either foot.</param>
    /// <param name="ofTrait">How many there are of these.</param>
    /// <param name="lastOfFoot">Whether it is the last of its trait and foot.</param>
    /// <param name="rules">How often a reading is wrong, and by how much.</param>
    public ReadingCombination With(NumberReading reading, bool wrong, int place, int ofTrait, bool lastOfFoot, GrossReadings rules)
    {
        int size = _mean.Length;
        int gone = lastOfFoot ? 1 : 0;
        int left = size - gone;
        double gross = rules.SdFactor * rules.SdFactor;
        double variance = _covariance[0] + (reading.Variance * (wrong ? gross : 1));
        double surprise = reading.Value - _mean[0];
        double[] mean = new double[left];
        double[] covariance = new double[left * left];
        for (int i = 0; i < left; i++)
        {
            double gain = _covariance[(i + gone) * size] / variance;
            mean[i] = _mean[i + gone] + (gain * surprise);
            for (int j = 0; j < left; j++)
            {
                covariance[(i * left) + j] = _covariance[((i + gone) * size) + j + gone] - (gain * _covariance[j + gone]);
            }
        }

        double logWeight = LogWeight + Math.Log(wrong ? rules.Chance : 1 - rules.Chance) - (0.5 * ((surprise * surprise / variance) + Math.Log(variance)));

        // Readings that share an error tell together no more than one with that error.
        double spread = (wrong ? gross : 1) + (_sharesError ? gross * ofTrait : 0);
        return new(this, logWeight, mean, covariance, _sharesError && place + 1 < ofTrait, wrong || _sharesError ? 1 : 0, 1 / spread);
    }

    /// <summary>Adds, for each reading, how probable it is that it is wrong and how much it counts.</summary>
    /// <param name="share">How probable this combination is.</param>
    /// <param name="wrong">A place for each reading.</param>
    /// <param name="weights">A place for each reading.</param>
    public void AddTo(double share, double[] wrong, double[] weights)
    {
        var combination = this;
        for (int i = wrong.Length - 1; i >= 0; i--)
        {
            wrong[i] += share * combination._lastWrong;
            weights[i] += share * combination._lastWeight;
            combination = combination._before!;
        }
    }
}
