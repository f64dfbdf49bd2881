using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Defaults;

/// <summary>Looks whether numbers of the fit model make sense, each by itself and all together.</summary>
internal static class FitProblems
{
    // One age on each piece of the growth curve and each of its corners; null is grown.
    private static readonly double?[] Ages = [null, 0, 2, 4, 8, 12, 16, 17, 18];

    public static IReadOnlyList<FitProblem> Of(FitDefaults numbers)
    {
        // Tables without their rows cannot be looked into any further.
        var shapes = Shapes(numbers).ToList();
        if (shapes.Count > 0)
        {
            return shapes;
        }

        FitProblem[] problems =
        [
            .. Ranges(numbers), .. numbers.Kinds.SelectMany(Bands), .. numbers.Checks.Where(check => !check.OnlyRecorded).SelectMany(Thresholds), .. Steps(numbers),
            .. Eases(numbers), .. PadSetsOf(numbers), .. Correlations(numbers),
        ];

        // The covariance of numbers that are none says nothing more.
        return problems.Length > 0 ? problems : [.. Covariances(numbers)];
    }

    private static IEnumerable<FitProblem> Shapes(FitDefaults numbers)
    {
        int surveyed = SurveyedFeet.SurveyTraits.Count;
        (string Table, bool Good)[] tables =
        [
            ("adults", numbers.Adults.Count == 2 && numbers.Adults.All(adults =>
                adults.Means.Count == surveyed && adults.Sds.Count == surveyed && adults.Correlations.Count == surveyed * surveyed)),
            ("left-right", numbers.LeftRightCorrelation.Count == Traits.Count),
            ("readings", numbers.ReadingSd.Count == Traits.Count),
            ("feet", SurveyedFeet.SurveyTraits.Concat(numbers.DerivedTraits.Select(row => row.Trait)).Order().SequenceEqual(Enum.GetValues<Trait>())),
            ("labels", numbers.Label.Parts.Select(row => row.Part).SequenceEqual(Enum.GetValues<FormPart>())),
            ("forms", new[] { numbers.FormSds.Measured, numbers.FormSds.Maker, numbers.FormSds.Label, numbers.FormSds.LabelMakersPart, numbers.FormSds.PairScatter }
                .All(row => row.Count == ShoeForm.Parts)),
            ("growth", numbers.Growth.Girls.Count > 1 && numbers.Growth.Boys.Count > 1),
            ("bands", numbers.Kinds.Count > 0 && numbers.Kinds.All(kind => kind.Criteria.Count > 0)),
        ];
        return tables.Where(table => !table.Good).Select(table => new FitProblem(FitProblemCode.WrongShape, [table.Table]));
    }

    private static IEnumerable<FitProblem> Ranges(FitDefaults numbers) =>
        from number in AdjustableNumbers.All
        let value = number.In(numbers)
        where value is not null
        let code = number.Refuses(value.Value)
        where code is not null
        select new FitProblem(code.Value, [number.Path]);

    private static IEnumerable<FitProblem> Bands(FootwearKind kind)
    {
        string[] PathsOf(Criterion criterion, params string[] columns) => [.. columns.Select(column => $"bands.{kind.Id}.{criterion.Id}.{column}")];
        foreach (var criterion in kind.Criteria)
        {
            // What is not a number is in no order either.
            if (!(criterion.NoFitBelow <= criterion.IdealFrom && criterion.IdealFrom <= criterion.IdealTo && criterion.IdealTo <= criterion.NoFitAbove))
            {
                yield return new FitProblem(FitProblemCode.LimitsOutOfOrder, PathsOf(criterion, "no-fit-below", "ideal-from", "ideal-to", "no-fit-above"));
            }
            else if (!double.IsPositiveInfinity(criterion.IdealTo) && double.IsPositiveInfinity(criterion.NoFitAbove))
            {
                yield return new FitProblem(FitProblemCode.RampWithoutEnd, PathsOf(criterion, "ideal-to", "no-fit-above"));
            }
        }

        if (!(kind.Criteria.Sum(criterion => criterion.Weight) > 0))
        {
            yield return new FitProblem(FitProblemCode.NothingCounts, [.. kind.Criteria.SelectMany(criterion => PathsOf(criterion, "weight"))]);
        }
    }

    private static IEnumerable<FitProblem> Thresholds(TryOns.Check check) => check.Lower < check.Upper
        ? []
        : [new FitProblem(FitProblemCode.ThresholdsOutOfOrder, [$"checks.{check.Id}.first-threshold", $"checks.{check.Id}.second-threshold"])];

