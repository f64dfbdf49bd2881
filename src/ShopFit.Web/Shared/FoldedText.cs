using System.Globalization;
using System.Text;

namespace ShopFit.Web.Shared;

/// <summary>Words as they are compared when somebody types a name: small letters without accents, one blank between words.</summary>
public static class FoldedText
{
    /// <summary>The key of a text. Any text has one, even one with halves of characters in it.</summary>
    /// <remarks>
    /// Accents come off by Unicode's compatibility decomposition (Unicode Standard Annex 15). Letters that it leaves whole
    /// are written as people type them without a special keyboard.
    /// </remarks>
    public static string Of(string text)
    {
        // Half a surrogate pair cannot be decomposed; runes replace it.
        var whole = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            whole.Append(rune.ToString());
        }

        var key = new StringBuilder(whole.Length);
        foreach (var rune in whole.ToString().Normalize(NormalizationForm.FormKD).EnumerateRunes())
        {
            if (Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark || IsApostrophe(rune))
            {
                continue;
            }

            if (Rune.IsLetterOrDigit(rune))
            {
                key.Append(Plain(Rune.ToLowerInvariant(rune)));
            }
            else if (key.Length > 0 && key[^1] != ' ')
            {
                key.Append(' ');
            }
        }

        return key.ToString().TrimEnd(' ');
    }

    // O'Shea is typed as Oshea.
    private static bool IsApostrophe(Rune rune) => rune.Value is '\'' or '\u2018' or '\u2019' or '\u02BC' or '`';

    private static string Plain(Rune letter) => letter.Value switch
    {
        'ß' => "ss",
        'æ' => "ae",
        'œ' => "oe",
        'ø' => "o",
        'ł' => "l",
        'đ' or 'ð' => "d",
        'þ' => "th",
        'ı' => "i",
        'ħ' => "h",
        _ => letter.ToString(),
    };
}
