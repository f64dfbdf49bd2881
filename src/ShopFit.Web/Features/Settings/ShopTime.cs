using System.Globalization;

namespace ShopFit.Web.Features.Settings;

/// <summary>The time on the shop's own wall.</summary>
public sealed record ShopTime(TimeZoneInfo Zone)
{
    /// <summary>Whether people here write the month before the day: where the paper is Letter, they do.</summary>
    public bool MonthFirst { get; init; }

    /// <summary>The time of this shop.</summary>
    public static ShopTime Of(Shop shop) => new(TimeZoneInfo.FindSystemTimeZoneById(shop.TimeZone)) { MonthFirst = shop.Paper == "Letter" };

    /// <summary>The day on the calendar.</summary>
    public DateOnly Day(DateTimeOffset at) => DateOnly.FromDateTime(On(at).DateTime);

    /// <summary>The time on the clock: "14:02".</summary>
    public string Clock(DateTimeOffset at) => On(at).ToString("t", CultureInfo.CurrentCulture);

    /// <summary>The day in words: "12 March 2026".</summary>
    public string Date(DateTimeOffset at) => Date(Day(at));

    /// <summary>The day in words: "12 March 2026".</summary>
    public string Date(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.CurrentCulture);

    /// <summary>The first moment of a day; where the clocks skip it, the first that there is.</summary>
    public DateTimeOffset Start(DateOnly day)
    {
        var midnight = day.ToDateTime(TimeOnly.MinValue);
        while (Zone.IsInvalidTime(midnight))
        {
            midnight = midnight.AddMinutes(1);
        }

        // Where the clocks show it twice, the day begins with the first.
        var offset = Zone.IsAmbiguousTime(midnight) ? Zone.GetAmbiguousTimeOffsets(midnight).Max() : Zone.GetUtcOffset(midnight);
        return new DateTimeOffset(midnight, offset);
    }

    private DateTimeOffset On(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, Zone);
}
