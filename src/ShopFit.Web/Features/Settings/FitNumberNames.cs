using System.Globalization;
using Microsoft.Extensions.Localization;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Sentences;

namespace ShopFit.Web.Features.Settings;

/// <summary>The fit numbers as a fitter calls them, and how their values are written and read.</summary>
public sealed class FitNumberNames(IStringLocalizer<FitNumberWords> words)
{
    private const string Bands = "bands.";
    private const double Least = 0.00005;

    /// <summary>A kind of footwear: "Soft ballet shoes".</summary>
    public string Kind(string kind) => KindNames.Of(kind, words);

    /// <summary>The kind of footwear that a table speaks of; where it speaks of all, pointe.</summary>
    public static string KindOf(string group) => group.StartsWith(Bands, StringComparison.Ordinal) ? group[Bands.Length..] : Catalogue.FootwearKinds.Pointe;

    /// <summary>What kind of table it is, so that tables of one kind stand together.</summary>
    public string Part(string group) => group switch
    {
        "score" or "pads" => words["Fit and pads"],
        "checks" or "answers" or "readings" => words["What is read and seen"],
        "feet" or "shank-need" or "growth" => words["Feet"],
        "forms" or "makers" or "samples" or "labels" or "allowances" => words["Shoes"],
        "sentences" => words["Words on the screen"],
        _ => words["Where a shoe should sit"],
    };

    /// <summary>The name of a table.</summary>
    public string Table(string group) => group switch
    {
        "score" => words["Fit and padding"],
        "pads" => words["Pads"],
        "checks" => words["Checks at a try-on"],
        "answers" => words["Answers, words and misreadings"],
        "readings" => words["How exact a reading is"],
        "feet" => words["Places that nobody measured"],
        "shank-need" => words["The shank that a foot needs"],
        "growth" => words["Growing feet"],
        "forms" => words["How far a real pair is from its form on file"],
        "makers" => words["What the models of a maker share"],
        "samples" => words["Samples that are measured once more"],
        "labels" => words["The inside that a label implies"],
        "allowances" => words["Shorter than the label"],
        "sentences" => words["Likely, a little, very sure"],
        _ => KindNames.Of(group[Bands.Length..], words),
    };

    /// <summary>What the numbers of a table do, in plain words.</summary>
    public string About(string group) => group switch
    {
        "score" => words["From which mark on a place counts as fitting, what padding costs, and how many pads may correct a foot. A higher mark makes every chance of fit smaller."],
        "pads" => words["How much room each pad takes away at a place, and how far it lifts the toe line. A pad that is not proposed may still be used and written down."],
        "checks" => words["Up to which ease the first answer is given, from which ease the third, and how far off an answer may be. A smaller spread makes an answer count for more."],
        "answers" => words["How far the three words reach, how much less an answer counts at a first pair or as the dancer’s own word, and when a reading is asked for once more."],
        "readings" => words["Two of three readings of the same foot lie this close to the truth. A smaller number trusts the tape more and the guess less."],
        "feet" => words["A place is guessed from what was measured: a start, and more for each mm of the place beside it. The spread says how far off the guess may be."],
        "shank-need" => words["A stiff shank needs a strong foot: a start, and more for each point of strength and each degree of pointing."],
        "growth" => words["How a foot measured some time ago is carried on to today, and how unsure that makes us."],
        "forms" => words["Smaller spreads make the shortlist surer of itself. Too small, and it is sure of what is not so."],
        "samples" => words["A pair that the shop measures on the inside is asked for once more where it lies this far from what its label says."],
        "makers" => words["How much of what is unknown about a model is the maker’s habit, so that one pair tried on tells of all others."],
        "labels" => words["What is taken for the inside of a shoe that nobody measured: a start, more for each mm of foot, and more for each step of the label."],
        "allowances" => words["How much shorter on the inside a shoe is than the foot that its size names."],
        "sentences" => words["From where on the screens say likely, about right or very sure. The numbers behind the words stay as they are."],
        _ => words["Ease is the room in the shoe less what the foot needs. In the ideal part a place is right; at either end the shoe does not fit; between them it counts less and less. More weight makes a place matter more in the order of the shortlist."],
    };

