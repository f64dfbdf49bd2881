using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;

namespace ShopFit.Fitting.Beliefs;

/// <summary>A reading in numbers, ready for the belief.</summary>
/// <param name="Place">Its place in the list that was given.</param>
/// <param name="Index">The trait it reads: 12 · side + trait.</param>
/// <param name="Value">In the trait's unit.</param>
/// <param name="Variance">Of its usual error, in the trait's unit squared.</param>
internal sealed record NumberReading(int Place, int Index, double Value, double Variance)
{
    /// <summary>The reading with the usual error of one measurer, and of rounding where it was read as a size.</summary>
    public static NumberReading Of(int place, Reading reading, FitDefaults defaults)
    {
        double sd = defaults.ReadingSd[(int)reading.Trait];
        double variance = sd * sd;
        if (reading is { Unit: ReadingUnit.Size, System: { } system })
        {
            double step = system.LabelStep * MillimetresPerSize(system);
            variance += step * step / 12; // a number rounded to steps is off by an even spread of one step
        }

        int index = (Traits.Count * (int)reading.Foot) + (int)reading.Trait;
        return new NumberReading(place, index, reading.InTraitUnit()!.Value, variance);
    }

    private static double MillimetresPerSize(SizeSystem system) =>
        (system.FootLengthOf(system.Largest) - system.FootLengthOf(system.Smallest)).Value / (system.Largest - system.Smallest);
}
