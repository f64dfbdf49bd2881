namespace ShopFit.Web.Features.Dancers;

/// <summary>How old somebody is, counted by birthdays.</summary>
public static class Age
{
    /// <summary>From this age people answer for themselves. Eighteen is common practice; local law goes first.</summary>
    public const double Grown = 18;

    /// <summary>Whole years by birthdays and the part of a year since the last one; on a birthday exactly whole.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The day is before the birth.</exception>
    public static double InYears(DateOnly born, DateOnly day)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(day, born);
        var years = day.Year - born.Year;
        if (born.AddYears(years) > day)
        {
            years--;
        }

        var last = born.AddYears(years);
        return years + ((double)(day.DayNumber - last.DayNumber) / (born.AddYears(years + 1).DayNumber - last.DayNumber));
    }
}
