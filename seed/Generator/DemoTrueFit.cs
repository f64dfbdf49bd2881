using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Seed;

/// <summary>What a fitter sees of a pair on two feet: near to how it truly sits.</summary>
/// <param name="Fits">Whether it fits with <paramref name="Pads"/>; where not, with no set.</param>
/// <param name="Pads">The least padding that does it.</param>
/// <param name="Eases">The eases as seen without pads: left foot, then right, in the order of the kind's criteria.</param>
internal sealed record DemoTrueFit(bool Fits, IReadOnlyList<PadUnderFoot> Pads, IReadOnlyList<double> Eases)
{
    /// <summary>How far off an ease is that the fitter sees, as a share of the way from right to impossible *(cp)*.</summary>
    private const double SeenSd = 0.12;

    /// <summary>From this desirability on a fitter lets a place pass: she is milder than the fit model, whose half is the mark *(cp)*.</summary>
    private const double LetsPass = 0.25;

    /// <summary>Likewise for soft leather and for shoes with a strap, which give *(cp)*.</summary>
    private const double LetsSoftPass = 0.05;

    /// <summary>Less padding is taken where it costs no more score than this *(cp)*.</summary>
    private const double WorthAPad = 0.05;

    private static readonly Dictionary<string, (EaseModel Model, PadSets Sets)> Kinds = FitDefaults.Standard.Kinds.ToDictionary(
        kind => kind.Id,
        kind => (EaseModel.Of(kind.Id, FitDefaults.Standard), PadSets.Of(EaseModel.Of(kind.Id, FitDefaults.Standard), FitDefaults.Standard)),
        StringComparer.Ordinal);

    /// <summary>Looks at a pair.</summary>
    /// <param name="kind">Kind of footwear.</param>
    /// <param name="feet">The true feet.</param>
    /// <param name="form">The true inside of the pair.</param>
    /// <param name="padAtHand">Whether a pad can be taken.</param>
    /// <param name="random">The dancer's stream.</param>
    internal static DemoTrueFit Look(string kind, double[] feet, double[] form, Func<string, bool> padAtHand, DemoRandom random)
    {
        var (model, sets) = Kinds[kind];
        var dressed = kind is "pointe" or "demi-pointe";
        var pads = new List<PadUnderFoot>();
        var fits = true;
        var seen = new List<double>();
        foreach (var foot in Enum.GetValues<Side>())
        {
            double[] eases = [.. Enumerable.Range(0, model.Count).Select(c => EaseOf(model, c, feet, form, foot) + (SeenSd * Way(model.Criteria[c]) * random.Normal()))];
            var usable = Enumerable.Range(0, dressed ? sets.Count : 1)
                .Where(set => sets.Sets[set].All(pad => padAtHand(pad.Id)) && IsOffered(model, sets, set, eases))
                .Select(set => (Set: set, Score: Score(model, sets, set, eases) - (FitDefaults.Standard.PadRules.BulkPenalty * sets.Bulk[set])))
                .ToList();
            var best = usable.Max(one => one.Score);
            var taken = usable.Where(one => one.Score >= best - WorthAPad).OrderBy(one => sets.Bulk[one.Set]).ThenByDescending(one => one.Score).First().Set;
            pads.AddRange(sets.Sets[taken].Select(pad => new PadUnderFoot(foot, pad.Id)));
            fits &= Enumerable.Range(0, model.Count).All(c => model.Criteria[c].Desirability(eases[c] + sets.Shifts[(taken * model.Count) + c]) >= (dressed ? LetsPass : LetsSoftPass));
            seen.AddRange(eases);
        }

        return new DemoTrueFit(fits, fits ? pads : [], seen);
    }

    /// <summary>How well another size should sit after this one was seen: 0 to 1, the worse foot's score without pads.</summary>
    internal double ScoreOf(string kind, ShoeForm seen, ShoeForm other)
    {
        var (model, sets) = Kinds[kind];
        return Enum.GetValues<Side>().Min(foot => Score(
            model, sets, 0, [.. model.Rows.Select((row, c) => Eases[((int)foot * model.Count) + c] + (row.Part is { } part ? other[part] - seen[part] : 0))]));
    }

    private static double EaseOf(EaseModel model, int c, double[] feet, double[] form, Side foot)
    {
        var row = model.Rows[c];
        var need = row.NeedConstant + row.Need.Sum(term => term.Factor * feet[(Traits.Count * (int)foot) + (int)term.Trait]);
        return (row.Part is { } part ? form[(int)part] : 0) - need;
    }

    private static double Way(Criterion criterion) => criterion.IdealFrom - criterion.NoFitBelow;

    // A pad can shrink a shoe and never grow it.
    private static bool IsOffered(EaseModel model, PadSets sets, int set, double[] eases) => Enumerable.Range(0, model.Count)
        .All(c => sets.Shifts[(set * model.Count) + c] >= 0 || eases[c] >= model.Criteria[c].IdealFrom);

    private static double Score(EaseModel model, PadSets sets, int set, double[] eases)
    {
        var log = 0.0;
        for (var c = 0; c < model.Count; c++)
        {
            var desirability = model.Criteria[c].Desirability(eases[c] + sets.Shifts[(set * model.Count) + c]);
            if (desirability == 0)
            {
                return 0;
            }

            log += model.Criteria[c].Weight * Math.Log(desirability);
        }

        return Math.Exp(log / model.Criteria.Sum(criterion => criterion.Weight));
    }
}
