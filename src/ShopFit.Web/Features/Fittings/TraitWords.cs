using Microsoft.Extensions.Localization;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Sentences;

namespace ShopFit.Web.Features.Fittings;

/// <summary>The names of traits, of their three words, and of units, as a fitter says them.</summary>
internal static class TraitWords
{
    /// <summary>The numbers that are read first.</summary>
    public static IReadOnlyList<Trait> Numbers { get; } = [Trait.Length, Trait.BallBreadth];

    /// <summary>What is said in one of three words.</summary>
    public static IReadOnlyList<Trait> InWords { get; } =
        [Trait.ToeSlope, Trait.SecondToeLead, Trait.ForefootDepth, Trait.Squeeze, Trait.PointRange, Trait.Strength];

    /// <summary>What tape and calliper add.</summary>
    public static IReadOnlyList<Trait> More { get; } =
        [Trait.HeelToBall, Trait.BallGirth, Trait.ToeBreadth, Trait.HeelBreadth, Trait.ForefootDepth, Trait.ToeSlope, Trait.SecondToeLead, Trait.Squeeze, Trait.PointRange, Trait.Strength];

    /// <summary>The name: "Length".</summary>
    public static string Name(Trait trait, IStringLocalizer<FittingWords> words) => words[trait switch
    {
        Trait.Length => "Length",
        Trait.HeelToBall => "Heel to ball",
        Trait.BallBreadth => "Ball",
        Trait.BallGirth => "Ball girth",
        Trait.ToeBreadth => "Toe breadth",
        Trait.HeelBreadth => "Heel breadth",
        Trait.ForefootDepth => "Forefoot",
        Trait.ToeSlope => "Toes",
        Trait.SecondToeLead => "Second toe",
        Trait.Squeeze => "Squeeze",
        Trait.PointRange => "Point",
        _ => "Strength",
    }];

    /// <summary>Where it is taken: "heel to toe tip".</summary>
    public static string Where(Trait trait, IStringLocalizer<FittingWords> words) => words[trait switch
    {
        Trait.Length => "heel to toe tip",
        Trait.HeelToBall => "to the big toe joint",
        Trait.BallBreadth => "across the joints",
        Trait.BallGirth => "tape round the joints",
        Trait.ToeBreadth => "at the nail bases",
        Trait.HeelBreadth => "at its widest",
        Trait.ForefootDepth => "height at joints",
        Trait.ToeSlope => "longest to fourth",
        Trait.SecondToeLead => "by the big toe",
        Trait.Squeeze => "by hand",
        Trait.PointRange => "ankle and instep",
        _ => "rising on two feet",
    }];

    /// <summary>The three words, in order.</summary>
    public static IReadOnlyList<string> Choices(Trait trait) => [.. Enumerable.Range(0, 3).Select(word => FitSentences.Word(trait, word))];

    /// <summary>A trait of a foot: "Length, left foot".</summary>
    public static string OfFoot(Trait trait, Side foot, IStringLocalizer<FittingWords> words) =>
        words[foot is Side.Left ? "{0}, left foot" : "{0}, right foot", Name(trait, words)];

    /// <summary>The unit beside a number.</summary>
    public static string Unit(ReadIn readIn, IStringLocalizer<FittingWords> words) => readIn.Unit switch
    {
        ReadingUnit.Inches => words["in"],
        ReadingUnit.Degrees => words["°"],
        ReadingUnit.Points => words["of 10"],
        ReadingUnit.Size => SizeSystemName(readIn.System!.Id, words),
        _ => words["mm"],
    };

    /// <summary>The name of a size system.</summary>
    public static string SizeSystemName(string systemId, IStringLocalizer<FittingWords> words) => words[systemId switch
    {
        "eu" => "EU",
        "uk-adult" => "UK",
        "uk-child" => "UK child",
        "us-men" => "US men",
        "us-women" => "US gauge",
        "us-women-fia" => "US women",
        "us-child" => "US child",
        "mondopoint" => "Mondo",
        "jp" => "JP",
        _ => systemId,
    }];

    /// <summary>A reading as a fitter says it: "238.5 mm", "tapered".</summary>
    public static string Said(Reading reading, IStringLocalizer<FittingWords> words) =>
        reading.Unit is ReadingUnit.Word
            ? Choices(reading.Trait)[(int)reading.Value]
            : words["{0} {1}", ReadIn.Of(reading).ShowTyped(reading.Value), Unit(ReadIn.Of(reading), words)];

    /// <summary>What is wrong with a reading, naming the field, the value and what is allowed.</summary>
    public static string Problem(ReadingProblem problem, Trait trait, Side foot, double value, ReadIn readIn, IStringLocalizer<FittingWords> words)
    {
        var (field, unit) = (OfFoot(trait, foot, words), Unit(readIn, words));
        return problem is { Code: ReadingProblemCode.OutOfRange, Lowest: { } lowest, Highest: { } highest }
            ? words["{0}: {1} {2} is outside what is possible here, {3} to {4}. Nothing was changed.", field, value, unit, lowest, highest]
            : words["{0}: {1} {2} cannot be used here. Nothing was changed.", field, value, unit];
    }
}
