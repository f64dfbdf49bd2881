using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Defaults;

/// <summary>Every number of the fit model that a shop may set itself, described. What a published survey or standard says is not among them.</summary>
public static partial class AdjustableNumbers
{
    private const string LabelSource = "regressions of the women of ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007)";
    private const string ReadingSource = "common practice, guided by Witana et al. 2006 and Lee, Lin and Wang 2014";

    /// <summary>All of them, table by table, in the order in which they are shown.</summary>
    public static IReadOnlyList<AdjustableNumber> All { get; } = [.. Describe()];

    private static Dictionary<string, AdjustableNumber> ByPath { get; } = All.ToDictionary(number => number.Path, StringComparer.Ordinal);

    /// <summary>The number with that path, or null where there is none.</summary>
    public static AdjustableNumber? Find(string path) => ByPath.GetValueOrDefault(path);

    /// <summary>The standard numbers with a shop's own over them. One that makes no sense is left at its default, and told.</summary>
    /// <param name="own">The shop's own values by path.</param>
    public static AdjustedNumbers Over(IReadOnlyDictionary<string, double> own)
    {
        var problems = new List<FitProblem>();
        var taken = new Dictionary<AdjustableNumber, double>();
        foreach (var (path, value) in own.OrderBy(entry => entry.Key, StringComparer.Ordinal))
        {
            if (Find(path) is not { } number)
            {
                problems.Add(new FitProblem(FitProblemCode.UnknownNumber, [path]));
            }
            else if (number.Refuses(value) is { } code)
            {
                problems.Add(new FitProblem(code, [path]));
            }
            else
            {
                taken[number] = value;
            }
        }

        // What makes no sense together is taken back together, until what is left does.
        while (true)
        {
            var numbers = taken.Aggregate(FitDefaults.Standard, (sum, entry) => entry.Key.Set(sum, entry.Value));
            var wrong = taken.Count == 0 ? [] : numbers.Problems();
            if (wrong.Count == 0)
            {
                return new AdjustedNumbers(numbers, problems);
            }

            problems.AddRange(wrong);
            var concerned = wrong.SelectMany(problem => problem.Paths).ToHashSet(StringComparer.Ordinal);
            if (taken.Keys.Where(number => concerned.Contains(number.Path)).ToList() is { Count: > 0 } culprits)
            {
                culprits.ForEach(number => taken.Remove(number));
            }
            else
            {
                taken.Clear();
            }
        }
    }

    private static IEnumerable<AdjustableNumber> Describe() =>
    [
        .. FitDefaults.Standard.Kinds.SelectMany(kind => kind.Criteria.SelectMany(criterion => OfBand(kind.Id, criterion))),
        .. OfScore(),
        .. FitDefaults.Standard.Pads.SelectMany(OfPad),
        .. FitDefaults.Standard.Checks.Where(check => !check.OnlyRecorded).SelectMany(OfCheck),
        .. OfAnswers(),
        .. OfReadings(),
        .. OfFeet(),
        .. OfShankNeed(),
        .. OfGrowth(),
        .. OfForms(),
        .. OfLabels(),
        .. OfSentences(),
    ];

