using ShopFit.Fitting.Feet;

namespace ShopFit.Seed;

/// <summary>Somebody who does not exist.</summary>
internal sealed record DemoDancer
{
    /// <summary>Only for references inside the files.</summary>
    public required string Key { get; init; }

    public required string Name { get; init; }

    public required string KnownAs { get; init; }

    public required DateOnly Born { get; init; }

    public required Sex Sex { get; init; }

    public required DemoStudio Studio { get; init; }

    public required string Teacher { get; init; }

    /// <summary>Key of whoever answers for them; empty for grown people.</summary>
    public required string Guardian { get; init; }

    /// <summary>What brings them.</summary>
    public required DemoPath Path { get; init; }

    /// <summary>The first day they came.</summary>
    public required DateOnly Arrives { get; init; }

    internal bool IsMinor => Guardian.Length > 0;

    internal double AgeOn(DateOnly day) => DemoCalendar.Age(Born, day);

    /// <summary>Whether they are that old, with some days to spare: a leap year in between makes nobody too young when the dates are moved.</summary>
    internal bool IsOn(DateOnly day, int years) => day >= Born.AddYears(years).AddDays(3);
}

/// <summary>Whoever answers for children.</summary>
internal sealed record DemoGuardian(string Key, string Name, string Contact);

/// <summary>What brings a dancer to the shop.</summary>
internal enum DemoPath
{
    /// <summary>Ballet, and pointe from twelve on when the teacher says so.</summary>
    Ballet,

    /// <summary>Jazz, tap and character.</summary>
    Stage,

    /// <summary>Grown, and dancing on pointe for years.</summary>
    Experienced,

    /// <summary>Grown, and began late.</summary>
    GrownBeginner,
}
