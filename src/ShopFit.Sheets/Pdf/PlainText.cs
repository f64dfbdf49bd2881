using System.Globalization;
using System.Text;

namespace ShopFit.Sheets.Pdf;

/// <summary>Makes any text one that the sheet's fonts can draw, so that what cannot be drawn is seen to be missing.</summary>
internal static class PlainText
{
    /// <summary>Stands for one character, as a reader sees it, that the font has no shape for.</summary>
    public const char Mark = '\u25A1';

    private const char NoBreakSpace = '\u00A0';
    private const char NarrowNoBreakSpace = '\u202F';

    /// <summary>The text composed, each break or tab a space, each character without a shape one <see cref="Mark"/>.</summary>
    /// <remarks>An emoji built of several code points becomes one mark. Marks of direction are marked too: left in, they could turn a name about unseen.</remarks>
    public static string Of(string text)
    {
        var composed = WithoutLoneSurrogates(text).Normalize(NormalizationForm.FormC);
        var plain = new StringBuilder(composed.Length);
        var elements = StringInfo.GetTextElementEnumerator(composed);
        while (elements.MoveNext())
        {
            plain.Append(Drawn(elements.GetTextElement()));
        }

        return plain.ToString();
    }

    private static string Drawn(string element)
    {
        if (element.All(c => char.IsWhiteSpace(c) || c == '\0'))
        {
            return element[0] is NoBreakSpace or NarrowNoBreakSpace ? NoBreakSpace.ToString() : " ";
        }

        // An accent without a letter would be drawn over whatever stands before it.
        var alone = Rune.GetUnicodeCategory(element.EnumerateRunes().First()) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.SpacingCombiningMark;
        return char.IsWhiteSpace(element[0]) ? $" {Mark}"
            : !alone && element.EnumerateRunes().All(HasShape) ? element
            : Mark.ToString();
    }

    // A mark that goes round a letter is drawn beside it by a font that cannot place it.
    private static bool HasShape(Rune rune) =>
        InterFonts.Coverage.Covers(rune) && !Rune.IsControl(rune) && Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Format or UnicodeCategory.EnclosingMark);

    // Normalising refuses half a pair.
    private static string WithoutLoneSurrogates(string text)
    {
        var whole = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            whole.Append(rune.ToString());
        }

        return whole.ToString();
    }
}