    private static IEnumerable<AdjustableNumber> OfBand(string kind, Criterion standard)
    {
        var unit = standard.Id == "shank" ? NumberUnit.Points : NumberUnit.Millimetres;
        AdjustableNumber Part(string column, NumberUnit of, double lowest, double highest, Func<Criterion, double> get, Func<Criterion, double, Criterion> with) => new(
            $"bands.{kind}",
            standard.Id,
            column,
            of,
            lowest,
            highest,
            numbers => numbers.CriteriaOf(kind)?.Where(criterion => criterion.Id == standard.Id).Select(criterion => (double?)get(criterion)).FirstOrDefault(),
            (numbers, value) => numbers with
            {
                Kinds = Changed(numbers.Kinds, row => row.Id == kind, row => row with
                {
                    Criteria = Changed(row.Criteria, criterion => criterion.Id == standard.Id, criterion => with(criterion, value)),
                }),
            });

        return
        [
            Part("no-fit-below", unit, -60, 60, criterion => criterion.NoFitBelow, (criterion, value) => criterion with { NoFitBelow = value }),
            Part("ideal-from", unit, -60, 60, criterion => criterion.IdealFrom, (criterion, value) => criterion with { IdealFrom = value }),
            Part("ideal-to", unit, -60, 60, criterion => criterion.IdealTo, (criterion, value) => criterion with { IdealTo = value }),
            Part("no-fit-above", unit, -60, 60, criterion => criterion.NoFitAbove, (criterion, value) => criterion with { NoFitAbove = value }),
            Part("weight", NumberUnit.Pure, 0, 20, criterion => criterion.Weight, (criterion, value) => criterion with { Weight = value }),
            Part("ramp-below", NumberUnit.Pure, 0.2, 5, criterion => criterion.ExponentBelow, (criterion, value) => criterion with { ExponentBelow = value }),
            Part("ramp-above", NumberUnit.Pure, 0.2, 5, criterion => criterion.ExponentAbove, (criterion, value) => criterion with { ExponentAbove = value }),
        ];
    }

    private static IEnumerable<AdjustableNumber> OfScore() =>
    [
        One("score", "fits-from", NumberUnit.Share, 0.05, 1, numbers => numbers.FitsFrom, (numbers, value) => numbers with { FitsFrom = value }),
        One("score", "bulk-penalty", NumberUnit.Share, 0, 1, numbers => numbers.PadRules.BulkPenalty, (numbers, value) => numbers with { PadRules = numbers.PadRules with { BulkPenalty = value } }),

        // Seven correcting pads, three at a time, make the 64 sets that can be searched.
        One("score", "most-correcting", NumberUnit.Count, 0, 3, numbers => numbers.PadRules.MostCorrecting, (numbers, value) => numbers with { PadRules = numbers.PadRules with { MostCorrecting = (int)value } }),
    ];

    private static IEnumerable<AdjustableNumber> OfPad(Pad standard)
    {
        AdjustableNumber Part(string column, NumberUnit unit, double lowest, double highest, Func<Pad, double> get, Func<Pad, double, Pad> with) => new(
            "pads",
            standard.Id,
            column,
            unit,
            lowest,
            highest,
            numbers => numbers.FindPad(standard.Id) is { } pad ? get(pad) : null,
            (numbers, value) => numbers with { Pads = Changed(numbers.Pads, pad => pad.Id == standard.Id, pad => with(pad, value)) });

        // A pad takes room and never makes any. Under the toe line it lifts, which is the other way about.
        foreach (string ease in new[] { "length", "box", "ball", "heel", "crown", "toe-line" })
        {
            var (lowest, highest) = ease == "toe-line" ? (0, 20) : (-20, 0);
            yield return Part(ease, NumberUnit.Millimetres, lowest, highest, pad => pad.Effects.GetValueOrDefault(ease), (pad, value) => pad with { Effects = Shifted(pad.Effects, ease, value) });
        }

        yield return Part("bulk", NumberUnit.Pure, 0, 10, pad => pad.Bulk, (pad, value) => pad with { Bulk = value });

        // One that is for comfort only stays so.
        if (standard.Corrects)
        {
            yield return Part("proposed", NumberUnit.YesOrNo, 0, 1, pad => pad.Corrects ? 1 : 0, (pad, value) => pad with { Corrects = value == 1 });
        }
    }

    // A shift of nothing is left out, so that numbers set back to their defaults are the default numbers to the bit.
    private static Dictionary<string, double> Shifted(IReadOnlyDictionary<string, double> effects, string ease, double value)
    {
        var shifted = new Dictionary<string, double>(effects, StringComparer.Ordinal) { [ease] = value };
        if (value == 0)
        {
            shifted.Remove(ease);
        }

        return shifted;
    }

