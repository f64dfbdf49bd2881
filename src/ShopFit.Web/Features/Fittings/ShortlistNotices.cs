using System.Globalization;
using System.Resources;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Sentences;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What has to be said beside a shortlist, for pages and programs alike.</summary>
public static class ShortlistNotices
{
    public const string ForLater = "for-later";
    public const string AgeUnknown = "age-unknown";
    public const string SexUnknown = "sex-unknown";
    public const string NothingRead = "nothing-read";
    public const string DoubtfulReading = "doubtful-reading";
    public const string FirstPair = "first-pair";
    public const string NoSuchShoes = "no-such-shoes";
    public const string FewOnShelf = "few-on-shelf";

    private static readonly ResourceManager Resources = new(typeof(ShortlistNotices));

    /// <summary>Below this chance that anything on the shelf fits, an order is proposed (common practice, no source).</summary>
    private const double SmallChance = 0.3;

    /// <summary>Whether a chance that anything on the shelf fits is so small that an order is proposed.</summary>
    public static bool IsSmall(double chanceOnShelf) => chanceOnShelf < SmallChance;

    /// <summary>The kind word instead of a shortlist, for somebody too young for such shoes.</summary>
    public static ShortlistNotice TooYoung() => Notice(ForLater);

    /// <summary>Everything else, in the order in which it is said.</summary>
    public static IReadOnlyList<ShortlistNotice> Of(ShortlistFacts facts)
    {
        var notices = new List<ShortlistNotice>();
        if (facts.FirstPair && facts.Kind == "pointe")
        {
            notices.Add(Notice(FirstPair));
        }

        if (facts.AgeYears is null)
        {
            notices.Add(Notice(AgeUnknown));
        }

        if (facts.Sex is null)
        {
            notices.Add(Notice(SexUnknown));
        }

        if (facts.Readings.Count == 0)
        {
            notices.Add(Notice(NothingRead));
        }

        notices.AddRange(facts.Doubts.Select(doubt => facts.Readings[doubt.Index]).Select(reading =>
            Notice(DoubtfulReading, FitSentences.TraitName(reading.Trait), FitSentences.Foot(reading.Foot))));

        if (facts.ShoesOnFile == 0)
        {
            notices.Add(Notice(NoSuchShoes));
        }
        else if (IsSmall(facts.ChanceOnShelf))
        {
            notices.Add(Notice(FewOnShelf, FitSentences.ChanceInTen(facts.ChanceOnShelf)));
        }

        return notices;
    }

    internal static string Text(string code) =>
        Resources.GetString(code, CultureInfo.CurrentUICulture) ?? throw new MissingManifestResourceException($"There is no sentence for {code}.");

    private static ShortlistNotice Notice(string code, params ReadOnlySpan<object?> values) =>
        new(code, string.Format(CultureInfo.CurrentCulture, Text(code), values));
}

/// <summary>What a shortlist was answered from, as far as something has to be said about it.</summary>
/// <param name="Kind">The kind of footwear.</param>
/// <param name="AgeYears">Age on the day; null where it is not known.</param>
/// <param name="Sex">Null where nobody said.</param>
/// <param name="FirstPair">Whether it is her first pair.</param>
/// <param name="Readings">What was read.</param>
/// <param name="Doubts">Readings to take once more.</param>
/// <param name="ShoesOnFile">How many sizes of this kind there are.</param>
/// <param name="ChanceOnShelf">Chance that any pair on the shelf fits.</param>
public sealed record ShortlistFacts(
    string Kind,
    double? AgeYears,
    Sex? Sex,
    bool FirstPair,
    IReadOnlyList<Reading> Readings,
    IReadOnlyList<DoubtfulReading> Doubts,
    int ShoesOnFile,
    double ChanceOnShelf);
