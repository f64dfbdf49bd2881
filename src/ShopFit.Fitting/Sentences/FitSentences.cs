using System.Globalization;
using System.Resources;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Sentences;

/// <summary>Puts the numbers of a fit into plain words, in the current UI culture; numbers in them follow the current culture.</summary>
/// <remarks>A name that a shop made up itself, of a pad or a check, is answered as it is.</remarks>
public static class FitSentences
{
    private static readonly ResourceManager Words = new("ShopFit.Fitting.Sentences.FitSentences", typeof(FitSentences).Assembly);

    /// <summary>The name of a criterion as a fitter says it: "Length", "Outer toes".</summary>
    public static string Criterion(string criterionId) => Named("Criterion", criterionId);

    /// <summary>How one place sits and how sure we are: "2 mm long, fairly sure"; "about right, very sure".</summary>
    /// <remarks>The millimetres are those outside the ideal band: joints that are 2 mm too tight may have an ease of −7 mm.</remarks>
    /// <param name="fit">The place.</param>
    /// <param name="defaults">The numbers of the shop; null: the standard ones.</param>
    public static string Ease(CriterionFit fit, FitDefaults? defaults = null)
    {
        var numbers = defaults ?? FitDefaults.Standard;
        return Format("Ease", Sits(fit, numbers.Sentences), Sureness(fit, numbers));
    }

    /// <summary>How one place sits, without how sure we are: "2 mm long".</summary>
    public static string Sits(CriterionFit fit, SentenceRules rules)
    {
        var criterion = fit.Criterion;
        double below = criterion.IdealFrom - fit.Ease;
        double above = fit.Ease - criterion.IdealTo;
        double miss = Math.Max(below, above);
        double unit = criterion.Id == "shank" ? rules.PointsAMillimetre : 1;
        if (miss < rules.AboutRight * unit)
        {
            return Text("Ease.right");
        }

        string side = $"{(below > above ? "Below" : "Above")}.{criterion.Id}";
        return miss < rules.ALittle * unit ? Text(side + ".little") : Format(side, miss);
    }

    /// <summary>The word at an end of a criterion's strip: "tight", "long", "soft".</summary>
    /// <param name="criterionId">Which criterion.</param>
    /// <param name="above">Whether the end of too much ease is meant.</param>
    public static string End(string criterionId, bool above) => Text($"{(above ? "Above" : "Below")}.{criterionId}.end");

    /// <summary>A chance as a word: likely, even, perhaps, unlikely.</summary>
    public static string ChanceWord(double chance, FitDefaults? defaults = null)
    {
        var rules = (defaults ?? FitDefaults.Standard).Sentences;
        return Text(
            chance >= rules.Likely ? "Chance.likely"
            : chance >= rules.Even ? "Chance.even"
            : chance >= rules.Perhaps ? "Chance.perhaps"
            : "Chance.unlikely");
    }

    /// <summary>A chance out of ten: "7 in 10", "less than 1 in 10".</summary>
    public static string ChanceInTen(double chance) =>
        chance < 0.1 ? Text("InTen.less")
        : chance > 0.9 ? Text("InTen.more")
        : Format("InTen", Math.Round(chance * 10, MidpointRounding.AwayFromZero));

    /// <summary>The name of a pad: "heel cushion".</summary>
    public static string Pad(string padId) => Named("Pad", padId);

    /// <summary>The name of a trait as it stands beside its reading: "Length", "Forefoot".</summary>
    public static string TraitName(Trait trait) => Named("Trait", Traits.Of(trait).Id);

    /// <summary>One of the three words for a trait: "square", "medium", "tapered".</summary>
    /// <exception cref="ArgumentOutOfRangeException">The trait takes no words, or the word is not 0, 1 or 2.</exception>
    public static string Word(Trait trait, int word) =>
        Words.GetString($"Word.{Traits.Of(trait).Id}.{Number(word)}", CultureInfo.CurrentUICulture)
        ?? throw new ArgumentOutOfRangeException(nameof(word), word, $"{trait} has no such word.");

    /// <summary>The name of a check: "Heel fabric".</summary>
    public static string Check(string checkId) => Named("Check", checkId);

    /// <summary>One of the three answers to a check: "pressed", "lie long", "room at the side".</summary>
    public static string Answer(string checkId, int answer) => Named("Check", $"{checkId}.{Number(answer)}");

    /// <summary>How the dancer stands: "en pointe".</summary>
    public static string Position(TryOnPosition position) => Text($"Position.{position}");

    /// <summary>Which foot, in a sentence: "left".</summary>
    public static string Foot(Side foot) => Text($"Foot.{foot}");

