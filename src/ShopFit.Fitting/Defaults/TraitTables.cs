using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Defaults;

/// <summary>What is known of a trait that no survey gives: constant + slope · other trait, and the spread left.</summary>
/// <param name="Trait">The trait.</param>
/// <param name="Constant">In the trait's unit.</param>
/// <param name="Given">The surveyed trait it leans on; null where it leans on none.</param>
/// <param name="Slope">Trait's units a mm of <paramref name="Given"/>.</param>
/// <param name="SdLeft">Standard deviation left, in the trait's unit.</param>
public sealed record DerivedTrait(Trait Trait, double Constant, Trait? Given, double Slope, double SdLeft);

/// <summary>How a word for a trait is understood: an ordered answer with two thresholds on the trait.</summary>
/// <param name="LowerPercentile">Share of the population below the first threshold (cp).</param>
/// <param name="UpperPercentile">Share of the population below the second (cp).</param>
/// <param name="NoiseShare">Noise of the answer, in standard deviations of the population (cp).</param>
public sealed record WordReadings(double LowerPercentile = 0.3, double UpperPercentile = 0.7, double NoiseShare = 0.5);

/// <summary>How a gross misreading is told from a usual one: as a rare reading with a far larger error.</summary>
/// <param name="Chance">How often a reading is grossly wrong, 0 to 1 (cp).</param>
/// <param name="SdFactor">Its standard deviation, as a multiple of the usual one (cp).</param>
/// <param name="AskFrom">From this probability on that a reading is grossly wrong it is asked for once more, 0 to 1 (cp).</param>
/// <param name="SharedChance">How often several readings of one trait are wrong alike, as from a wrong scale or of another dancer, 0 to 1 (cp).</param>
public sealed record GrossReadings(double Chance = 0.01, double SdFactor = 20, double AskFrom = 0.2, double SharedChance = 0.001);

/// <summary>The numbers of the traits, (cp) where nothing else is said.</summary>
public static class TraitTables
{
    /// <summary>The traits that no survey gives (cp).</summary>
    public static IReadOnlyList<DerivedTrait> Derived { get; } =
    [
        new(Trait.ToeBreadth, 0, Trait.BallBreadth, 0.86, 3.0),
        new(Trait.ForefootDepth, 0, Trait.Length, 0.155, 2.5),
        new(Trait.ToeSlope, 16, null, 0, 6),
        new(Trait.SecondToeLead, -2, null, 0, 4),
        new(Trait.Squeeze, 8, null, 0, 4),
        new(Trait.PointRange, 83, null, 0, 8),
        new(Trait.Strength, 5, null, 0, 2),
    ];

    /// <summary>Left with right, in the order of <see cref="Trait"/>.</summary>
    public static IReadOnlyList<double> LeftRightCorrelation { get; } =
        [0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.95, 0.95, 0.95];

    /// <summary>Repeatability, in the trait's unit, in the order of <see cref="Trait"/> (cp, guided by Witana et al. 2006 and Lee, Lin and Wang 2014).</summary>
    public static IReadOnlyList<double> ReadingSd { get; } =
        [1.0, 1.5, 1.0, 2.0, 1.0, 1.0, 1.0, 1.5, 1.0, 2.0, 4.0, 1.0];
}