    private static IEnumerable<AdjustableNumber> OfCheck(Check standard)
    {
        var unit = standard.Sees.Any(term => term.Criterion == "shank") ? NumberUnit.Points : NumberUnit.Millimetres;
        AdjustableNumber Part(string column, double lowest, double highest, Func<Check, double> get, Func<Check, double, Check> with) => new(
            "checks",
            standard.Id,
            column,
            unit,
            lowest,
            highest,
            numbers => numbers.FindCheck(standard.Id) is { } check ? get(check) : null,
            (numbers, value) => numbers with { Checks = Changed(numbers.Checks, check => check.Id == standard.Id, check => with(check, value)) });

        return
        [
            Part("first-threshold", -60, 60, check => check.Lower, (check, value) => check with { Lower = value }),
            Part("second-threshold", -60, 60, check => check.Upper, (check, value) => check with { Upper = value }),
            Part("noise", 0.1, 30, check => check.Noise, (check, value) => check with { Noise = value }),
        ];
    }

    private static IEnumerable<AdjustableNumber> OfAnswers() =>
    [
        One("answers", "first-pair-noise", NumberUnit.Times, 1, 10, numbers => numbers.Answers.FirstPairNoise, (numbers, value) => numbers with { Answers = numbers.Answers with { FirstPairNoise = value } }),
        One("answers", "dancers-word-noise", NumberUnit.Times, 1, 10, numbers => numbers.Answers.DancersWordNoise, (numbers, value) => numbers with { Answers = numbers.Answers with { DancersWordNoise = value } }),
        One("answers", "word-lower", NumberUnit.Share, 0.01, 0.99, numbers => numbers.Words.LowerPercentile, (numbers, value) => numbers with { Words = numbers.Words with { LowerPercentile = value } }),
        One("answers", "word-upper", NumberUnit.Share, 0.01, 0.99, numbers => numbers.Words.UpperPercentile, (numbers, value) => numbers with { Words = numbers.Words with { UpperPercentile = value } }),
        One("answers", "word-noise", NumberUnit.Times, 0.05, 5, numbers => numbers.Words.NoiseShare, (numbers, value) => numbers with { Words = numbers.Words with { NoiseShare = value } }),
        One("answers", "gross-chance", NumberUnit.Share, 0.0001, 0.3, numbers => numbers.Gross.Chance, (numbers, value) => numbers with { Gross = numbers.Gross with { Chance = value } }),
        One("answers", "gross-factor", NumberUnit.Times, 2, 1000, numbers => numbers.Gross.SdFactor, (numbers, value) => numbers with { Gross = numbers.Gross with { SdFactor = value } }),
        One("answers", "gross-shared", NumberUnit.Share, 0.0001, 0.3, numbers => numbers.Gross.SharedChance, (numbers, value) => numbers with { Gross = numbers.Gross with { SharedChance = value } }),
        One("answers", "gross-ask-from", NumberUnit.Share, 0.01, 0.99, numbers => numbers.Gross.AskFrom, (numbers, value) => numbers with { Gross = numbers.Gross with { AskFrom = value } }),
    ];

    private static IEnumerable<AdjustableNumber> OfReadings() => Traits.All.Select(trait => new AdjustableNumber(
        "readings",
        trait.Id,
        "sd",
        UnitOf(trait),
        0.05,
        50,
        numbers => numbers.ReadingSd[(int)trait.Trait],
        (numbers, value) => numbers with { ReadingSd = Changed(numbers.ReadingSd, (int)trait.Trait, value) })
    {
        Source = ReadingSource,
    });

    private static AdjustableNumber One(string group, string row, NumberUnit unit, double lowest, double highest, Func<FitDefaults, double> get, Func<FitDefaults, double, FitDefaults> with) =>
        new(group, row, "value", unit, lowest, highest, numbers => get(numbers), with);

    private static NumberUnit UnitOf(TraitRow trait) => trait.Unit switch
    {
        TraitUnit.Degrees => NumberUnit.Degrees,
        TraitUnit.Points => NumberUnit.Points,
        _ => NumberUnit.Millimetres,
    };

    private static IReadOnlyList<T> Changed<T>(IReadOnlyList<T> rows, Func<T, bool> which, Func<T, T> change) =>
        [.. rows.Select(row => which(row) ? change(row) : row)];

    private static IReadOnlyList<double> Changed(IReadOnlyList<double> values, int index, double value) =>
        [.. values.Select((old, i) => i == index ? value : old)];
}