    /// <summary>One sentence why this pair stands where it stands.</summary>
    public static string Reason(PairFit fit, FitDefaults? defaults = null)
    {
        var numbers = defaults ?? FitDefaults.Standard;
        string word = Capitalised(ChanceWord(fit.ChanceOfFit, numbers));
        string inTen = ChanceInTen(fit.ChanceOfFit);
        var worst = fit.WorstFirst().FirstOrDefault();
        return worst is null || worst.Desirability >= numbers.Sentences.NothingStandsOut
            ? Format("Reason.right", word, inTen)
            : Format("Reason", word, inTen, CultureInfo.CurrentUICulture.TextInfo.ToLower(Criterion(worst.Criterion.Id)), Foot(worst.Foot), Ease(worst, numbers));
    }

    /// <summary>How another shoe differs, said of that shoe: "2 mm longer, a little narrower at the heel"; "the same inside".</summary>
    /// <remarks>Differences that nobody would feel are not said.</remarks>
    public static string Differences(IEnumerable<FormDifference> differences, FitDefaults? defaults = null)
    {
        var rules = (defaults ?? FitDefaults.Standard).Sentences;
        string[] said = [.. differences.Select(difference => Difference(difference, rules)).OfType<string>()];
        return said.Length == 0 ? Text("Differences.none") : string.Join(Text("Differences.between"), said);
    }

    /// <summary>One sentence why a pair is the one to try next: what was amiss with the last, how this one differs, what it would tell.</summary>
    /// <remarks>Where nothing was tried, the sentence of a shortlist.</remarks>
    /// <param name="fit">The pair.</param>
    /// <param name="step">Its step in <see cref="NextPair"/>.</param>
    /// <param name="defaults">The numbers of the shop; null: the standard ones.</param>
    public static string NextReason(PairFit fit, NextStep step, FitDefaults? defaults = null)
    {
        var numbers = defaults ?? FitDefaults.Standard;
        if (step.Differences.Count == 0)
        {
            return Reason(fit, numbers);
        }

        string word = Capitalised(ChanceWord(fit.ChanceOfFit, numbers));
        string inTen = ChanceInTen(fit.ChanceOfFit);
        string differs = Differences(step.Differences, numbers);
        string[] amiss = [.. step.Amiss.Select(place => Amiss(place, numbers.Sentences)).OfType<string>()];
        string reason = amiss.Length == 0
            ? Format("Next.noFault", word, inTen, differs)
            : Format("Next", word, inTen, string.Join(Text("Next.and"), amiss), differs);
        return step.TellsMostOf is { } open
            ? Format("Next.tells", reason, CultureInfo.CurrentUICulture.TextInfo.ToLower(Criterion(open.Criterion.Id)), Foot(open.Foot))
            : reason;
    }

    // What is so little off that nobody would say it is not said.
    private static string? Amiss(CriterionFit place, SentenceRules rules)
    {
        double below = place.Criterion.IdealFrom - place.Ease;
        double above = place.Ease - place.Criterion.IdealTo;
        double unit = place.Criterion.Id == "shank" ? rules.PointsAMillimetre : 1;
        return Math.Max(below, above) < rules.AboutRight * unit ? null : Text($"{(below > above ? "Below" : "Above")}.{place.Criterion.Id}.amiss");
    }

    private static string? Difference(FormDifference difference, SentenceRules rules)
    {
        double unit = difference.CriterionId == "shank" ? rules.PointsAMillimetre : 1;
        double size = Math.Abs(difference.Difference);
        string key = $"{(difference.Difference > 0 ? "More" : "Less")}.{difference.CriterionId}";
        return size < rules.AboutRight * unit ? null
            : size < rules.ALittle * unit ? Text(key + ".little")
            : Format(key, size);
    }

    private static string Sureness(CriterionFit fit, FitDefaults numbers)
    {
        var (from, to) = fit.Criterion.EasesOf(numbers.FitsFrom);

        // A band without an end is as wide, for this purpose, as a ramp that leads into it; where nothing is too much or too little, all is sure.
        double[] widths = [to - from, fit.Criterion.IdealFrom - fit.Criterion.NoFitBelow, fit.Criterion.NoFitAbove - fit.Criterion.IdealTo];
        double width = widths.FirstOrDefault(double.IsFinite, double.PositiveInfinity);
        double share = (fit.High - fit.Low) / width;
        return Text(
            share <= numbers.Sentences.VerySure ? "Sure.very"
            : share <= numbers.Sentences.FairlySure ? "Sure.fairly"
            : "Sure.not");
    }

    private static string Named(string group, string id) => Words.GetString($"{group}.{id}", CultureInfo.CurrentUICulture) ?? id;

    private static string Text(string key) =>
        Words.GetString(key, CultureInfo.CurrentUICulture) ?? throw new ArgumentException($"There are no words for '{key}'.", nameof(key));

    private static string Format(string key, params object[] values) => string.Format(CultureInfo.CurrentCulture, Text(key), values);

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Capitalised(string word) => CultureInfo.CurrentUICulture.TextInfo.ToUpper(word[0]) + word[1..];
}
