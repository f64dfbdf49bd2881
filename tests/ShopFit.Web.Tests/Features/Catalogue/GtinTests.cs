namespace ShopFit.Web.Features.Catalogue;

public class GtinTests
{
    [Theory]
    [InlineData("629104150021", 3)] // GS1 check digit calculator; GS1 Hong Kong
    [InlineData("730001100001", 7)] // GS1 Sweden
    [InlineData("890400021003", 7)] // GS1 India
    [InlineData("400638133393", 1)] // from memory, recomputed
    [InlineData("03600029145", 2)] // GTIN-12, from memory, recomputed
    [InlineData("01234567890", 5)] // GTIN-12, recomputed
    [InlineData("7351353", 7)] // GTIN-8, from memory, recomputed
    [InlineData("9638507", 4)] // GTIN-8, recomputed
    [InlineData("1234567", 0)] // GTIN-8 whose weighted sum is a multiple of ten
    [InlineData("200000000001", 5)] // GTIN-13 for use inside a shop, recomputed
    [InlineData("1629104150021", 0)] // GTIN-14: the GS1 example with an indicator digit 1 adds 3 to its sum of 57
    public void CheckDigitOf_follows_the_GS1_rule_at_every_length(string digits, int expected)
    {
        Assert.Equal(expected, Gtin.CheckDigitOf(digits));
        Assert.True(Gtin.TryRead($"{digits}{expected}", out var gtin));
        Assert.Equal($"{digits}{expected}", gtin.ToString());
        Assert.False(Gtin.TryRead($"{digits}{(expected + 1) % 10}", out _));
    }

    [Theory]
    [InlineData("")]
    [InlineData("123")]
    [InlineData("629104150021")] // twelve digits, but the last is no check digit
    [InlineData("629104150021X")]
    [InlineData("٦٢٩١٠٤١٥٠٠٢١٣")] // Arabic-Indic digits are no barcode
    [InlineData(" 6291041500213")]
    [InlineData("629104150021300")]
    public void TryRead_refuses_anything_else(string text) => Assert.False(Gtin.TryRead(text, out _));

    [Fact]
    public void One_wrong_digit_is_always_noticed()
    {
        const string Right = "6291041500213";
        for (var place = 0; place < Right.Length; place++)
        {
            for (var digit = '0'; digit <= '9'; digit++)
            {
                var text = $"{Right[..place]}{digit}{Right[(place + 1)..]}";
                Assert.Equal(digit == Right[place], Gtin.TryRead(text, out _));
            }
        }
    }
}
