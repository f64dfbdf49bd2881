using System.Globalization;

namespace ShopFit.Fitting.Measures;

/// <summary>Reads a number as people type it: comma or point, no grouping, fractions where inches are meant.</summary>
/// <remarks>
/// The one parser of the whole app for what is typed by hand. Files use the decimal point only and are not read
/// by this. Whatever could be read in two ways is refused, so a comma is always the decimal one: "1,234" is a
/// little more than one.
/// </remarks>
public static class TypedNumber
{
    /// <summary>The finest division on a ruler; a larger denominator is a slip of the finger.</summary>
    private const int LargestDenominator = 64;

    private const string VulgarFractions = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

    private static readonly double[] VulgarValues =
        [1 / 2.0, 1 / 3.0, 2 / 3.0, 1 / 4.0, 3 / 4.0, 1 / 5.0, 2 / 5.0, 3 / 5.0, 4 / 5.0, 1 / 6.0, 5 / 6.0, 1 / 8.0, 3 / 8.0, 5 / 8.0, 7 / 8.0];

    /// <summary>Reads "238.5", "238,5", "½", "5½", "9 7/16", "9-7/16" or "7/16", below zero with - or −; false for anything else, never a guess.</summary>
    /// <remarks>White space around the number is left out. A fraction is a proper one, down to sixty-fourths.</remarks>
    public static bool TryRead(string? text, out double value)
    {
        var rest = text.AsSpan().Trim();
        var negative = rest.Length > 0 && rest[0] is '-' or '−';
        if (!TryReadPositive(negative ? rest[1..] : rest, out value))
        {
            value = 0;
            return false;
        }

        // A typed minus nought is nought.
        value = negative && value != 0 ? -value : value;
        return true;
    }

    private static bool TryReadPositive(ReadOnlySpan<char> text, out double value)
    {
        var digits = CountDigits(text);
        var whole = text[..digits];
        var rest = text[digits..];
        if (rest.IsEmpty || rest[0] is '.' or ',')
        {
            return TryReadDecimal(whole, rest, out value);
        }

        if (TryReadFraction(text, out value))
        {
            return true;
        }

        // "5½", "5 ½", "9 7/16" and "9-7/16", but not "97/16", which was tried above.
        var dashed = rest[0] is '-' or '–';
        var spaced = dashed || char.IsWhiteSpace(rest[0]);
        var fraction = dashed ? rest[1..] : rest.TrimStart();
        if (whole.IsEmpty || !(spaced || IsVulgar(fraction)) || !TryReadFraction(fraction, out var part))
        {
            return false;
        }

        value = ParseDigits(whole) + part;
        return double.IsFinite(value);
    }

    private static bool TryReadDecimal(ReadOnlySpan<char> whole, ReadOnlySpan<char> separatorAndRest, out double value)
    {
        value = 0;
        if (separatorAndRest.IsEmpty)
        {
            value = whole.IsEmpty ? double.NaN : ParseDigits(whole);
            return double.IsFinite(value);
        }

        var decimals = separatorAndRest[1..];
        if (decimals.IsEmpty || CountDigits(decimals) != decimals.Length)
        {
            return false;
        }

        value = double.Parse($"0{whole}.{decimals}", NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        return double.IsFinite(value);
    }

    private static bool TryReadFraction(ReadOnlySpan<char> text, out double value)
    {
        value = 0;
        if (IsVulgar(text))
        {
            value = VulgarValues[VulgarFractions.IndexOf(text[0], StringComparison.Ordinal)];
            return true;
        }

        var slash = text.IndexOfAny('/', '⁄');
        if (slash < 1 || CountDigits(text) != slash)
        {
            return false;
        }

        var denominatorText = text[(slash + 1)..];
        if (denominatorText.IsEmpty || CountDigits(denominatorText) != denominatorText.Length)
        {
            return false;
        }

        var numerator = ParseDigits(text[..slash]);
        var denominator = ParseDigits(denominatorText);
        if (denominator > LargestDenominator || numerator >= denominator)
        {
            return false;
        }

        value = numerator / denominator;
        return true;
    }

    private static bool IsVulgar(ReadOnlySpan<char> text) => text.Length == 1 && VulgarFractions.Contains(text[0], StringComparison.Ordinal);

    private static int CountDigits(ReadOnlySpan<char> text)
    {
        var count = 0;
        while (count < text.Length && char.IsAsciiDigit(text[count]))
        {
            count++;
        }

        return count;
    }

    private static double ParseDigits(ReadOnlySpan<char> digits) => double.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
}
