using System.Globalization;

namespace ShopFit.Web.Features.Sales;

/// <summary>An amount of money, kept in the minor units of its currency: cents, pence, or whole yen.</summary>
/// <param name="Minor">How many minor units; negative for money given back.</param>
/// <param name="Currency">ISO 4217 code, such as <c>EUR</c>.</param>
public readonly record struct Money(long Minor, string Currency)
{
    /// <summary>Decimals of the currencies that do not have two, from ISO 4217, list one.</summary>
    private static readonly Dictionary<string, int> UnusualExponents = new(StringComparer.Ordinal)
    {
        ["BIF"] = 0, ["CLP"] = 0, ["DJF"] = 0, ["GNF"] = 0, ["ISK"] = 0, ["JPY"] = 0, ["KMF"] = 0, ["KRW"] = 0, ["PYG"] = 0,
        ["RWF"] = 0, ["UGX"] = 0, ["UYI"] = 0, ["VND"] = 0, ["VUV"] = 0, ["XAF"] = 0, ["XOF"] = 0, ["XPF"] = 0,
        ["BHD"] = 3, ["IQD"] = 3, ["JOD"] = 3, ["KWD"] = 3, ["LYD"] = 3, ["OMR"] = 3, ["TND"] = 3,
        ["CLF"] = 4, ["UYW"] = 4,
    };

    /// <summary>How many decimals the currency has (ISO 4217 calls it the exponent).</summary>
    public static int ExponentOf(string currency) => UnusualExponents.GetValueOrDefault(currency, 2);

    /// <summary>The amount with its decimals and code as the reader's culture writes numbers: "42.50 EUR".</summary>
    public override string ToString()
    {
        var exponent = ExponentOf(Currency);
        var amount = Minor / (decimal)Math.Pow(10, exponent);
        return $"{amount.ToString($"N{exponent}", CultureInfo.CurrentCulture)} {Currency}";
    }
}
