using CsCheck;

namespace ShopFit.Web.Features.Sales;

public class LineAmountTests
{
    // The VAT fractions of HMRC's VAT guide (Notice 700), from memory: at 20 % the tax is 1/6 of the price, at 5 % 1/21.
    [Theory]
    [InlineData(12_000, 2_000, 2_000)]
    [InlineData(2_100, 500, 100)]
    [InlineData(100, 2_000, 17)] // 16 2/3
    [InlineData(1_000, 0, 0)]
    public void Tax_inside_a_price_is_its_fraction_of_it(long price, int rate, long tax) =>
        Assert.Equal(new LineAmount(tax, price), LineAmount.Of(1, price, 0, rate, pricesIncludeTax: true));

    [Theory]
    [InlineData(10_000, 2_000, 2_000)]
    [InlineData(10, 500, 1)] // half a unit goes away from zero
    [InlineData(9, 500, 0)] // 0.45
    [InlineData(30, 500, 2)] // 1.5: not to the even neighbour by chance, see the next
    [InlineData(50, 500, 3)] // 2.5 would be 2 with rounding to even
    public void Tax_on_top_is_rounded_half_away_from_zero(long price, int rate, long tax) =>
        Assert.Equal(new LineAmount(tax, price + tax), LineAmount.Of(1, price, 0, rate, pricesIncludeTax: false));

    [Fact]
    public void A_discount_comes_off_the_line_before_tax() =>
        Assert.Equal(new LineAmount(500, 3_000), LineAmount.Of(2, 2_000, 1_000, 2_000, pricesIncludeTax: true));

    [Fact]
    public void Of_agrees_with_decimal_arithmetic() =>
        Gen.Select(Gen.Int[1, 999], Gen.Long[0, 100_000_000], Gen.Int[0, 10_000], Gen.Int[0, 100], Gen.Bool)
            .Sample((quantity, price, rate, discountPercent, inside) =>
            {
                var discount = quantity * price * discountPercent / 100;
                var amount = (decimal)((quantity * price) - discount);
                var tax = inside
                    ? amount - (amount / (1 + (rate / 10_000m)))
                    : amount * rate / 10_000m;

                var line = LineAmount.Of(quantity, price, discount, rate, inside);

                Assert.InRange(Math.Abs(line.TaxMinor - tax), 0, 0.5m + 1e-9m);
                Assert.Equal(inside ? amount : amount + line.TaxMinor, line.TotalMinor);
            });

    [Theory]
    [InlineData(0, 100, 0, 0)]
    [InlineData(1, -1, 0, 0)]
    [InlineData(1, 100, 101, 0)]
    [InlineData(1, 100, -1, 0)]
    [InlineData(1, 100, 0, 10_001)]
    [InlineData(1, 100, 0, -1)]
    public void Of_refuses_the_impossible(int quantity, long price, long discount, int rate) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LineAmount.Of(quantity, price, discount, rate, pricesIncludeTax: true));
}
