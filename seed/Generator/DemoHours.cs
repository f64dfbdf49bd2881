namespace ShopFit.Seed;

/// <summary>Two people fit, one after the other who comes; children come after school.</summary>
internal sealed class DemoHours
{
    private const int MinutesBetween = 5;
    private static readonly TimeOnly Opens = new(10, 0);
    private static readonly TimeOnly SchoolIsOver = new(15, 30);
    private static readonly TimeOnly LastStart = new(17, 50);
    private static readonly string[] Fitters = ["wren", "corin"];
    private readonly Dictionary<(DateOnly Day, string Fitter), TimeOnly> _free = [];

    /// <summary>Who has time first that day, and when, UTC; null where the day is full.</summary>
    internal (string Fitter, DateTime At)? Next(DateOnly day, bool isMinor)
    {
        var earliest = isMinor && day.DayOfWeek != DayOfWeek.Saturday ? SchoolIsOver : Opens;

        // The manager fits only where the fitter is long at it.
        var at = Fitters.Select(fitter => (Fitter: fitter, At: Later(_free.GetValueOrDefault((day, fitter), Opens), earliest)))
            .OrderBy(one => one.At.AddMinutes(one.Fitter == Fitters[0] ? 0 : 40)).First();
        return at.At > LastStart ? null : (at.Fitter, day.ToDateTime(at.At));
    }

    /// <summary>Keeps somebody busy until then.</summary>
    internal void Busy(string fitter, DateTime until) =>
        _free[(DateOnly.FromDateTime(until), fitter)] = TimeOnly.FromDateTime(until).AddMinutes(MinutesBetween);

    private static TimeOnly Later(TimeOnly one, TimeOnly other) => one > other ? one : other;
}
