using System.Numerics;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Fitting.Pads;

/// <summary>Every set of pads that may be put under one foot, and where the eases may lie for it to help.</summary>
/// <remarks>
/// Sets are few, so all of them are looked at. Each set has a bit; for every criterion a table of steps says for an ease (without pads)
/// which sets bring it to a fit. The sets that work are those whose bit is set for all criteria.
/// </remarks>
internal sealed class PadSets
{
    /// <summary>How many sets there can be: each has one bit.</summary>
    public const int Most = 64;

    private PadSets(Pad[][] sets, EaseModel model, FitDefaults defaults)
    {
        Sets = sets;
        Bulk = [.. sets.Select(set => set.Sum(pad => pad.Bulk))];
        Shifts = new double[sets.Length * model.Count];
        for (int k = 0; k < sets.Length; k++)
        {
            for (int c = 0; c < model.Count; c++)
            {
                Shifts[(k * model.Count) + c] = ShiftOf(sets[k], model.Criteria[c].Id);
            }
        }

        Steps = [.. model.Criteria.Select((criterion, c) => EaseSteps.Of(
            criterion, defaults.FitsFrom, [.. Enumerable.Range(0, sets.Length).Select(k => Shifts[(k * model.Count) + c])]))];
    }

    /// <summary>The sets; the first is empty.</summary>
    public Pad[][] Sets { get; }

    /// <summary>Bulk of each set.</summary>
    public double[] Bulk { get; }

    /// <summary>Shift of each ease by each set: set · criteria + criterion.</summary>
    public double[] Shifts { get; }

    /// <summary>For each criterion, which sets bring an ease to a fit.</summary>
    public EaseSteps[] Steps { get; }

    public int Count => Sets.Length;

    /// <summary>All sets of correcting pads that do something for this kind of footwear.</summary>
    /// <exception cref="ArgumentException">The pads make more than <see cref="Most"/> sets.</exception>
    public static PadSets Of(EaseModel model, FitDefaults defaults)
    {
        Pad[] pads = [.. defaults.Pads.Where(pad => pad.Corrects && model.Criteria.Any(criterion => pad.Effects.ContainsKey(criterion.Id)))];
        Pad[][] sets = [.. Subsets(pads, defaults.PadRules.MostCorrecting).OrderBy(set => set.Length)];
        return sets.Length <= Most
            ? new PadSets(sets, model, defaults)
            : throw new ArgumentException($"{pads.Length} correcting pads make {sets.Length} sets; at most {Most} can be searched.", nameof(defaults));
    }

    /// <summary>How far a set of pads shifts the ease of a criterion.</summary>
    public static double ShiftOf(IEnumerable<Pad> set, string criterion) =>
        set.Sum(pad => pad.Effects.GetValueOrDefault(criterion));

    // A pad once a foot: every way to take at most so many of the pads from here on.
    private static IEnumerable<Pad[]> Subsets(Pad[] pads, int most, int from = 0)
    {
        yield return [];
        for (int first = from; most > 0 && first < pads.Length; first++)
        {
            foreach (var rest in Subsets(pads, most - 1, first + 1))
            {
                yield return [pads[first], .. rest];
            }
        }
    }
}
