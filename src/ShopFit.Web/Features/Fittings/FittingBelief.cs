using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What is believed of a dancer's feet at a fitting: her age and sex, what earlier fittings said, what was read today.</summary>
/// <remarks>An earlier fitting counts for as much as a foot can have changed since: its belief is carried along the growth curve.</remarks>
public sealed class FittingBelief
{
    // A foot of somebody of unknown age neither grows nor shrinks; only the years that passed count.
    private const double GrownAge = 30;
    private const double DaysInAYear = 365.2425;

    private readonly IReadOnlyList<Reading> _today;
    private readonly FitDefaults _defaults;

    private FittingBelief(FeetBelief before, IReadOnlyList<Reading> today, FitDefaults defaults)
    {
        Before = before;
        _today = today;
        _defaults = defaults;
        Now = before.After(today, defaults);
    }

    /// <summary>What was believed before anything was read today.</summary>
    public FeetBelief Before { get; }

    /// <summary>What is believed now, and which of today's readings are hard to believe.</summary>
    public ReadFeet Now { get; }

    /// <summary>Works it out from the evidence.</summary>
    public static FittingBelief Of(FittingEvidence evidence, FitDefaults defaults)
    {
        var before = FeetBelief.Prior(evidence.Sex, evidence.Before is [var first, ..] ? first.AgeYears : evidence.AgeYears, defaults);
        for (var index = 0; index < evidence.Before.Count; index++)
        {
            var then = evidence.Before[index];
            var (nextAge, nextAt) = index + 1 < evidence.Before.Count
                ? (evidence.Before[index + 1].AgeYears, evidence.Before[index + 1].At)
                : (evidence.AgeYears, evidence.At);
            var yearsPassed = Math.Max(0, (nextAt - then.At).TotalDays / DaysInAYear);
            var from = then.AgeYears ?? (nextAge is null ? GrownAge : Math.Max(0, nextAge.Value - yearsPassed));
            before = before.After(then.Readings, defaults).Belief.CarriedForward(evidence.Sex, from, Math.Max(from, nextAge ?? from + yearsPassed), defaults);
        }

        return new(before, evidence.Today, defaults);
    }

    /// <summary>Today's readings that are hard to believe, each with its row. Every one is kept; it is asked for once more.</summary>
    public IReadOnlyList<DoubtedReading> Doubts(SeenFitting fitting) =>
        [.. Now.Doubts.Where(doubt => doubt.Index < fitting.Readings.Count).Select(doubt => new DoubtedReading(fitting.Readings[doubt.Index], doubt))];

    /// <summary>Whether a number read of a trait is hard to believe.</summary>
    public bool IsDoubted(SeenFitting fitting, Side foot, Trait trait) => Doubts(fitting).Any(doubt =>
        doubt.Reading.Reading.Foot == foot && doubt.Reading.Reading.Trait == trait && doubt.Reading.Reading.Unit is not ReadingUnit.Word);

    /// <summary>What would be believed if this were read too: for drawing what is being typed.</summary>
    /// <exception cref="ArgumentException">The reading has a problem.</exception>
    public FeetBelief With(Reading reading) => Before.After([.. _today, reading], _defaults).Belief;
}

/// <summary>A reading and why it is hard to believe.</summary>
public sealed record DoubtedReading(SeenReading Reading, DoubtfulReading Doubt);
