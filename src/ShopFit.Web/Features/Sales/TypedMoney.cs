using System.Globalization;
using ShopFit.Fitting.Measures;

namespace ShopFit.Web.Features.Sales;

/// <summary>Amounts as people type them, with a comma or a point.</summary>
internal static class TypedMoney
{
    // A typed number goes through a double; what is further from a whole minor unit than this was typed with too many decimals.
    private const double WholeEnough = 1e-6;

    /// <summary>Reads an amount of a currency into its minor units.</summary>
    /// <returns>Whether it is an amount: not negative, not too large, and with no more decimals than the currency has.</returns>
    public static bool TryRead(string? typed, string currency, out long minor) =>
        TryScale(typed, Math.Pow(10, Money.ExponentOf(currency)), SellFittingRequest.MostMinor, out minor);

    /// <summary>Reads a percentage into its basis points.</summary>
    /// <returns>Whether it lies between 0 and 100 and has two decimals at most.</returns>
    public static bool TryReadPercent(string? typed, out long basisPoints) =>
        TryScale(typed?.Replace("%", "", StringComparison.Ordinal), 100, LineAmount.WholeInBasisPoints, out basisPoints);

    /// <summary>An amount without its currency, as it would be typed.</summary>
    public static string Write(long minor, string currency)
    {
        var exponent = Money.ExponentOf(currency);
        return (minor / (decimal)Math.Pow(10, exponent)).ToString($"F{exponent}", CultureInfo.CurrentCulture);
    }

    private static bool TryScale(string? typed, double scale, long most, out long scaled)
    {
        scaled = 0;
        if (!TypedNumber.TryRead(typed, out var number))
        {
            return false;
        }

        var whole = Math.Round(number * scale);
        if (whole < 0 || whole > most || Math.Abs((number * scale) - whole) > WholeEnough * Math.Max(1, whole))
        {
            return false;
        }

        scaled = (long)whole;
        return true;
    }
}
