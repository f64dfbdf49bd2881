using CsCheck;
using ShopFit.Sheets.Receipts;
using ShopFit.Web.Features.Papers;

namespace ShopFit.Web.Features.Sales;

public sealed class BagAmountsTests
{
    // Prices of 0, 2 and 3 digit currencies are whole minor units alike (ISO 4217): yen up to a hundred thousand, dinars up to a hundred with three decimals.
    private static readonly Gen<BagGood[]> Bags =
        Gen.Select(Gen.Int[1, 99], Gen.OneOf(Gen.Long[0, 20], Gen.Long[0, 9_999], Gen.Long[0, 100_000]), Gen.Int[0, 10_000], Gen.Bool)
            .Select((quantity, price, rate, takes) => new BagGood(quantity, price, rate, takes)).Array[1, 12];

    private static readonly Gen<(BagGood[] Goods, long Discount, bool Inside)> Cases =
        from goods in Bags
        from discount in Gen.Long[0, goods.Where(good => good.TakesDiscount).Sum(good => good.FullMinor)]
        from inside in Gen.Bool
        select (goods, discount, inside);

    [Fact]
    public void Lines_add_up_to_what_is_paid_and_nothing_is_negative() => Cases.Sample(
        one =>
        {
            var amounts = BagAmounts.Of(one.Goods, one.Discount, one.Inside);

            Assert.Equal(one.Discount, amounts.Sum(amount => amount.DiscountMinor));
            var full = one.Goods.Sum(good => good.FullMinor);
            Assert.Equal(full - one.Discount + (one.Inside ? 0 : amounts.Sum(amount => amount.Line.TaxMinor)), amounts.Sum(amount => amount.Line.TotalMinor));
            foreach (var (good, amount) in one.Goods.Zip(amounts))
            {
                Assert.InRange(amount.DiscountMinor, 0, good.TakesDiscount ? good.FullMinor : 0);
                Assert.InRange(amount.Line.TaxMinor, 0, amount.Line.TotalMinor);
            }
        },
        iter: 20_000);

    [Fact]
    public void Tax_of_a_rate_is_the_tax_of_its_lines() => Cases.Sample(
        one =>
        {
            var lines = one.Goods.Zip(BagAmounts.Of(one.Goods, one.Discount, one.Inside)).ToList();
            Assert.Equal(
                lines.Sum(line => line.Second.Line.TaxMinor),
                lines.GroupBy(line => line.First.RateBasisPoints).Sum(rate => rate.Sum(line => line.Second.Line.TotalMinor) - rate.Sum(line => line.Second.Line.TotalMinor - line.Second.Line.TaxMinor)));
        },
        iter: 2_000);

    [Fact]
    public void No_share_is_a_whole_minor_unit_away_from_its_part() => Cases.Sample(
        one =>
        {
            var takes = one.Goods.Select(good => good.TakesDiscount ? good.FullMinor : 0).ToList();
            var shares = DiscountShares.Of(takes, one.Discount);
            Assert.All(takes.Zip(shares), line => Assert.True(takes.Sum() == 0 || Math.Abs((decimal)line.First * one.Discount / takes.Sum() - line.Second) < 1));
        },
        iter: 5_000);

    [Fact]
    public void What_comes_back_piece_by_piece_is_exactly_what_was_paid() => Gen.Select(Cases, Gen.Int[1, 99].Array[1, 99]).Sample(
        (one, steps) =>
        {
            foreach (var (good, amount) in one.Goods.Zip(BagAmounts.Of(one.Goods, one.Discount, one.Inside)))
            {
                var (before, total, tax) = (0, 0L, 0L);
                for (var step = 0; before < good.Quantity; step++)
                {
                    var now = Math.Min(good.Quantity - before, steps[step % steps.Length]);
                    var back = ReturnAmount.Of(amount.Line, good.Quantity, before, now);
                    Assert.InRange(back.TaxMinor, 0, back.TotalMinor);
                    (before, total, tax) = (before + now, total + back.TotalMinor, tax + back.TaxMinor);
                }

                Assert.Equal((amount.Line.TotalMinor, amount.Line.TaxMinor), (total, tax));
            }
        },
        iter: 3_000);

