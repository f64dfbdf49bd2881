using System.Runtime.Intrinsics;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Scoring;

/// <summary>Keeps of the draws only those in which each pair said to fit fits, and each pair said not to fit does not.</summary>
/// <remarks>
/// "It fits" means with the pads that were stated; "it does not" means with no allowed set. What is left is
/// no Gaussian; its draws are exact, and its mean and covariance serve where a Gaussian is asked for.
/// </remarks>
internal static class TriedVerdicts
{
    // Fewer draws than this say nothing reliable. Then what was said is nearly impossible, and the draws nearest to it are kept.
    private const int Fewest = Draws.CountAfterTryOns / 200;

    // A mean of so many is known to a ninetieth of its spread: finer than any interval is shown.
    private const int EnoughForMoments = 8_192;

    public static (EaseBelief Belief, Draws Draws) Apply(ShortlistQuestion question, EaseBelief belief, Draws draws, PadSets sets)
    {
        var verdicts = question.TryOns.Where(tryOn => tryOn.Fits is not null).ToArray();
        if (verdicts.Length == 0)
        {
            return (belief, draws);
        }

        using (draws)
        {
            var shoes = TriedShoes.Of(question);
            int[] kept = [.. Kept(question, belief, draws, sets, shoes, verdicts)];
            if (kept.Length < Fewest)
            {
                kept = Nearest(question, belief, draws, sets, shoes, verdicts);
            }

            return (belief.With(MomentsOf(draws, [.. kept.Take(EnoughForMoments)], belief.All.Size)), draws.Picked(kept, belief.All.Size));
        }
    }

    // The draws in which all verdicts hold.
    private static IEnumerable<int> Kept(
        ShortlistQuestion question, EaseBelief belief, Draws draws, PadSets sets, Dictionary<string, ShoeOnFile> shoes, TryOn[] verdicts)
    {
        ulong[] kept = new ulong[DrawBits.Words];
        ulong[] fits = new ulong[DrawBits.Words];
        kept.AsSpan().Fill(ulong.MaxValue);
        var anySet = new FitDraws(belief.Model, sets, draws);
        foreach (var verdict in verdicts)
        {
            bool fitted = verdict.Fits == true;
            var judge = fitted ? new FitDraws(belief.Model, StatedPads(belief.Model, verdict, question.Defaults), draws) : anySet;
            judge.Count(ShoeNumbers.Of(shoes[verdict.Sku], belief, question.Defaults), 0, draws.Length, fits);
            for (int i = 0; i < kept.Length; i++)
            {
                kept[i] &= fitted ? fits[i] : ~fits[i];
            }
        }

        return Enumerable.Range(0, draws.Length).Where(draw => DrawBits.Has(kept, draw));
    }

    // Which eases fit with the pads that were under each foot; the feet's own, so left and right have tables of their own.
    private static EaseSteps[][] StatedPads(EaseModel model, TryOn verdict, FitDefaults defaults) =>
    [
        .. Enum.GetValues<Side>().Select(foot =>
        {
            var pads = TriedShoes.PadsUnder(verdict, foot, defaults);
            return model.Criteria.Select(criterion => EaseSteps.Stated(criterion, defaults.FitsFrom, PadSets.ShiftOf(pads, criterion.Id))).ToArray();
        }),
    ];

    // Where what was said is nearly impossible: the draws in which it is least untrue.
    private static int[] Nearest(
        ShortlistQuestion question, EaseBelief belief, Draws draws, PadSets sets, Dictionary<string, ShoeOnFile> shoes, TryOn[] verdicts)
    {
        double[] margins = new double[draws.Length];
        margins.AsSpan().Fill(double.PositiveInfinity);
        double[] margin = new double[draws.Length];
        foreach (var verdict in verdicts)
        {
            var shoe = ShoeNumbers.Of(shoes[verdict.Sku], belief, question.Defaults);
            double[][] stated = [.. Enum.GetValues<Side>().Select(foot => belief.Model.Criteria
                .Select(criterion => PadSets.ShiftOf(TriedShoes.PadsUnder(verdict, foot, question.Defaults), criterion.Id)).ToArray())];
            Margins(belief.Model, shoe, draws, sets, verdict.Fits == true ? stated : null, question.Defaults.FitsFrom, margin);
            for (int i = 0; i < margins.Length; i++)
            {
                margins[i] = Math.Min(margins[i], verdict.Fits == true ? margin[i] : -margin[i]);
            }
        }

        return [.. Enumerable.Range(0, draws.Length).OrderByDescending(i => margins[i]).Take(Fewest).Order()];
    }

