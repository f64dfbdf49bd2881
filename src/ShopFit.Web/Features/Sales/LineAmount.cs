namespace ShopFit.Web.Features.Sales;

/// <summary>What one line of a sale comes to: the tax in it and its total, in minor units.</summary>
/// <param name="TaxMinor">The tax, whether it was inside the price or came on top.</param>
/// <param name="TotalMinor">What is paid for the line, tax included.</param>
public readonly record struct LineAmount(long TaxMinor, long TotalMinor)
{
    /// <summary>Basis points in the whole: a rate of 20 % is 2,000.</summary>
    public const int WholeInBasisPoints = 10_000;

    /// <summary>Works out a line. The tax is rounded on each line, half away from zero.</summary>
    /// <param name="quantity">How many, at least 1.</param>
    /// <param name="unitPriceMinor">Price of one, with or without tax as <paramref name="pricesIncludeTax"/> says.</param>
    /// <param name="discountMinor">Taken off the whole line, 0 up to quantity times price.</param>
    /// <param name="rateBasisPoints">Tax rate, 0 to 10,000.</param>
    /// <param name="pricesIncludeTax">Whether the price has the tax in it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public static LineAmount Of(int quantity, long unitPriceMinor, long discountMinor, int rateBasisPoints, bool pricesIncludeTax)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(quantity, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(unitPriceMinor);
        ArgumentOutOfRangeException.ThrowIfNegative(rateBasisPoints);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(rateBasisPoints, WholeInBasisPoints);
        var full = checked(quantity * unitPriceMinor);
        ArgumentOutOfRangeException.ThrowIfNegative(discountMinor);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(discountMinor, full);

        var amount = full - discountMinor;
        if (pricesIncludeTax)
        {
            return new LineAmount(Rounded((Int128)amount * rateBasisPoints, WholeInBasisPoints + rateBasisPoints), amount);
        }

        var tax = Rounded((Int128)amount * rateBasisPoints, WholeInBasisPoints);
        return new LineAmount(tax, checked(amount + tax));
    }

    /// <summary>A quotient rounded half away from zero; the parts here are never negative, so that is half up.</summary>
    internal static long Rounded(Int128 dividend, int divisor) => (long)(((2 * dividend) + divisor) / (2 * divisor));
}
