namespace ShopFit.Web.Features.Dancers;

public class AgeTests
{
    [Theory]
    [InlineData("2013-03-14", "2025-03-13", 11.99, 12)]
    [InlineData("2013-03-14", "2025-03-14", 12, 12)]
    [InlineData("2013-03-14", "2025-09-13", 12.49, 12.51)]
    [InlineData("2012-02-29", "2025-02-28", 13, 13)]
    [InlineData("2025-03-14", "2025-03-14", 0, 0)]
    public void Years_are_counted_by_birthdays(string born, string day, double least, double most) =>
        Assert.InRange(Age.InYears(Day(born), Day(day)), least, most);

    [Fact]
    public void Nobody_is_younger_than_born() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Age.InYears(Day("2025-03-15"), Day("2025-03-14")));

    private static DateOnly Day(string iso) => DateOnly.ParseExact(iso, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
