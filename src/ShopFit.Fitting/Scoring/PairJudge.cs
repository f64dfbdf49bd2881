using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Pads;

namespace ShopFit.Fitting.Scoring;

/// <summary>Chooses pads and says how a pair sits, over the first of the fixed draws.</summary>
internal sealed class PairJudge(EaseModel model, PadSets sets, EaseMoments moments, Draws draws, FitDefaults defaults)
{
    private const int Count = 1024;
    private const int NoPads = 0; // the first set

    private static readonly double HalfOfNinetyPercent = StandardNormal.Quantile(0.95);

    private readonly double _weights = model.Criteria.Sum(criterion => criterion.Weight);

    public PairFit Judge(ShoeNumbers shoe, double chanceOfFit)
    {
        double[] eases = Eases(shoe);
        double[] worse = new double[Count];
        worse.AsSpan().Fill(double.PositiveInfinity);
        var pads = new List<PadUnderFoot>();
        var criteria = new List<CriterionFit>();
        var places = moments.PlacesOf(shoe.Shoe);
        foreach (var foot in Enum.GetValues<Side>())
        {
            var (mean, sd) = MomentsOf(shoe, places, foot);
            var (set, scores) = BestSet(eases, mean, foot);
            for (int i = 0; i < Count; i++)
            {
                worse[i] = Math.Min(worse[i], scores[i]);
            }

            pads.AddRange(sets.Sets[set].Select(pad => new PadUnderFoot(foot, pad.Id)));
            criteria.AddRange(Places(eases, foot, mean, sd, set));
        }

        return new PairFit(shoe.Shoe, chanceOfFit, Mean(worse), pads, criteria);
    }

    /// <summary>How it sits with no pads at all.</summary>
    public IReadOnlyList<CriterionFit> WithoutPads(ShoeNumbers shoe)
    {
        double[] eases = Eases(shoe);
        var places = moments.PlacesOf(shoe.Shoe);
        return
        [
            .. Enum.GetValues<Side>().SelectMany(foot =>
            {
                var (mean, sd) = MomentsOf(shoe, places, foot);
                return Places(eases, foot, mean, sd, NoPads);
            }),
        ];
    }

    private IEnumerable<CriterionFit> Places(double[] eases, Side foot, double[] mean, double[] sd, int set)
    {
        for (int c = 0; c < model.Count; c++)
        {
            double ease = mean[c] + sets.Shifts[(set * model.Count) + c];
            double half = sd[c] * HalfOfNinetyPercent;
            yield return new CriterionFit(foot, model.Criteria[c], ease, ease - half, ease + half, MeanDesirability(eases, foot, c, set));
        }
    }

    private double[] Eases(ShoeNumbers shoe)
    {
        double[] eases = new double[2 * model.Count * Count];
        Span<double> difference = stackalloc double[Count];
        for (int c = 0; c < model.Count; c++)
        {
            double form = 0;
            difference.Clear();
            if (model.Rows[c].Part is { } part)
            {
                form = shoe.Shoe.Form[part];
                shoe.Difference((int)part, draws, 0, difference);
            }

            for (int foot = 0; foot < 2; foot++)
            {
                int row = (foot * model.Count) + c;
                var need = draws.Row(row);
                var ease = eases.AsSpan(row * Count, Count);
                for (int i = 0; i < Count; i++)
                {
                    ease[i] = form - need[i] + difference[i];
                }
            }
        }

        return eases;
    }

    private (double[] Mean, double[] Sd) MomentsOf(ShoeNumbers shoe, ShoePlaces places, Side foot)
    {
        double[] mean = new double[model.Count];
        double[] sd = new double[model.Count];
        for (int c = 0; c < model.Count; c++)
        {
            (mean[c], sd[c]) = moments.Of(shoe.Shoe, places, ((int)foot * model.Count) + c);
        }

        return (mean, sd);
    }

    // The set with the highest expected score less its bulk, and the score of each draw with it.
    private (int Set, double[] Scores) BestSet(double[] eases, double[] mean, Side foot)
    {
        var logs = new Dictionary<(int Criterion, double Shift), double[]>();
        int best = -1;
        double bestWorth = double.NegativeInfinity;
        double[] bestScores = [];
        double[] scores = new double[Count];
        for (int set = 0; set < sets.Count; set++)
        {
            if (!IsOffered(set, mean))
            {
                continue;
            }

            scores.AsSpan().Clear();
            for (int c = 0; c < model.Count; c++)
            {
                double shift = sets.Shifts[(set * model.Count) + c];
                if (!logs.TryGetValue((c, shift), out double[]? log))
                {
                    log = WeightedLogs(eases, foot, c, shift);
                    logs[(c, shift)] = log;
                }

                Vectors.AddScaled(scores, log, 1);
            }

            for (int i = 0; i < Count; i++)
            {
                scores[i] = scores[i] == 0 ? 1 : Math.Exp(scores[i]);
            }

            double worth = Mean(scores) - (defaults.PadRules.BulkPenalty * sets.Bulk[set]);
            if (worth > bestWorth)
            {
                (best, bestWorth, bestScores) = (set, worth, [.. scores]);
            }
        }

        return (best, bestScores);
    }

    // A pad can shrink a shoe and never grow it: nothing that is tight already is made tighter.
    private bool IsOffered(int set, double[] mean)
    {
        for (int c = 0; c < model.Count; c++)
        {
            if (sets.Shifts[(set * model.Count) + c] < 0 && mean[c] < model.Criteria[c].IdealFrom)
            {
                return false;
            }
        }

        return true;
    }

    private double[] WeightedLogs(double[] eases, Side foot, int c, double shift)
    {
        var criterion = model.Criteria[c];
        double share = criterion.Weight / _weights;
        double[] logs = new double[Count];
        var ease = eases.AsSpan((((int)foot * model.Count) + c) * Count, Count);
        for (int i = 0; i < Count; i++)
        {
            double desirability = criterion.Desirability(ease[i] + shift);
            logs[i] = desirability == 1 ? 0 : desirability == 0 ? double.NegativeInfinity : share * Math.Log(desirability);
        }

        return logs;
    }

    private double MeanDesirability(double[] eases, Side foot, int c, int set)
    {
        double shift = sets.Shifts[(set * model.Count) + c];
        double sum = 0;
        foreach (double ease in eases.AsSpan((((int)foot * model.Count) + c) * Count, Count))
        {
            sum += model.Criteria[c].Desirability(ease + shift);
        }

        return sum / Count;
    }

    private static double Mean(double[] values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        return sum / values.Length;
    }
}
