namespace ShopFit.Seed;

/// <summary>The two years that the demo shop looks back on: terms begin and shows come.</summary>
internal static class DemoCalendar
{
    /// <summary>The day up to which the history goes. Whoever loads it moves this day to theirs.</summary>
    internal static DateOnly AsOf { get; } = new(2026, 11, 25);

    /// <summary>The day on which the shop began to count.</summary>
    internal static DateOnly First { get; } = new(2024, 11, 26);

    /// <summary>When many come: the weeks in which terms begin, and those before a show. Month and day, both ends included *(cp)*.</summary>
    private static readonly (int Month, int From, int To)[] Peaks = [(1, 4, 22), (4, 14, 30), (6, 8, 28), (9, 1, 20), (11, 18, 30)];

    /// <summary>When deliveries come, a week or two before the peaks *(cp)*.</summary>
    private static readonly (int Month, int Day)[] Arrivals = [(1, 3), (2, 14), (4, 9), (6, 2), (8, 27), (10, 14), (11, 13)];

    /// <summary>Half of what would fall near a peak falls into it.</summary>
    private const double DrawnToPeak = 0.55;
    private const int NearPeakDays = 30;

    /// <summary>The days on which the makers deliver, oldest first.</summary>
    internal static IReadOnlyList<DateOnly> Deliveries { get; } =
    [
        .. Enumerable.Range(First.Year, AsOf.Year - First.Year + 1)
            .SelectMany(year => Arrivals.Select(arrival => new DateOnly(year, arrival.Month, arrival.Day)))
            .Where(day => day > First && day < AsOf)
            .Select(Open),
    ];

    /// <summary>A day near that one on which the shop is open, and rather one in a peak.</summary>
    internal static DateOnly VisitNear(DateOnly day, DemoRandom random)
    {
        if (random.Chance(DrawnToPeak))
        {
            var peak = Enumerable.Range(day.Year - 1, 3)
                .SelectMany(year => Peaks.Select(peak => new DateOnly(year, peak.Month, random.Between(peak.From, peak.To))))
                .MinBy(candidate => Math.Abs(candidate.DayNumber - day.DayNumber));
            day = Math.Abs(peak.DayNumber - day.DayNumber) <= NearPeakDays ? peak : day;
        }

        // Saturdays are twice as busy as any other day.
        return Open(random.Chance(0.4) ? day.AddDays(DayOfWeek.Saturday - day.DayOfWeek) : day);
    }

    /// <summary>The day itself, or the Monday after a Sunday.</summary>
    internal static DateOnly Open(DateOnly day) => day.DayOfWeek == DayOfWeek.Sunday ? day.AddDays(1) : day;

    /// <summary>Years by the mean year, as near as feet care.</summary>
    internal static double Age(DateOnly born, DateOnly day) => (day.DayNumber - born.DayNumber) / 365.2425;
}
