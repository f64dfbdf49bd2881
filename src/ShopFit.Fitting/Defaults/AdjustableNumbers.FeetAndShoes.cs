using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Defaults;

/// <content>The numbers of feet, of forms and of sentences.</content>
public static partial class AdjustableNumbers
{
    private static IEnumerable<AdjustableNumber> OfFeet()
    {
        foreach (var standard in FitDefaults.Standard.DerivedTraits)
        {
            var trait = Traits.Of(standard.Trait);
            AdjustableNumber Part(string column, NumberUnit unit, double lowest, double highest, Func<DerivedTrait, double> get, Func<DerivedTrait, double, DerivedTrait> with) => new(
                "feet",
                trait.Id,
                column,
                unit,
                lowest,
                highest,
                numbers => numbers.DerivedTraits.Where(row => row.Trait == standard.Trait).Select(row => (double?)get(row)).FirstOrDefault(),
                (numbers, value) => numbers with { DerivedTraits = Changed(numbers.DerivedTraits, row => row.Trait == standard.Trait, row => with(row, value)) });

            yield return Part("constant", UnitOf(trait), -50, 150, row => row.Constant, (row, value) => row with { Constant = value });
            if (standard.Given is not null)
            {
                yield return Part("slope", NumberUnit.PerMillimetre, -2, 2, row => row.Slope, (row, value) => row with { Slope = value });
            }

            yield return Part("sd", UnitOf(trait), 0.1, 60, row => row.SdLeft, (row, value) => row with { SdLeft = value });

            // Traits that go with the length need its own likeness of left and right, which is published; the others stand alone.
            if (standard.Given is null)
            {
                yield return new AdjustableNumber(
                    "feet",
                    trait.Id,
                    "left-right",
                    NumberUnit.Share,
                    0,
                    0.999,
                    numbers => numbers.LeftRightCorrelation[(int)standard.Trait],
                    (numbers, value) => numbers with { LeftRightCorrelation = Changed(numbers.LeftRightCorrelation, (int)standard.Trait, value) });
            }
        }
    }

    private static IEnumerable<AdjustableNumber> OfShankNeed()
    {
        AdjustableNumber Part(string row, NumberUnit unit, double lowest, double highest, Func<EaseRow, double> get, Func<EaseRow, double, EaseRow> with) => new(
            "shank-need",
            row,
            "value",
            unit,
            lowest,
            highest,
            numbers => numbers.Eases.Where(ease => ease.Criterion == "shank").Select(ease => (double?)get(ease)).FirstOrDefault(),
            (numbers, value) => numbers with { Eases = Changed(numbers.Eases, ease => ease.Criterion == "shank", ease => with(ease, value)) });

        AdjustableNumber Factor(string row, Trait trait, NumberUnit unit, double highest) => Part(
            row,
            unit,
            0,
            highest,
            ease => ease.Need.Where(term => term.Trait == trait).Sum(term => term.Factor),
            (ease, value) => ease with { Need = Changed(ease.Need, term => term.Trait == trait, term => term with { Factor = value }) });

        return
        [
            Part("constant", NumberUnit.Points, -20, 20, ease => ease.NeedConstant, (ease, value) => ease with { NeedConstant = value }),
            Factor("strength", Trait.Strength, NumberUnit.Times, 3),
            Factor("point-range", Trait.PointRange, NumberUnit.PointsADegree, 1),
        ];
    }

    private static IEnumerable<AdjustableNumber> OfGrowth() =>
    [
        One("growth", "youngest", NumberUnit.Years, 0, 4, numbers => numbers.Growth.Youngest, (numbers, value) => numbers with { Growth = numbers.Growth with { Youngest = value } }),
        One("growth", "join-from", NumberUnit.Years, 5, 18, numbers => numbers.Growth.JoinFrom, (numbers, value) => numbers with { Growth = numbers.Growth with { JoinFrom = value } }),
        One("growth", "adult-from", NumberUnit.Years, 14, 25, numbers => numbers.Growth.AdultFrom, (numbers, value) => numbers with { Growth = numbers.Growth with { AdultFrom = value } }),
        One("growth", "step-sd", NumberUnit.Share, 0, 3, numbers => numbers.Growth.StepSdShare, (numbers, value) => numbers with { Growth = numbers.Growth with { StepSdShare = value } }),
        One("growth", "sd-a-year", NumberUnit.MillimetresAYear, 0, 20, numbers => numbers.Growth.SdAYear, (numbers, value) => numbers with { Growth = numbers.Growth with { SdAYear = value } }),
    ];

    private static IEnumerable<AdjustableNumber> OfForms()
    {
        AdjustableNumber Part(FormPart part, string column, Func<FormUncertainty, IReadOnlyList<double>> get, Func<FormUncertainty, IReadOnlyList<double>, FormUncertainty> with) => new(
            "forms",
            IdOf(part),
            column,
            part == FormPart.Shank ? NumberUnit.Points : NumberUnit.Millimetres,
            0.05,
            40,
            numbers => get(numbers.FormSds)[(int)part],
            (numbers, value) => numbers with { FormSds = with(numbers.FormSds, Changed(get(numbers.FormSds), (int)part, value)) });

        foreach (var part in Enum.GetValues<FormPart>())
        {
            yield return Part(part, "measured", sds => sds.Measured, (sds, row) => sds with { Measured = row });
            yield return Part(part, "maker", sds => sds.Maker, (sds, row) => sds with { Maker = row });
            yield return Part(part, "label", sds => sds.Label, (sds, row) => sds with { Label = row });
            yield return Part(part, "label-makers-part", sds => sds.LabelMakersPart, (sds, row) => sds with { LabelMakersPart = row });
            yield return Part(part, "pair", sds => sds.PairScatter, (sds, row) => sds with { PairScatter = row });
        }

        yield return One("makers", "shared", NumberUnit.Share, 0, 1, numbers => numbers.FormSds.SharedByMaker, (numbers, value) => numbers with { FormSds = numbers.FormSds with { SharedByMaker = value } });
        yield return One("samples", "asked-again", NumberUnit.Times, 0.5, 5, numbers => numbers.FormSds.SampleAskedAgainFrom, (numbers, value) => numbers with { FormSds = numbers.FormSds with { SampleAskedAgainFrom = value } });
    }

