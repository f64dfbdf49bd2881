namespace ShopFit.Web.Shared;

public class TypedDayTests
{
    private static readonly DateOnly Today = new(2026, 3, 14);

    // ISO 8601 puts the year first; the order with slashes and points is common practice, no source.
    [Theory]
    [InlineData("2014-03-12", false, 2014, 3, 12)]
    [InlineData("2014-03-12", true, 2014, 3, 12)]
    [InlineData("2014/3/12", true, 2014, 3, 12)]
    [InlineData("20140312", false, 2014, 3, 12)]
    [InlineData("12.3.2014", false, 2014, 3, 12)]
    [InlineData("12.3.2014", true, 2014, 3, 12)]
    [InlineData(" 12. 3. 2014 ", false, 2014, 3, 12)]
    [InlineData("12/3/2014", false, 2014, 3, 12)]
    [InlineData("3/12/2014", true, 2014, 3, 12)]
    [InlineData("25/3/2014", true, 2014, 3, 25)]
    [InlineData("3/25/2014", false, 2014, 3, 25)]
    [InlineData("12-03-2014", false, 2014, 3, 12)]
    [InlineData("12 3 14", false, 2014, 3, 12)]
    [InlineData("12/3/26", false, 2026, 3, 12)]
    [InlineData("12/3/27", false, 1927, 3, 12)]
    [InlineData("12032014", false, 2014, 3, 12)]
    [InlineData("12 March 2014", false, 2014, 3, 12)]
    [InlineData("Mar 12, 2014", true, 2014, 3, 12)]
    [InlineData("12 mar 14", true, 2014, 3, 12)]
    [InlineData("29.2.2012", false, 2012, 2, 29)]
    public void A_day_is_read_as_people_type_it(string text, bool monthFirst, int year, int month, int day)
    {
        Assert.True(TypedDay.TryRead(text, monthFirst, Today, out var read));
        Assert.Equal(new DateOnly(year, month, day), read);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("12.3")]
    [InlineData("2014")]
    [InlineData("29.2.2013")]
    [InlineData("31.4.2014")]
    [InlineData("13/13/2014")]
    [InlineData("0.3.2014")]
    [InlineData("12.3.0000")]
    [InlineData("12.3.214")]
    [InlineData("12 Ma 2014")]
    [InlineData("twelve")]
    [InlineData("-1/3/2014x")]
    [InlineData("١٢.٣.٢٠١٤")]
    [InlineData("12.3.2014.1")]
    public void What_is_no_day_is_not_guessed(string? text) => Assert.False(TypedDay.TryRead(text, monthFirst: false, Today, out _));
}
