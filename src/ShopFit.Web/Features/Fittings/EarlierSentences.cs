using System.Globalization;
using Microsoft.Extensions.Localization;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What earlier fittings read, in few words beside what is read today.</summary>
public sealed class EarlierSentences(IStringLocalizer<FeetWords> words)
{
    /// <summary>The number of the latest earlier fitting, and by how much today's differs: "May 2026: 236 (+2.5)"; null where there is none.</summary>
    public string? Number(SeenFitting fitting, Side foot, Trait trait, ReadIn readIn, double? now)
    {
        if (EarlierReading.NumbersOf(fitting.Evidence, foot, trait) is not [var last, ..])
        {
            return null;
        }

        var unit = readIn.Show(last.Value) is null ? ReadIn.Millimetres : readIn;
        var month = Month(fitting, last.At);
        return now is { } value && unit.ShowChange(last.Value, value) is { } change
            ? words["{0}: {1} ({2})", month, unit.Show(last.Value)!, change]
            : words["{0}: {1}", month, unit.Show(last.Value)!];
    }

    /// <summary>When a word was said last, and of which foot if not of both: "May 2026", "left, May 2026"; null where the latest earlier words are others.</summary>
    public string? Word(SeenFitting fitting, Trait trait, int word)
    {
        var (left, right) = (Latest(fitting, Side.Left, trait, word), Latest(fitting, Side.Right, trait, word));
        return (left, right) switch
        {
            (null, null) => null,
            ({ } both, { } other) => Month(fitting, both > other ? both : other),
            ({ } one, null) => words["left, {0}", Month(fitting, one)],
            (null, { } one) => words["right, {0}", Month(fitting, one)],
        };
    }

    private static DateTimeOffset? Latest(SeenFitting fitting, Side foot, Trait trait, int word) =>
        EarlierReading.WordsOf(fitting.Evidence, foot, trait) is [var latest, ..] && (int)latest.Value == word ? latest.At : null;

    // The month is enough, except for the one that is not over.
    private static string Month(SeenFitting fitting, DateTimeOffset at)
    {
        var (then, today) = (fitting.Time.Day(at), fitting.Time.Day(fitting.OpenedAt));
        return then.ToString((then.Year, then.Month) == (today.Year, today.Month) ? "d MMM" : "MMM yyyy", CultureInfo.CurrentCulture);
    }
}