    // By how many mm the worse foot is inside what fits: below zero it does not fit. With stated pads, or with the best allowed set.
    private static void Margins(EaseModel model, ShoeNumbers shoe, Draws draws, PadSets sets, double[][]? stated, double fitsFrom, double[] margins)
    {
        int criteria = model.Count;
        double[] differences = new double[ShoeForm.Parts * draws.Length];
        for (int part = 0; part < ShoeForm.Parts; part++)
        {
            shoe.Difference(part, draws, 0, differences.AsSpan(part * draws.Length, draws.Length));
        }

        (double From, double To)[] bands = [.. model.Criteria.Select(criterion => criterion.EasesOf(fitsFrom))];
        double[] eases = new double[criteria];
        for (int i = 0; i < margins.Length; i++)
        {
            // What cannot change the worse foot any more, or the best set of one, is not worked out to its end: the answer is the same.
            double worse = double.PositiveInfinity;
            for (int foot = 0; foot < 2; foot++)
            {
                for (int c = 0; c < criteria; c++)
                {
                    eases[c] = -draws.Row((foot * criteria) + c)[i];
                    if (model.Rows[c].Part is { } part)
                    {
                        eases[c] += shoe.Shoe.Form[part] + differences[((int)part * draws.Length) + i];
                    }
                }

                double best = double.NegativeInfinity;
                if (stated is not null)
                {
                    best = Slack(model, bands, eases, stated[foot], mayOnlyHelp: false, best);
                }
                else
                {
                    for (int set = 0; set < sets.Count && best < worse; set++)
                    {
                        best = Math.Max(best, Slack(model, bands, eases, sets.Shifts.AsSpan(set * criteria, criteria), mayOnlyHelp: true, best));
                    }
                }

                worse = Math.Min(worse, best);
            }

            margins[i] = worse;
        }
    }

    // Where it comes out above what is enough already it is exact; otherwise it is only known to be no more.
    private static double Slack(
        EaseModel model, (double From, double To)[] bands, ReadOnlySpan<double> eases, ReadOnlySpan<double> shifts, bool mayOnlyHelp, double enough)
    {
        double slack = double.PositiveInfinity;
        for (int c = 0; c < eases.Length && slack > enough; c++)
        {
            double ease = eases[c] + shifts[c];
            slack = Math.Min(slack, Math.Min(ease - bands[c].From, bands[c].To - ease));
            if (mayOnlyHelp && shifts[c] < 0)
            {
                slack = Math.Min(slack, eases[c] - model.Criteria[c].IdealFrom);
            }
        }

        return slack;
    }

    private static Gaussian MomentsOf(Draws draws, int[] kept, int size)
    {
        double[] mean = new double[size];
        double[] covariance = new double[size * size];
        double[] centred = new double[size * kept.Length];
        for (int row = 0; row < size; row++)
        {
            var values = draws.Row(row);
            double sum = 0;
            foreach (int i in kept)
            {
                sum += values[i];
            }

            mean[row] = sum / kept.Length;
            for (int i = 0; i < kept.Length; i++)
            {
                centred[(row * kept.Length) + i] = values[kept[i]] - mean[row];
            }
        }

        for (int row = 0; row < size; row++)
        {
            var left = centred.AsSpan(row * kept.Length, kept.Length);
            for (int column = 0; column <= row; column++)
            {
                double product = Product(left, centred.AsSpan(column * kept.Length, kept.Length)) / kept.Length;
                covariance[(row * size) + column] = covariance[(column * size) + row] = product;
            }
        }

        return new Gaussian(mean, covariance);
    }

    // Four sums side by side, in the same order on every machine.
    private static double Product(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        var sums = Vector256<double>.Zero;
        int i = 0;
        for (; i <= left.Length - Vector256<double>.Count; i += Vector256<double>.Count)
        {
            sums += Vector256.Create(left[i..]) * Vector256.Create(right[i..]);
        }

        double sum = sums[0] + sums[1] + (sums[2] + sums[3]);
        for (; i < left.Length; i++)
        {
            sum += left[i] * right[i];
        }

        return sum;
    }
}
