using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Scoring;

/// <summary>Mean and standard deviation of each ease of a pair, without any draws.</summary>
internal sealed class EaseMoments
{
    private readonly EaseBelief _belief;
    private readonly double[] _variances = new double[FormSources * ShoeLevels.Count * ShoeForm.Parts];

    private const int FormSources = 3;

    public EaseMoments(EaseBelief belief, FitDefaults defaults)
    {
        _belief = belief;
        for (int source = 0; source < FormSources; source++)
        {
            for (int part = 0; part < ShoeForm.Parts; part++)
            {
                double maker = defaults.FormSds.MakersPart((FormPart)part, (FormSource)source);
                double model = defaults.FormSds.ModelsPart((FormPart)part, (FormSource)source);
                double pair = defaults.FormSds.PairScatter[part];
                _variances[Place(source, 0, part)] = maker * maker;
                _variances[Place(source, 1, part)] = model * model;
                _variances[Place(source, 2, part)] = pair * pair;
            }
        }
    }

    /// <summary>Where the numbers of the pair's maker, model and own stand in the belief, −1 where never tried; and what earlier fittings say of them.</summary>
    public ShoePlaces PlacesOf(ShoeOnFile shoe) => new(
        _belief.PlaceOf(new(ShoeLevel.Maker, shoe.Maker)), _belief.PlaceOf(new(ShoeLevel.Model, shoe.Model)), _belief.PlaceOf(new(ShoeLevel.Pair, shoe.Sku)),
        _belief.LearntOf(shoe));

    /// <summary>The ease of one criterion; <paramref name="need"/> is foot · criteria + criterion.</summary>
    public (double Mean, double Sd) Of(ShoeOnFile shoe, ShoePlaces places, int need)
    {
        var row = _belief.Model.Rows[need % _belief.Model.Count];
        double mean = -_belief.All.Mean[need];
        double variance = _belief.All.Variance(need);
        if (row.Part is not { } formPart)
        {
            return (mean, Math.Sqrt(variance));
        }

        int part = (int)formPart;
        int source = (int)shoe.Form.SourceOf(formPart);
        mean += shoe.Form[formPart];
        Span<int> at = stackalloc int[ShoeLevels.Count + 1];
        Span<double> factor = stackalloc double[ShoeLevels.Count + 1];
        at[0] = need;
        factor[0] = -1;
        int known = 1;
        var learnt = places.Learnt;
        for (int level = 0; level < ShoeLevels.Count; level++)
        {
            int place = level == 0 ? places.Maker : level == 1 ? places.Model : places.Pair;
            double sd = Math.Sqrt(_variances[Place(source, level, part)]);
            if (level == 0 && places.Model < 0)
            {
                // A model that was not tried follows its maker by as much as earlier fittings say.
                double models = Math.Sqrt(_variances[Place(source, 1, part)]);
                mean += models * learnt.Constant[part];
                sd += models * learnt.Slope[part];
            }

            if (place < 0)
            {
                double left = level == 0 ? learnt.MakerSd[part] : level == 1 ? learnt.ModelSd[part] : 1;
                mean += level == 0 ? sd * learnt.MakerMean[part] : 0;
                variance += sd * sd * left * left;
                continue;
            }

            mean += sd * _belief.All.Mean[place + part];
            at[known] = place + part;
            factor[known] = sd;
            for (int other = 0; other < known; other++)
            {
                variance += 2 * sd * factor[other] * _belief.All.Covariance[(at[known] * _belief.All.Size) + at[other]];
            }

            variance += sd * sd * _belief.All.Variance(at[known]);
            known++;
        }

        return (mean, Math.Sqrt(Math.Max(variance, 0)));
    }

    private static int Place(int source, int level, int part) => (((source * ShoeLevels.Count) + level) * ShoeForm.Parts) + part;
}

/// <summary>Where the numbers of a shoe stand in a belief, −1 where never tried, and what earlier fittings say of them.</summary>
internal readonly record struct ShoePlaces(int Maker, int Model, int Pair, LearntModel Learnt);