    /// <summary>The name of a row.</summary>
    public string Row(string group, string row) => (group, row) switch
    {
        ("score", "fits-from") => words["A place fits from this mark on"],
        ("score", "bulk-penalty") => words["A unit of padding costs this much score"],
        ("score", "most-correcting") => words["Correcting pads under a foot, at most"],
        ("pads", _) => Capital(FitSentences.Pad(row)),
        ("checks", _) => FitSentences.Check(row),
        ("answers", "first-pair-noise") => words["At a first pair an answer may be off by more"],
        ("answers", "dancers-word-noise") => words["As the dancer’s own word it may be off by more"],
        ("answers", "word-lower") => words["Share of feet below the middle word"],
        ("answers", "word-upper") => words["Share of feet up to the end of the middle word"],
        ("answers", "word-noise") => words["How far off a word may be, in spreads of all feet"],
        ("answers", "gross-chance") => words["How often a reading is grossly wrong"],
        ("answers", "gross-factor") => words["How much further off it is then"],
        ("answers", "gross-shared") => words["How often all readings of one trait are wrong alike"],
        ("answers", "gross-ask-from") => words["Ask for a reading again from this chance on that it is wrong"],
        ("shank-need", "constant") => words["To start with"],
        ("shank-need", "strength") => words["For each point of strength"],
        ("shank-need", "point-range") => words["For each degree of pointing"],
        ("growth", "youngest") => words["A younger child counts as this old"],
        ("growth", "join-from") => words["Up to this age the children’s survey holds"],
        ("growth", "adult-from") => words["From this age on the adults’ survey holds"],
        ("growth", "step-sd") => words["How unsure a step of growth is, as a share of it"],
        ("growth", "sd-a-year") => words["How unsure the length gets besides, each year"],
        ("samples", _) => words["Times what the label leaves open"],
        ("makers", _) => words["Share that is the maker’s"],
        ("allowances", _) => SizeSystem(row),
        ("sentences", "about-right") => words["“About right” up to this far outside the ideal part"],
        ("sentences", "a-little") => words["“A little” up to this far outside"],
        ("sentences", "points-a-millimetre") => words["Points of a shank that count like a millimetre"],
        ("sentences", "very-sure") => words["“Very sure” while the interval is at most so many bands wide"],
        ("sentences", "fairly-sure") => words["“Fairly sure” while it is at most so many bands wide"],
        ("sentences", "stands-out") => words["A place is spoken of below this mark"],
        ("sentences", "likely") => words["“Likely” from this chance on"],
        ("sentences", "even") => words["“Even” from this chance on"],
        ("sentences", "perhaps") => words["“Perhaps” from this chance on"],
        ("forms" or "labels", _) => FormPart(row),
        ("feet" or "readings", _) when Traits.Find(row) is { } trait => FitSentences.TraitName(trait.Trait),
        _ when group.StartsWith(Bands, StringComparison.Ordinal) => FitSentences.Criterion(row),
        _ => row,
    };

