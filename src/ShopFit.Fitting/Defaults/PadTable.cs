using ShopFit.Fitting.Pads;

namespace ShopFit.Fitting.Defaults;

/// <summary>How pads are proposed.</summary>
/// <param name="BulkPenalty">Score given up a unit of bulk (cp).</param>
/// <param name="MostCorrecting">How many correcting pads a foot may get (cp).</param>
public sealed record PadRules(double BulkPenalty = 0.02, int MostCorrecting = 2);

/// <summary>The pads at their nominal thickness, effects in mm of ease (cp).</summary>
public static class PadTable
{
    /// <summary>All pads, in the order in which they are offered.</summary>
    public static IReadOnlyList<Pad> All { get; } =
    [
        new("second-toe-hollow", Effects(("toe-line", 4), ("length", -0.5)), 1),
        new("first-toe-lift", Effects(("toe-line", 3)), 1),
        new("toe-cap", Effects(("length", -1.5), ("box", -2), ("crown", -1)), 2),
        new("heel-cushion", Effects(("heel", -3), ("length", -0.5)), 1),
        new("joint-cushion", Effects(("ball", -4), ("crown", -1)), 1),
        new("toe-cushion", Effects(("box", -3), ("crown", -1), ("length", -0.5)), 1),
        new("loose-wool", Effects(("box", -1), ("crown", -1)), 1),
        new("toe-spacer", Effects(("box", -1.5)), 1, Corrects: false),
    ];

    private static Dictionary<string, double> Effects(params (string Criterion, double Shift)[] effects) =>
        effects.ToDictionary(effect => effect.Criterion, effect => effect.Shift, StringComparer.Ordinal);
}
