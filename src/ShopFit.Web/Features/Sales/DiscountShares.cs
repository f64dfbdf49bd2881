namespace ShopFit.Web.Features.Sales;

/// <summary>A discount spread over the lines that it is given on, so that the shares add up to it to the last minor unit.</summary>
/// <remarks>Largest remainder (Hamilton's method of apportionment): each line gets the whole part of its share, and what is left goes one by one to the lines that lost most.</remarks>
public static class DiscountShares
{
    /// <summary>The share of each line, never more than the line and never negative.</summary>
    /// <param name="amounts">What each line comes to before the discount, minor units, not negative.</param>
    /// <param name="discount">What is to be spread, 0 up to the sum of the amounts.</param>
    /// <exception cref="ArgumentOutOfRangeException">An amount is negative, or the discount is not within the sum.</exception>
    public static IReadOnlyList<long> Of(IReadOnlyList<long> amounts, long discount)
    {
        ArgumentNullException.ThrowIfNull(amounts);
        foreach (var amount in amounts)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(amount, nameof(amounts));
        }

        var total = checked(amounts.Sum());
        ArgumentOutOfRangeException.ThrowIfNegative(discount);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(discount, total);
        if (discount == 0)
        {
            return new long[amounts.Count];
        }

        var shares = amounts.Select(amount => (long)((Int128)amount * discount / total)).ToArray();
        var lost = amounts.Select((amount, line) => (Line: line, Remainder: (Int128)amount * discount % total));
        foreach (var (line, _) in lost.OrderByDescending(one => one.Remainder).ThenBy(one => one.Line).Take((int)(discount - shares.Sum())))
        {
            shares[line]++;
        }

        return shares;
    }

    /// <summary>A percentage of an amount, rounded half away from zero.</summary>
    /// <param name="amount">Minor units, not negative.</param>
    /// <param name="basisPoints">Hundredths of a per cent, 0 to 10,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public static long PercentOf(long amount, long basisPoints)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(amount);
        ArgumentOutOfRangeException.ThrowIfNegative(basisPoints);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(basisPoints, LineAmount.WholeInBasisPoints);
        return LineAmount.Rounded((Int128)amount * basisPoints, LineAmount.WholeInBasisPoints);
    }
}
