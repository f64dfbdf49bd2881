using ShopFit.Fitting.Measures;
using ShopFit.Web.Features.Sales;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Reads a price as people type it: comma or point, as many digits behind it as the currency has.</summary>
public static class TypedPrice
{
    // Beyond it a double no longer holds every minor unit.
    private const double Largest = 1e13;

    /// <summary>Reads "62.50" or "62,5" as minor units of a currency; false for anything else, and for finer than the currency goes.</summary>
    public static bool TryRead(string? text, string currency, out long minor)
    {
        minor = 0;
        if (!TypedNumber.TryRead(text, out var price) || Math.Abs(price) > Largest)
        {
            return false;
        }

        var exact = (decimal)price * (decimal)Math.Pow(10, Money.ExponentOf(currency));
        if (exact != decimal.Truncate(exact))
        {
            return false;
        }

        minor = (long)exact;
        return true;
    }

    /// <summary>A price as it is typed in that currency: "62.50", "62" where the currency has no smaller unit.</summary>
    public static string Write(long minor, string currency)
    {
        var exponent = Money.ExponentOf(currency);
        return (minor / (decimal)Math.Pow(10, exponent)).ToString($"F{exponent}", System.Globalization.CultureInfo.CurrentCulture);
    }
}
