namespace ShopFit.Seed;

/// <summary>Why somebody is in the shop on a day.</summary>
/// <param name="Day">The day.</param>
/// <param name="Dancer">Who.</param>
/// <param name="Kind">What for.</param>
/// <param name="Number">Counts the visits in the order in which they were thought of, so that equal days have an order.</param>
/// <param name="Again">Whether they left without a pair the last time.</param>
/// <param name="Ordered">The pair that came for them; null where they look for one.</param>
internal sealed record DemoVisit(DateOnly Day, DemoDancer Dancer, string Kind, int Number, bool Again = false, string? Ordered = null);

/// <summary>When somebody comes, as far as nothing happens in between.</summary>
internal static class DemoVisits
{
    /// <summary>No pointe shoe is fitted before this age: Weiss, Rist and Grossman 2009, J Dance Med Sci 13(3): 90-92.</summary>
    internal const int PointeFrom = 12;

    /// <summary>On the way to pointe: demi-pointe shoes *(cp)*.</summary>
    private const int DemiPointeFrom = 10;

    /// <summary>All visits of a dancer: the day and the kind of footwear, oldest first.</summary>
    internal static IEnumerable<(DateOnly Day, string Kind)> Of(DemoDancer dancer)
    {
        var random = DemoRandom.Of($"visits of {dancer.Key}");
        var day = dancer.Arrives;
        while (day < DemoCalendar.AsOf)
        {
            var kind = KindOn(dancer, day, random);
            yield return (day, kind);
            if (random.Chance(SecondPair(dancer, kind)))
            {
                yield return (day, SecondKind(kind, random));
            }

            var next = DemoCalendar.VisitNear(day.AddDays(DaysUntilNext(dancer, kind, day, random)), random);
            day = next > day.AddDays(20) ? next : DemoCalendar.Open(day.AddDays(21));
        }
    }

    private static string KindOn(DemoDancer dancer, DateOnly day, DemoRandom random) => dancer.Path switch
    {
        DemoPath.Experienced => random.Chance(0.85) ? "pointe" : "soft",
        DemoPath.GrownBeginner => random.Pick([("soft", 5), ("jazz", 1.5), ("tap", 1.5), ("character", 1), ("demi-pointe", dancer.Sex == Fitting.Feet.Sex.Female ? 0.5 : 0)]),
        DemoPath.Stage => random.Pick([("jazz", 3), ("tap", 3), ("character", 1.5), ("soft", 1.0)]),
        _ when dancer.Sex == Fitting.Feet.Sex.Male => random.Pick([("soft", 5), ("character", 1.0), ("jazz", 1)]),
        _ when !dancer.IsOn(day, DemiPointeFrom) => "soft",
        _ when !dancer.IsOn(day, PointeFrom) => random.Chance(0.2) ? "demi-pointe" : "soft",
        _ => random.Pick([("pointe", 10), ("soft", 1.0), ("demi-pointe", 0.4)]),
    };

    private static double SecondPair(DemoDancer dancer, string kind) => kind == "pointe" ? 0.05 : dancer.IsMinor ? 0.14 : 0.08;

    private static string SecondKind(string first, DemoRandom random) => first is "soft" or "pointe" or "demi-pointe"
        ? random.Pick(["character", "tap", "jazz"])
        : "soft";

    // Growing feet are looked at every few months; a pointe shoe is dead after so many hours of class *(cp)*.
    private static int DaysUntilNext(DemoDancer dancer, string kind, DateOnly day, DemoRandom random) => dancer switch
    {
        _ when dancer.AgeOn(day) < 15 => random.Between(100, 200),
        { IsMinor: true } => random.Between(90, 190),
        { Path: DemoPath.Experienced } when kind == "pointe" => random.Between(100, 220),
        _ => random.Between(210, 460),
    };
}