    // ISO 4217: the yen has no decimals, the euro two, the Kuwaiti dinar three.
    [Fact]
    public void What_is_written_on_a_receipt_adds_up_in_currencies_of_0_2_and_3_digits_and_a_void_mirrors_it() => Gen.Select(Cases, Gen.OneOf(Gen.Const("JPY"), Gen.Const("EUR"), Gen.Const("KWD"))).Sample(
        (one, currency) =>
        {
            var goods = one.Goods.Zip(BagAmounts.Of(one.Goods, one.Discount, one.Inside), (good, amount) =>
                new ReceiptGood("Thing", "thing", good.Quantity, good.UnitPriceMinor, amount.DiscountMinor, good.RateBasisPoints, amount.Line)).ToList();
            var facts = new ReceiptFacts
            {
                Shop = Settings.Shop.Of(Guid.CreateVersion7(), "Shop"),
                Dancer = null,
                ServedBy = "Orla",
                At = new DateTimeOffset(2026, 3, 14, 15, 9, 0, TimeSpan.Zero),
                Kind = ReceiptKind.Sale,
                Number = "2026-000001",
                Currency = currency,
                PricesIncludeTax = one.Inside,
                Goods = goods,
            };
            var (sale, mirrored) = (facts.Write(), (facts with { Kind = ReceiptKind.Void }).Write());

            Assert.Equal(sale.Lines.Sum(line => Read(line.Total)), Read(sale.Total));
            Assert.Equal(sale.Taxes.Sum(tax => Read(tax.Gross)), Read(sale.Total));
            Assert.All(sale.Taxes, tax => Assert.Equal(Read(tax.Gross), Read(tax.Net) + Read(tax.Tax)));
            Assert.Equal(sale.Lines.Select(line => -Read(line.Total)), mirrored.Lines.Select(line => Read(line.Total)));
            Assert.Equal(-Read(sale.Total), Read(mirrored.Total));
        },
        iter: 1_000);

    // Hamilton's method on the example that textbooks of apportionment use: 100 over 5.5 : 2.5 : 2 of 10 seats would be 55, 25, 20.
    [Theory]
    [InlineData(new long[] { 550, 250, 200 }, 100, new long[] { 55, 25, 20 })]
    [InlineData(new long[] { 100, 100, 100 }, 100, new long[] { 34, 33, 33 })]
    [InlineData(new long[] { 1, 1, 1 }, 2, new long[] { 1, 1, 0 })]
    [InlineData(new long[] { 0, 999, 1 }, 1, new long[] { 0, 1, 0 })]
    [InlineData(new long[] { 8_950, 650, 480 }, 1_008, new long[] { 895, 65, 48 })]
    public void Shares_go_to_the_largest_remainders(long[] amounts, long discount, long[] shares) => Assert.Equal(shares, DiscountShares.Of(amounts, discount));

    // Half away from zero: 12.5 % of 1.00 is 0.125, which is 0.13.
    [Theory]
    [InlineData(100, 1_250, 13)]
    [InlineData(999, 10_000, 999)]
    [InlineData(1, 5_000, 1)]
    [InlineData(1, 4_999, 0)]
    public void A_percentage_is_rounded_half_away_from_zero(long amount, long basisPoints, long off) => Assert.Equal(off, DiscountShares.PercentOf(amount, basisPoints));

    [Fact]
    public void More_than_the_lines_is_not_spread() => Assert.Throws<ArgumentOutOfRangeException>(() => DiscountShares.Of([5, 5], 11));

    [Theory]
    [InlineData("4,50", "EUR", true, 450)]
    [InlineData("4.5", "EUR", true, 450)]
    [InlineData("1200", "JPY", true, 1_200)]
    [InlineData("4.5", "JPY", false, 0)]
    [InlineData("1.250", "KWD", true, 1_250)]
    [InlineData("4.505", "EUR", false, 0)]
    [InlineData("-1", "EUR", false, 0)]
    [InlineData("", "EUR", false, 0)]
    [InlineData("99999999999", "EUR", false, 0)]
    public void Amounts_are_typed_with_as_many_decimals_as_the_currency_has(string typed, string currency, bool good, long minor) =>
        Assert.Equal((good, minor), (TypedMoney.TryRead(typed, currency, out var read), read));

    private static decimal Read(string written) =>
        decimal.Parse(string.Concat(written.Where(sign => char.IsAsciiDigit(sign) || sign is '.' or '-')), System.Globalization.CultureInfo.InvariantCulture);
}
