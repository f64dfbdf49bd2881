using System.Globalization;
using Microsoft.Extensions.Localization;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Sentences;
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

    /// <summary>The words of the latest earlier fitting that has some: "May 2026: medium"; null where there are none.</summary>
    public string? Word(SeenFitting fitting, Trait trait)
    {
        var (left, right) = (Latest(fitting, Side.Left, trait), Latest(fitting, Side.Right, trait));
        if ((left ?? right) is not { } one)
        {
            return null;
        }

        string Said(EarlierReading reading) => FitSentences.Word(trait, (int)reading.Value);
        return left is null ? words["{0}: right {1}", Month(fitting, one.At), Said(one)]
            : right is null ? words["{0}: left {1}", Month(fitting, one.At), Said(one)]
            : left.Value == right.Value ? words["{0}: {1}", Month(fitting, Later(left, right)), Said(left)]
            : words["{0}: left {1}, right {2}", Month(fitting, Later(left, right)), Said(left), Said(right)];
    }

    private static DateTimeOffset Later(EarlierReading left, EarlierReading right) => left.At > right.At ? left.At : right.At;

    private static EarlierReading? Latest(SeenFitting fitting, Side foot, Trait trait) => EarlierReading.WordsOf(fitting.Evidence, foot, trait) is [var latest, ..] ? latest : null;

    // The month is enough, except for the one that is not over.
    private static string Month(SeenFitting fitting, DateTimeOffset at)
    {
        var (then, today) = (fitting.Time.Day(at), fitting.Time.Day(fitting.OpenedAt));
        return then.ToString((then.Year, then.Month) == (today.Year, today.Month) ? "d MMM" : "MMM yyyy", CultureInfo.CurrentCulture);
    }
}
