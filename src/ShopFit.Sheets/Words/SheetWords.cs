using System.Globalization;
using System.Resources;
using System.Text.RegularExpressions;

namespace ShopFit.Sheets.Words;

/// <summary>The fixed words of the papers in one language.</summary>
internal sealed partial class SheetWords(CultureInfo culture)
{
    private static readonly ResourceManager Resources = new(typeof(SheetWords));

    public CultureInfo Culture => culture;

    /// <exception cref="MissingManifestResourceException">No language has words of that name.</exception>
    public string this[string name] =>
        Resources.GetString(name, culture) ?? throw new MissingManifestResourceException($"The papers have no words named {name}.");

    public string Filled(string name, params object[] with) => string.Format(culture, this[name], with);

    /// <summary>Day and month, and the year where it is another than the sheet's.</summary>
    public string Day(DateOnly date, DateOnly sheet) => date.Year == sheet.Year ? Together(date.ToString("M", culture)) : FullDay(date);

    /// <summary>Day, month and year as the culture writes them, without the day of the week.</summary>
    public string FullDay(DateOnly date) => Together(date.ToString(WeekdayInPattern().Replace(culture.DateTimeFormat.LongDatePattern, ""), culture));

    // A date is not broken over two lines.
    private static string Together(string day) => day.Replace(' ', '\u00A0');

    [GeneratedRegex(@"dddd\p{P}*\s*|\p{P}*\s*dddd$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex WeekdayInPattern();
}