    /// <summary>The name of a column.</summary>
    public string Column(string group, string column) => (group, column) switch
    {
        (_, "no-fit-below") => words["No fit below"],
        (_, "ideal-from") => words["Ideal from"],
        (_, "ideal-to") => words["Ideal to"],
        (_, "no-fit-above") => words["No fit above"],
        (_, "weight") => words["Weight"],
        (_, "ramp-below") => words["Steepness below"],
        (_, "ramp-above") => words["Steepness above"],
        (_, "bulk") => words["Bulk"],
        (_, "proposed") => words["Proposed"],
        (_, "first-threshold") => words["First answer up to"],
        (_, "second-threshold") => words["Third answer from"],
        (_, "noise") => words["Spread of an answer"],
        ("readings", "sd") => words["Spread of a reading"],
        (_, "sd") => words["Spread"],
        (_, "constant") => words["To start with"],
        (_, "slope") => words["For each mm of the place beside it"],
        (_, "left-right") => words["Left like right"],
        (_, "measured") => words["Measured here"],
        (_, "maker") => words["The maker’s data"],
        (_, "label") => words["The label alone: the model’s part"],
        (_, "label-makers-part") => words["The label alone: the maker’s part"],
        (_, "pair") => words["From pair to pair"],
        (_, "per-length") => words["For each mm of foot"],
        (_, "width-step") => words["A width step"],
        (_, "box-step") => words["A box step"],
        (_, "vamp-step") => words["A vamp step"],
        ("pads", _) => FitSentences.Criterion(column),
        _ => words["Value"],
    };

    /// <summary>A number by all its names: "Pointe shoes: Length, ideal from".</summary>
    public string Of(string path)
    {
        var number = AdjustableNumbers.Find(path);
        return number is null ? path : words["{0}: {1}", Table(number.Group), Cell(number)];
    }

    /// <summary>A number within its table: "Length, ideal from".</summary>
    public string Cell(AdjustableNumber number) => number.Column is "value"
        ? Row(number.Group, number.Row)
        : words["{0}, {1}", Row(number.Group, number.Row), Small(Column(number.Group, number.Column))];

    /// <summary>The unit, as it stands behind a value; empty where there is none.</summary>
    public string Unit(NumberUnit unit) => unit switch
    {
        NumberUnit.Millimetres => words["mm"],
        NumberUnit.Points => words["points"],
        NumberUnit.Degrees => words["degrees"],
        NumberUnit.Times => words["times"],
        NumberUnit.PerMillimetre => words["mm a mm"],
        NumberUnit.PointsADegree => words["points a degree"],
        NumberUnit.MillimetresAStep => words["mm a step"],
        NumberUnit.MillimetresAYear => words["mm a year"],
        NumberUnit.Years => words["years"],
        _ => "",
    };

    /// <summary>A value without its unit: "−1.5", "yes", "no end".</summary>
    public string Value(AdjustableNumber number, double value) => number.Unit is NumberUnit.YesOrNo
        ? (value == 1 ? words["yes"] : words["no"])
        : double.IsPositiveInfinity(value) ? words["no end"]
        : Math.Abs(value) is > 0 and < Least ? value.ToString("G3", CultureInfo.CurrentCulture)
        : value.ToString("0.####", CultureInfo.CurrentCulture).Replace(CultureInfo.CurrentCulture.NumberFormat.NegativeSign, "−", StringComparison.Ordinal);

    /// <summary>A value with its unit: "−1.5 mm".</summary>
    public string ValueWithUnit(AdjustableNumber number, double value)
    {
        var unit = double.IsFinite(value) ? Unit(number.Unit) : "";
        return unit.Length == 0 ? Value(number, value) : words["{0} {1}", Value(number, value), unit];
    }

    /// <summary>A value that stands in the history: its own text, made readable where the number still exists.</summary>
    public string Kept(string path, string? text)
    {
        var number = AdjustableNumbers.Find(path);
        return text is null ? (number is null ? "" : words["the default, {0}", ValueWithUnit(number, number.Default)])
            : number is not null && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? ValueWithUnit(number, value)
            : text;
    }

    /// <summary>Reads what was typed for a number; false where it is none.</summary>
    public bool TryRead(AdjustableNumber number, string typed, out double value)
    {
        if (number.MayBeEndless && (typed.Trim() is "∞" || string.Equals(typed.Trim(), words["no end"], StringComparison.OrdinalIgnoreCase)))
        {
            value = double.PositiveInfinity;
            return true;
        }

        if (number.Unit is NumberUnit.YesOrNo)
        {
            value = typed == words["yes"] ? 1 : 0;
            return true;
        }

        return TypedNumber.TryRead(typed, out value);
    }

