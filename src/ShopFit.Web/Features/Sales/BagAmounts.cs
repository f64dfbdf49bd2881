namespace ShopFit.Web.Features.Sales;

/// <summary>What a bag comes to: line by line, the discount spread, the tax rounded on each line.</summary>
public static class BagAmounts
{
    /// <summary>The amounts of each line, in the order of the goods.</summary>
    /// <param name="goods">What is in the bag.</param>
    /// <param name="discount">Taken off, minor units counted as the prices are; 0 up to the sum of the goods that it may be given on.</param>
    /// <param name="pricesIncludeTax">Whether prices have the tax in them.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public static IReadOnlyList<BagAmount> Of(IReadOnlyList<BagGood> goods, long discount, bool pricesIncludeTax)
    {
        ArgumentNullException.ThrowIfNull(goods);
        var shares = DiscountShares.Of([.. goods.Select(good => good.TakesDiscount ? good.FullMinor : 0)], discount);
        return [.. goods.Zip(shares, (good, share) => new BagAmount(share, LineAmount.Of(good.Quantity, good.UnitPriceMinor, share, good.RateBasisPoints, pricesIncludeTax)))];
    }
}

/// <summary>So many of one thing, priced.</summary>
/// <param name="Quantity">How many, at least 1.</param>
/// <param name="UnitPriceMinor">Price of one, minor units.</param>
/// <param name="RateBasisPoints">Tax rate, hundredths of a per cent.</param>
/// <param name="TakesDiscount">Whether the discount is given on it.</param>
public readonly record struct BagGood(int Quantity, long UnitPriceMinor, int RateBasisPoints, bool TakesDiscount = true)
{
    /// <summary>What the line comes to before discount, counted as the prices are.</summary>
    public long FullMinor => checked(Quantity * UnitPriceMinor);
}

/// <summary>What one line comes to.</summary>
/// <param name="DiscountMinor">Its share of the discount.</param>
/// <param name="Line">Its tax and total.</param>
public readonly record struct BagAmount(long DiscountMinor, LineAmount Line);
