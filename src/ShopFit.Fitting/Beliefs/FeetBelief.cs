using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Beliefs;

/// <summary>What is believed about a dancer's two feet: a Gaussian over 12 traits of each, in the traits' own units.</summary>
/// <remarks>Immutable. Index of a trait: 12 * side + trait.</remarks>
public sealed class FeetBelief
{
    /// <summary>What is believed of somebody of this sex and age before anything is read.</summary>
    /// <param name="sex">Null: a mixture of both.</param>
    /// <param name="ageYears">Age in years; null: adult.</param>
    /// <param name="defaults">The numbers of the shop.</param>
    public static FeetBelief Prior(Sex? sex, double? ageYears, FitDefaults defaults) => throw new NotSupportedException("Not written yet.");

    /// <summary>The belief after all these readings together; their order does not matter.</summary>
    /// <remarks>Of a repeated word the last holds; repeated numbers are independent readings.</remarks>
    /// <exception cref="ArgumentException">A reading has a problem (<see cref="Reading.Check"/>).</exception>
    public ReadFeet After(IReadOnlyList<Reading> readings, FitDefaults defaults) => throw new NotSupportedException("Not written yet.");

    /// <summary>The belief some time later: carried along the growth curve, and less sure.</summary>
    public FeetBelief CarriedForward(Sex? sex, double fromAgeYears, double toAgeYears, FitDefaults defaults) => throw new NotSupportedException("Not written yet.");

    /// <summary>Best guess of a trait, in its unit.</summary>
    public double Mean(Side side, Trait trait) => throw new NotSupportedException("Not written yet.");

    /// <summary>How far off that may be: standard deviation, in the trait's unit.</summary>
    public double Sd(Side side, Trait trait) => throw new NotSupportedException("Not written yet.");
}

/// <summary>A belief after readings, and which readings it found hard to believe.</summary>
/// <param name="Belief">The belief.</param>
/// <param name="Doubts">Readings to take once more; each is kept and weighed down, never dropped.</param>
public sealed record ReadFeet(FeetBelief Belief, IReadOnlyList<DoubtfulReading> Doubts);

/// <summary>A reading far outside what everything else says.</summary>
/// <param name="Index">Its place in the list that was given.</param>
/// <param name="Expected">What was expected, in the trait's unit.</param>
/// <param name="ExpectedSd">How sure that was, in the trait's unit.</param>
/// <param name="Weight">How much it counts now, above 0 and below 1.</param>
public sealed record DoubtfulReading(int Index, double Expected, double ExpectedSd, double Weight);
