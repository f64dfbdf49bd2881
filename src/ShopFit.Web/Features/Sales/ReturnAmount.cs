namespace ShopFit.Web.Features.Sales;

/// <summary>What is given back for pieces of a line: when all of it has come back, exactly what was paid for it.</summary>
public static class ReturnAmount
{
    /// <summary>Tax and total for so many pieces, after others came back before.</summary>
    /// <remarks>Each piece gives the difference of two rounded running sums, so that the parts always add up to the line.</remarks>
    /// <param name="paid">Tax and total of the whole line.</param>
    /// <param name="quantity">How many were sold.</param>
    /// <param name="before">How many of them came back before.</param>
    /// <param name="now">How many come back now.</param>
    /// <exception cref="ArgumentOutOfRangeException">More come back than were sold, or none do.</exception>
    public static LineAmount Of(LineAmount paid, int quantity, int before, int now)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(before);
        ArgumentOutOfRangeException.ThrowIfLessThan(now, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(before + now, quantity);

        // Tax and the rest are run apart, so that no piece has more tax than it cost.
        var tax = Step(paid.TaxMinor, quantity, before, now);
        return new LineAmount(tax, tax + Step(paid.TotalMinor - paid.TaxMinor, quantity, before, now));
    }

    private static long Step(long amount, int quantity, int before, int now) => (amount * (before + now) / quantity) - (amount * before / quantity);
}
