using System.Diagnostics.CodeAnalysis;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>A global trade item number: the digits under a barcode, 8, 12, 13 or 14 of them, the last a check digit.</summary>
/// <remarks>GS1 General Specifications: from the right, weights 3, 1, 3, ...; the check digit fills up to the next ten.</remarks>
public sealed record Gtin
{
    private Gtin(string digits) => Digits = digits;

    /// <summary>The digits as printed, check digit included.</summary>
    public string Digits { get; }

    /// <summary>Reads a number whose check digit is right; false for anything else.</summary>
    public static bool TryRead(string text, [NotNullWhen(true)] out Gtin? gtin)
    {
        gtin = HasALength(text) && CheckDigitOf(text.AsSpan(0, text.Length - 1)) == text[^1] - '0' ? new Gtin(text) : null;
        return gtin is not null;
    }

    /// <summary>Whether the text is 8, 12, 13 or 14 digits, whatever its check digit.</summary>
    public static bool HasALength(string text) => text.Length is 8 or 12 or 13 or 14 && text.All(char.IsAsciiDigit);

    /// <summary>The check digit that belongs behind these digits.</summary>
    public static int CheckDigitOf(ReadOnlySpan<char> digits)
    {
        var sum = 0;
        for (var fromRight = 0; fromRight < digits.Length; fromRight++)
        {
            var weight = fromRight % 2 == 0 ? 3 : 1;
            sum += weight * (digits[digits.Length - 1 - fromRight] - '0');
        }

        return (10 - (sum % 10)) % 10;
    }

    /// <inheritdoc/>
    public override string ToString() => Digits;
}
