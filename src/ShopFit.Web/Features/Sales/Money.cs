using System.Globalization;

namespace ShopFit.Web.Features.Sales;

/// <summary>An amount of money, kept in the minor units of its currency: cents, pence, or whole yen.</summary>
/// <param name="Minor">How many minor units; negative for money given back.</param>
/// <param name="Currency">ISO 4217 code, such as <c>EUR</c>.</param>
public readonly record struct Money(long Minor, string Currency)
{
    private const char NoBreakSpace = '\u00A0';

    /// <summary>Decimals of the currencies that do not have two, from ISO 4217, list one.</summary>
    private static readonly Dictionary<string, int> UnusualExponents = new(StringComparer.Ordinal)
    {
        ["BIF"] = 0, ["CLP"] = 0, ["DJF"] = 0, ["GNF"] = 0, ["ISK"] = 0, ["JPY"] = 0, ["KMF"] = 0, ["KRW"] = 0, ["PYG"] = 0,
        ["RWF"] = 0, ["UGX"] = 0, ["UYI"] = 0, ["VND"] = 0, ["VUV"] = 0, ["XAF"] = 0, ["XOF"] = 0, ["XPF"] = 0,
        ["BHD"] = 3, ["IQD"] = 3, ["JOD"] = 3, ["KWD"] = 3, ["LYD"] = 3, ["OMR"] = 3, ["TND"] = 3,
        ["CLF"] = 4, ["UYW"] = 4,
    };

    /// <summary>Signs that can be taken for one currency only; any other is written by its code.</summary>
    private static readonly Dictionary<string, string> Symbols = new(StringComparer.Ordinal) { ["EUR"] = "€", ["GBP"] = "£", ["JPY"] = "¥" };

    /// <summary>How many decimals the currency has (ISO 4217 calls it the exponent).</summary>
    public static int ExponentOf(string currency) => UnusualExponents.GetValueOrDefault(currency, 2);

    /// <summary>The amount as people write it in the reader's culture: "£42.50", "42,50 €", "CHF 42.50".</summary>
    public override string ToString()
    {
        var exponent = ExponentOf(Currency);
        var format = (NumberFormatInfo)CultureInfo.CurrentCulture.NumberFormat.Clone();
        var signLeads = format.CurrencyPositivePattern is 0 or 2;
        format.CurrencySymbol = Symbols.GetValueOrDefault(Currency) ?? format.CurrencyPositivePattern switch
        {
            // A code needs the space that a sign does without.
            0 => $"{Currency}{NoBreakSpace}",
            1 => $"{NoBreakSpace}{Currency}",
            _ => Currency,
        };
        format.CurrencyDecimalDigits = exponent;
        // A minus, not the brackets of a ledger, and before all else.
        format.CurrencyNegativePattern = signLeads ? 1 : 8;
        return (Minor / (decimal)Math.Pow(10, exponent)).ToString("C", format);
    }
}
