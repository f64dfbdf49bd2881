using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace ShopFit.Web.Data;

/// <summary>Stores a moment as UTC, cut to whole microseconds so that every engine gives back what it was given.</summary>
internal sealed class UtcConverter() : ValueConverter<DateTimeOffset, DateTime>(
    moment => CutToMicroseconds(moment.UtcDateTime),
    stored => new DateTimeOffset(DateTime.SpecifyKind(stored, DateTimeKind.Utc)))
{
    private static DateTime CutToMicroseconds(DateTime utc) => utc.AddTicks(-(utc.Ticks % TimeSpan.TicksPerMicrosecond));
}