    private static IEnumerable<FitProblem> Steps(FitDefaults numbers)
    {
        var (words, growth, sentences) = (numbers.Words, numbers.Growth, numbers.Sentences);
        if (!(words.LowerPercentile < words.UpperPercentile))
        {
            yield return new FitProblem(FitProblemCode.ThresholdsOutOfOrder, ["answers.word-lower.value", "answers.word-upper.value"]);
        }

        (bool Good, string Group, string[] Rows)[] steps =
        [
            (growth.JoinFrom < growth.AdultFrom, "growth", ["join-from", "adult-from"]),
            (sentences.AboutRight <= sentences.ALittle, "sentences", ["about-right", "a-little"]),
            (sentences.VerySure <= sentences.FairlySure, "sentences", ["very-sure", "fairly-sure"]),
            (sentences.Perhaps <= sentences.Even && sentences.Even <= sentences.Likely, "sentences", ["perhaps", "even", "likely"]),
        ];
        foreach (var (_, group, rows) in steps.Where(step => !step.Good))
        {
            yield return new FitProblem(FitProblemCode.StepsOutOfOrder, [.. rows.Select(row => $"{group}.{row}.value")]);
        }
    }

    private static IEnumerable<FitProblem> Eases(FitDefaults numbers)
    {
        var known = numbers.Eases.Select(row => row.Criterion).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. from kind in numbers.Kinds from criterion in kind.Criteria where !known.Contains(criterion.Id) select new FitProblem(FitProblemCode.UnknownEase, [$"bands.{kind.Id}.{criterion.Id}"]),
            .. from pad in numbers.Pads from effect in pad.Effects where !known.Contains(effect.Key) select new FitProblem(FitProblemCode.UnknownEase, [$"pads.{pad.Id}.{effect.Key}"]),
            .. from pad in numbers.Pads from effect in pad.Effects where !double.IsFinite(effect.Value) select new FitProblem(FitProblemCode.NotFinite, [$"pads.{pad.Id}.{effect.Key}"]),
            .. from check in numbers.Checks from term in check.Sees where !known.Contains(term.Criterion) select new FitProblem(FitProblemCode.UnknownEase, [$"checks.{check.Id}"]),
        ];
    }

    private static IEnumerable<FitProblem> PadSetsOf(FitDefaults numbers)
    {
        int pads = numbers.Pads.Count(pad => pad.Corrects);
        double sets = 0;
        double ways = 1;
        for (int taken = 0; taken <= Math.Min(numbers.PadRules.MostCorrecting, pads); taken++)
        {
            sets += ways;
            ways = ways * (pads - taken) / (taken + 1);
        }

        return sets <= PadSets.Most ? [] : [new FitProblem(FitProblemCode.TooManyPadSets, ["score.most-correcting.value"])];
    }

    private static IEnumerable<FitProblem> Correlations(FitDefaults numbers)
    {
        int count = SurveyedFeet.SurveyTraits.Count;
        bool AreGood(SurveyedFeet adults) =>
            adults.Sds.All(sd => double.IsFinite(sd) && sd > 0)
            && Enumerable.Range(0, count * count).All(place => place / count == place % count ? adults.Correlations[place] == 1 : IsCorrelation(adults.Correlations[place]));

        bool bothFeet = numbers.LeftRightCorrelation.All(value => IsCorrelation(value) && value >= 0);
        return
        [
            .. numbers.Adults.All(AreGood) ? Array.Empty<FitProblem>() : [new FitProblem(FitProblemCode.NoCorrelation, ["adults"])],
            .. bothFeet ? Array.Empty<FitProblem>() : [new FitProblem(FitProblemCode.NoCorrelation, ["left-right"])],
        ];
    }

    private static bool IsCorrelation(double value) => value is > -1 and < 1;

    private static IEnumerable<FitProblem> Covariances(FitDefaults numbers)
    {
        foreach (var sex in Enum.GetValues<Sex>())
        {
            foreach (double? age in Ages)
            {
                var population = Population.Of(sex, age, numbers);
                if (!IsPositiveDefinite(population))
                {
                    return [new FitProblem(FitProblemCode.NotPositiveDefinite, [.. AdjustableNumbers.All.Where(number => number.Group is "feet").Select(number => number.Path)])];
                }
            }
        }

        return [];
    }

    private static bool IsPositiveDefinite(Gaussian population)
    {
        try
        {
            double[] lower = Vectors.Cholesky(population.Covariance, population.Size);
            return Enumerable.Range(0, population.Size).All(i => lower[(i * population.Size) + i] > 0);
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
