using System.Globalization;

namespace ShopFit.Web.Features.Sales;

public sealed class MoneyTests : IDisposable
{
    private readonly CultureInfo _before = CultureInfo.CurrentCulture;

    // Decimals as ISO 4217 list one has them, from memory.
    [Theory]
    [InlineData(4_250, "EUR", "€42.50")]
    [InlineData(1_234_567, "USD", "USD\u00A012,345.67")]
    [InlineData(4_250, "JPY", "¥4,250")]
    [InlineData(4_250, "KWD", "KWD\u00A04.250")]
    [InlineData(-5, "GBP", "-£0.05")]
    [InlineData(0, "EUR", "€0.00")]
    public void An_amount_is_shown_with_the_decimals_of_its_currency(long minor, string currency, string shown)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

        Assert.Equal(shown, new Money(minor, currency).ToString());
    }

    [Fact]
    public void An_amount_is_written_as_the_reader_writes_numbers()
    {
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

        Assert.Equal("12.345,67 €", new Money(1_234_567, "EUR").ToString());
    }

    public void Dispose() => CultureInfo.CurrentCulture = _before;
}
