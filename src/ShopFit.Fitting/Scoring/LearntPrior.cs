using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Learning;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Scoring;

/// <summary>What earlier fittings say of the makers and models of one question.</summary>
/// <remarks>
/// For makers and models that are not tried now, whose numbers stand in no joint belief: maker's number and model's number of
/// each part, with what they share. What two parts, or two models of a maker, share beyond that is left out; calibration does not show it.
/// </remarks>
internal sealed class LearntPrior(LearntOffsets learnt)
{
    private readonly Dictionary<string, LearntModel> _models = new(StringComparer.Ordinal);

    public LearntModel Of(ShoeOnFile shoe)
    {
        if (ReferenceEquals(learnt, LearntOffsets.None))
        {
            return LearntModel.Nothing;
        }

        if (!_models.TryGetValue(shoe.Model, out var model))
        {
            model = LearntModel.Of(learnt.Of([new(ShoeLevel.Maker, shoe.Maker), new(ShoeLevel.Model, shoe.Model)]));
            _models[shoe.Model] = model;
        }

        return model;
    }
}

/// <summary>The numbers of a model and its maker, for each part: maker's = mean + SD · e₁, model's = constant + slope · maker's + SD · e₂.</summary>
/// <param name="MakerMean">Mean of the maker's number.</param>
/// <param name="MakerSd">Its standard deviation.</param>
/// <param name="Constant">The model's number where the maker's is 0.</param>
/// <param name="Slope">How far the model's number follows the maker's.</param>
/// <param name="ModelSd">Standard deviation of what is left of the model's.</param>
internal sealed record LearntModel(double[] MakerMean, double[] MakerSd, double[] Constant, double[] Slope, double[] ModelSd)
{
    /// <summary>Of what was never fitted.</summary>
    public static LearntModel Nothing { get; } = new(
        new double[ShoeForm.Parts], [.. Enumerable.Repeat(1.0, ShoeForm.Parts)], new double[ShoeForm.Parts], new double[ShoeForm.Parts], [.. Enumerable.Repeat(1.0, ShoeForm.Parts)]);

    /// <param name="numbers">Eight of the maker, then eight of the model.</param>
    public static LearntModel Of(Gaussian numbers)
    {
        var (mean, sd, constant, slope, left) = (new double[ShoeForm.Parts], new double[ShoeForm.Parts], new double[ShoeForm.Parts], new double[ShoeForm.Parts], new double[ShoeForm.Parts]);
        for (int part = 0; part < ShoeForm.Parts; part++)
        {
            int own = ShoeForm.Parts + part;
            double shared = numbers.Covariance[(part * numbers.Size) + own];
            mean[part] = numbers.Mean[part];
            sd[part] = Math.Sqrt(numbers.Variance(part));
            slope[part] = shared / numbers.Variance(part);
            constant[part] = numbers.Mean[own] - (slope[part] * mean[part]);
            left[part] = Math.Sqrt(Math.Max(0, numbers.Variance(own) - (slope[part] * shared)));
        }

        return new(mean, sd, constant, slope, left);
    }
}
