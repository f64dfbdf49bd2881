using System.Globalization;

namespace ShopFit.Web.Shared;

/// <summary>Reads a day as people type it: 2014-03-12, 12.3.2014, 12/3/14, 12 March 2014, 12032014.</summary>
/// <remarks>
/// The year first is ISO 8601; points put the day first, as wherever people write them; with slashes and with blanks it goes the
/// way of the shop, unless only the other way is a day at all. Whoever shows the field also shows the day in words, so that
/// a day and a month that changed places are seen.
/// </remarks>
public static class TypedDay
{
    private const int DigitsOfYearFirst = 8;

    /// <summary>Reads it; false for anything that is no day, never a guess.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="monthFirst">Whether the shop writes the month before the day.</param>
    /// <param name="today">Two digits mean the last such year up to this day's.</param>
    /// <param name="day">The day.</param>
    public static bool TryRead(string? text, bool monthFirst, DateOnly today, out DateOnly day)
    {
        day = default;
        var parts = (text ?? "").Split([' ', '.', '/', '-', ',', '\u2013', '\u00A0'], StringSplitOptions.RemoveEmptyEntries);
        if (parts is [{ Length: DigitsOfYearFirst } digits] && digits.All(char.IsAsciiDigit))
        {
            return Try([digits[..4], digits[4..6], digits[6..]], yearFirst: true, monthFirst, today, out day)
                || Try([digits[..2], digits[2..4], digits[4..]], yearFirst: false, monthFirst, today, out day);
        }

        if (parts.Length is not 3)
        {
            return false;
        }

        if (parts[0].Length is 4)
        {
            return Try(parts, yearFirst: true, monthFirst, today, out day);
        }

        var firstIsMonth = monthFirst && !text!.Contains('.', StringComparison.Ordinal);
        return Try(parts, yearFirst: false, firstIsMonth, today, out day) || Try(parts, yearFirst: false, !firstIsMonth, today, out day);
    }

    private static bool Try(string[] parts, bool yearFirst, bool monthFirst, DateOnly today, out DateOnly day)
    {
        day = default;
        var (yearText, monthText, dayText) = yearFirst ? (parts[0], parts[1], parts[2])
            : monthFirst ? (parts[2], parts[0], parts[1])
            : (parts[2], parts[1], parts[0]);
        if (Year(yearText, today) is not { } year || Month(monthText) is not { } month || Number(dayText, 2) is not { } number
            || number < 1 || number > DateTime.DaysInMonth(year, month))
        {
            return false;
        }

        day = new DateOnly(year, month, number);
        return true;
    }

    private static int? Year(string text, DateOnly today) => (text.Length, Number(text, 4)) switch
    {
        (4, >= 1 and { } year) => year,
        (2, { } inCentury) => (today.Year / 100 * 100) + inCentury is var year && year <= today.Year ? year : year - 100,
        _ => null,
    };

    private static int? Month(string text)
    {
        if (Number(text, 2) is { } number)
        {
            return number is >= 1 and <= 12 ? number : null;
        }

        // A name, or enough of its beginning to be no other.
        var names = CultureInfo.CurrentCulture.DateTimeFormat.MonthNames.Concat(CultureInfo.InvariantCulture.DateTimeFormat.MonthNames)
            .Select((name, index) => (Key: FoldedText.Of(name), Month: (index % 13) + 1))
            .Where(name => name.Key.Length > 0);
        var key = FoldedText.Of(text);
        var found = names.Where(name => key.Length >= 3 && name.Key.StartsWith(key, StringComparison.Ordinal)).Select(name => name.Month).Distinct().ToList();
        return found is [var only] ? only : null;
    }

    private static int? Number(string text, int longest) =>
        text.Length <= longest && text.All(char.IsAsciiDigit) && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