    private static IEnumerable<AdjustableNumber> OfLabels()
    {
        foreach (var part in Enum.GetValues<FormPart>())
        {
            var unit = part == FormPart.Shank ? NumberUnit.Points : NumberUnit.Millimetres;
            var step = part == FormPart.Shank ? NumberUnit.Points : NumberUnit.MillimetresAStep;
            AdjustableNumber Part(string column, NumberUnit of, double lowest, double highest, Func<LabelPart, double> get, Func<LabelPart, double, LabelPart> with) => new(
                "labels",
                IdOf(part),
                column,
                of,
                lowest,
                highest,
                numbers => numbers.Label.Parts.Where(row => row.Part == part).Select(row => (double?)get(row)).FirstOrDefault(),
                (numbers, value) => numbers with { Label = numbers.Label with { Parts = Changed(numbers.Label.Parts, row => row.Part == part, row => with(row, value)) } })
            {
                Source = part is FormPart.BoxBreadth or FormPart.BallGirth or FormPart.HeelBreadth && column is "constant" or "per-length" ? LabelSource : null,
            };

            yield return Part("constant", unit, -100, 150, row => row.Constant, (row, value) => row with { Constant = value });
            yield return Part("per-length", NumberUnit.PerMillimetre, -2, 2, row => row.PerLength, (row, value) => row with { PerLength = value });
            yield return Part("width-step", step, -20, 20, row => row.PerWidthStep, (row, value) => row with { PerWidthStep = value });
            yield return Part("box-step", step, -20, 20, row => row.PerBoxStep, (row, value) => row with { PerBoxStep = value });
            yield return Part("vamp-step", step, -20, 20, row => row.PerVampStep, (row, value) => row with { PerVampStep = value });
        }

        foreach (string system in FitDefaults.Standard.Label.Allowances.Select(row => row.SystemId))
        {
            yield return new AdjustableNumber(
                "allowances",
                system,
                "value",
                NumberUnit.Millimetres,
                -20,
                40,
                numbers => numbers.Label.Allowances.FirstOrDefault(row => row.SystemId == system)?.Millimetres,
                (numbers, value) => numbers with
                {
                    Label = numbers.Label with { Allowances = Changed(numbers.Label.Allowances, row => row.SystemId == system, row => row with { Millimetres = value }) },
                });
        }
    }

    private static IEnumerable<AdjustableNumber> OfSentences()
    {
        AdjustableNumber Rule(string row, NumberUnit unit, double lowest, double highest, Func<SentenceRules, double> get, Func<SentenceRules, double, SentenceRules> with) =>
            One("sentences", row, unit, lowest, highest, numbers => get(numbers.Sentences), (numbers, value) => numbers with { Sentences = with(numbers.Sentences, value) });

        return
        [
            Rule("about-right", NumberUnit.Millimetres, 0, 10, rules => rules.AboutRight, (rules, value) => rules with { AboutRight = value }),
            Rule("a-little", NumberUnit.Millimetres, 0, 20, rules => rules.ALittle, (rules, value) => rules with { ALittle = value }),
            Rule("points-a-millimetre", NumberUnit.Points, 0.05, 5, rules => rules.PointsAMillimetre, (rules, value) => rules with { PointsAMillimetre = value }),
            Rule("very-sure", NumberUnit.Times, 0.05, 5, rules => rules.VerySure, (rules, value) => rules with { VerySure = value }),
            Rule("fairly-sure", NumberUnit.Times, 0.05, 10, rules => rules.FairlySure, (rules, value) => rules with { FairlySure = value }),
            Rule("stands-out", NumberUnit.Share, 0, 1, rules => rules.NothingStandsOut, (rules, value) => rules with { NothingStandsOut = value }),
            Rule("likely", NumberUnit.Share, 0, 1, rules => rules.Likely, (rules, value) => rules with { Likely = value }),
            Rule("even", NumberUnit.Share, 0, 1, rules => rules.Even, (rules, value) => rules with { Even = value }),
            Rule("perhaps", NumberUnit.Share, 0, 1, rules => rules.Perhaps, (rules, value) => rules with { Perhaps = value }),
        ];
    }

    private static string IdOf(FormPart part) => part switch
    {
        FormPart.Length => "length",
        FormPart.BoxBreadth => "box-breadth",
        FormPart.BallGirth => "ball-girth",
        FormPart.HeelBreadth => "heel-breadth",
        FormPart.CrownDepth => "crown-depth",
        FormPart.ToeSlope => "toe-slope",
        FormPart.Vamp => "vamp",
        _ => "shank",
    };
}
