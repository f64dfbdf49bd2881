using System.Globalization;

namespace ShopFit.Web.Features.Settings;

/// <summary>The time on the shop's own wall.</summary>
public sealed record ShopTime(TimeZoneInfo Zone)
{
    /// <summary>The time of this shop.</summary>
    public static ShopTime Of(Shop shop) => new(TimeZoneInfo.FindSystemTimeZoneById(shop.TimeZone));

    /// <summary>The day on the calendar.</summary>
    public DateOnly Day(DateTimeOffset at) => DateOnly.FromDateTime(On(at).DateTime);

    /// <summary>The time on the clock: "14:02".</summary>
    public string Clock(DateTimeOffset at) => On(at).ToString("t", CultureInfo.CurrentCulture);

    /// <summary>The day in words: "12 March 2026".</summary>
    public string Date(DateTimeOffset at) => On(at).ToString("d MMMM yyyy", CultureInfo.CurrentCulture);

    private DateTimeOffset On(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, Zone);
}
