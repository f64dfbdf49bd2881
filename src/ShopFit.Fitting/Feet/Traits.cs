namespace ShopFit.Fitting.Feet;

/// <summary>The unit in which a trait is kept.</summary>
public enum TraitUnit
{
    /// <summary>Millimetres.</summary>
    Millimetres,

    /// <summary>Degrees of angle.</summary>
    Degrees,

    /// <summary>Points from 0 to 10.</summary>
    Points,
}

/// <summary>The name of a trait in files and requests, its unit, and what is accepted as a reading of it.</summary>
/// <param name="Trait">Which trait.</param>
/// <param name="Id">Stable id, such as <c>heel-to-ball</c>.</param>
/// <param name="Unit">The unit in which it is kept.</param>
/// <param name="Lowest">Smallest reading accepted, in its unit.</param>
/// <param name="Highest">Largest reading accepted, in its unit.</param>
/// <param name="TakesWords">Whether it may be read as one of three words.</param>
public sealed record TraitRow(Trait Trait, string Id, TraitUnit Unit, double Lowest, double Highest, bool TakesWords);

/// <summary>The twelve traits.</summary>
public static class Traits
{
    /// <summary>How many there are.</summary>
    public const int Count = 12;

    /// <summary>All twelve, in the order of <see cref="Trait"/>.</summary>
    public static IReadOnlyList<TraitRow> All { get; } =
    [
        new(Trait.Length, "length", TraitUnit.Millimetres, 100, 350, TakesWords: false),
        new(Trait.HeelToBall, "heel-to-ball", TraitUnit.Millimetres, 60, 260, TakesWords: false),
        new(Trait.BallBreadth, "ball-breadth", TraitUnit.Millimetres, 25, 140, TakesWords: false),
        new(Trait.BallGirth, "ball-girth", TraitUnit.Millimetres, 100, 350, TakesWords: false),
        new(Trait.ToeBreadth, "toe-breadth", TraitUnit.Millimetres, 25, 140, TakesWords: false),
        new(Trait.HeelBreadth, "heel-breadth", TraitUnit.Millimetres, 25, 140, TakesWords: false),
        new(Trait.ForefootDepth, "forefoot-depth", TraitUnit.Millimetres, 15, 100, TakesWords: true),
        new(Trait.ToeSlope, "toe-slope", TraitUnit.Millimetres, -10, 60, TakesWords: true),
        new(Trait.SecondToeLead, "second-toe-lead", TraitUnit.Millimetres, -30, 30, TakesWords: true),
        new(Trait.Squeeze, "squeeze", TraitUnit.Millimetres, 0, 60, TakesWords: true),
        new(Trait.PointRange, "point-range", TraitUnit.Degrees, 0, 130, TakesWords: true),
        new(Trait.Strength, "strength", TraitUnit.Points, 0, 10, TakesWords: true),
    ];

    /// <summary>The row of a trait.</summary>
    public static TraitRow Of(Trait trait) => All[(int)trait];

    /// <summary>The trait with that id, or null where there is none.</summary>
    public static TraitRow? Find(string id) => All.FirstOrDefault(row => row.Id == id);
}
