using System.Text.RegularExpressions;

namespace ShopFit.Sheets.Support;

/// <summary>The Flesch-Kincaid grade level of an English text.</summary>
/// <remarks>
/// <para>
/// Kincaid, Fishburne, Rogers and Chissom, "Derivation of New Readability Formulas", Naval Technical Training Command,
/// Research Branch Report 8-75, 1975: 0.39 × words a sentence + 11.8 × syllables a word − 15.59.
/// </para>
/// <para>
/// A sentence ends at a full stop, a question or exclamation mark, or the end of its text; colons and semicolons do not
/// end one, which makes the grade harsher. A word is a run of letters, apostrophes inside it included; a hyphen parts
/// words; a number is a word of one syllable.
/// </para>
/// <para>
/// Syllables are groups of vowels, y being one unless it begins the word, after the silent endings are taken off: e, but
/// not in -le after a consonant; -ed, but not after t or d; -es, but not after s, x, z, c, g, h nor in -les after a
/// consonant. Vowels heard apart count one more: ia, io (not in -ion, -iou), and -ing after a vowel. Never less than one.
/// </para>
/// </remarks>
internal static partial class ReadingGrade
{
    public static double Of(IEnumerable<string> texts)
    {
        var sentences = texts.SelectMany(text => SentenceEnd().Split(text)).Select(sentence => Word().Matches(sentence)).Where(words => words.Count > 0).ToList();
        return Of(sentences.Count, sentences.Sum(words => words.Count), sentences.Sum(words => words.Sum(word => Syllables(word.Value))));
    }

    public static double Of(int sentences, int words, int syllables) => 0.39 * words / sentences + 11.8 * syllables / words - 15.59;

    public static int Syllables(string word)
    {
        var letters = Apostrophe().Replace(word, "").ToLowerInvariant();
        if (letters.Length == 0 || char.IsDigit(letters[0]))
        {
            return 1;
        }

        var heard = SilentEnd().Replace(letters, "");
        return Math.Max(1, VowelGroup().Count(heard) + HeardApart().Count(heard));
    }

    [GeneratedRegex(@"[.!?]+(?=\s|$)", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"\p{L}+([’']\p{L}+)*|\d+([.,]\d+)?", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Word();

    [GeneratedRegex("[’']", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Apostrophe();

    [GeneratedRegex("(?<![^aeiouy]l)e$|(?<![td])ed$|(?<![sxzcgh]|[^aeiouy]l)es$", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex SilentEnd();

    [GeneratedRegex("(?!^y)[aeiouy][aeiouy]*", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex VowelGroup();

    [GeneratedRegex("ia|io(?![nu])|(?<=[aeiouy])ing", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex HeardApart();
}
