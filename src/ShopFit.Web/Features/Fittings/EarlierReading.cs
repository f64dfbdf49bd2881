using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What an earlier fitting read of one trait of one foot.</summary>
/// <param name="At">When that fitting was.</param>
/// <param name="Value">The number, the mean of several, in the trait's unit; a word as 0, 1 or 2.</param>
public sealed record EarlierReading(DateTimeOffset At, double Value)
{
    /// <summary>The numbers of earlier fittings, the latest first.</summary>
    public static IReadOnlyList<EarlierReading> NumbersOf(FittingEvidence evidence, Side foot, Trait trait) =>
        Of(evidence, foot, trait, reading => reading.Unit is not ReadingUnit.Word, readings => readings.Average(reading => reading.InTraitUnit()!.Value));

    /// <summary>The words of earlier fittings, the latest first.</summary>
    public static IReadOnlyList<EarlierReading> WordsOf(FittingEvidence evidence, Side foot, Trait trait) =>
        Of(evidence, foot, trait, reading => reading.Unit is ReadingUnit.Word, readings => readings[^1].Value);

    private static IReadOnlyList<EarlierReading> Of(
        FittingEvidence evidence, Side foot, Trait trait, Func<Reading, bool> wanted, Func<IReadOnlyList<Reading>, double> value) =>
    [
        .. from fitting in evidence.Before.Reverse()
           let readings = fitting.Readings.Where(reading => reading.Foot == foot && reading.Trait == trait && wanted(reading)).ToList()
           where readings.Count > 0
           select new EarlierReading(fitting.At, value(readings)),
    ];
}