    /// <summary>What is allowed: "−60 to 60 mm".</summary>
    public string Range(AdjustableNumber number)
    {
        var range = words["{0} to {1}", Value(number, number.Lowest), ValueWithUnit(number, number.Highest)].Value;
        return number.MayBeEndless ? words["{0}, or “no end”", range] : range;
    }

    /// <summary>Why what was typed is no number.</summary>
    public string NotRead(AdjustableNumber number, string typed) =>
        words["{0}: “{1}” is not a number. Type {2}.", Cell(number), typed, Range(number)];

    /// <summary>Why numbers make no sense, naming them and what is allowed.</summary>
    public string Problem(FitProblem problem)
    {
        var numbers = problem.Paths.Select(AdjustableNumbers.Find).OfType<AdjustableNumber>().ToList();
        var first = numbers.FirstOrDefault();
        var row = first is null ? string.Join(", ", problem.Paths) : Row(first.Group, first.Row);
        return problem.Code switch
        {
            FitProblemCode.NotFinite or FitProblemCode.OutOfRange when first is not null => words["{0}: {1} is allowed.", Cell(first), Range(first)],
            FitProblemCode.NotWhole when first is not null => words["{0}: a whole number, {1}.", Cell(first), Range(first)],
            FitProblemCode.LimitsOutOfOrder => words["{0}: the four limits must rise, from no fit below over ideal from and ideal to to no fit above.", row],
            FitProblemCode.RampWithoutEnd => words["{0}: where the ideal part ends, give no fit above an end too.", row],
            FitProblemCode.NothingCounts => words["{0}: at least one place needs a weight above 0.", first is null ? row : Table(first.Group)],
            FitProblemCode.ThresholdsOutOfOrder or FitProblemCode.StepsOutOfOrder => words["These must rise: {0}.", string.Join(", ", numbers.Select(Cell))],
            FitProblemCode.NotPositiveDefinite or FitProblemCode.NoCorrelation => words["No feet can vary like this: a spread is too small for what it goes with."],
            FitProblemCode.TooManyPadSets => words["{0}: that makes more sets of pads than can be searched. Propose fewer pads, or fewer at a time.", Row("score", "most-correcting")],
            FitProblemCode.UnknownNumber => words["“{0}” is no number that this version knows.", row],
            FitProblemCode.NotANumber when problem.Paths.Count == 0 => words["The shop’s own numbers cannot be read at all."],
            FitProblemCode.NotANumber => words["{0}: what is kept there is not a number.", first is null ? row : Of(first.Path)],
            _ => words["{0} makes no sense.", row],
        };
    }

    private string FormPart(string part) => part switch
    {
        "length" => words["Length inside"],
        "box-breadth" => words["Breadth of the box"],
        "ball-girth" => words["Girth at the joints"],
        "heel-breadth" => words["Breadth of the heel"],
        "crown-depth" => words["Height of the box"],
        "toe-slope" => words["Slope of the box"],
        "vamp" => words["Vamp"],
        _ => words["Shank"],
    };

    /// <summary>The name of a size system.</summary>
    public string SizeSystem(string id) => id switch
    {
        "eu" => words["EU sizes"],
        "uk-adult" => words["UK sizes"],
        "uk-child" => words["UK children’s sizes"],
        "us-men" => words["US men’s sizes"],
        "us-women" => words["US women’s sizes, as on the sliding gauge"],
        "us-women-fia" => words["US women’s sizes, one off the men’s"],
        "us-child" => words["US children’s sizes"],
        "mondopoint" => words["Foot length in mm"],
        "jp" => words["Foot length in cm, as in Japan"],
        _ => id,
    };

    private static string Capital(string text) => CultureInfo.CurrentUICulture.TextInfo.ToUpper(text[0]) + text[1..];

    private static string Small(string text) => CultureInfo.CurrentUICulture.TextInfo.ToLower(text[0]) + text[1..];
}
