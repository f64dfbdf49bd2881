using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Defaults;

/// <summary>How much an answer at a try-on counts.</summary>
/// <param name="FirstPairNoise">Factor of the noise of every answer at a first pair (cp).</param>
/// <param name="DancersWordNoise">Factor of the noise of an answer that is the dancer's word (cp).</param>
public sealed record AnswerRules(double FirstPairNoise = 1.5, double DancersWordNoise = 1.5);

/// <summary>The checks at a try-on, thresholds and noise in mm (points for the shank) (cp).</summary>
public static class CheckTable
{
    /// <summary>All checks, in the order in which a dancer is seen.</summary>
    public static IReadOnlyList<Check> All { get; } =
    [
        new("toes-flat", TryOnPosition.DemiPlie, [new("length", 1)], -2, 3, 1.5),
        new("toe-hold", TryOnPosition.Flat, [new("box", 1)], -3, 2, 1.5),
        new("ball-sides", TryOnPosition.Flat, [new("ball", 1)], -6, 2, 2.5),
        new("crown-line", TryOnPosition.Flat, [new("crown", 1)], -2, 2, 1),
        new("throat-line", TryOnPosition.DemiPointe, [new("vamp", 1)], -2, 5, 3),
        new("heel-sides", TryOnPosition.DemiPointe, [new("heel", 1)], -5, 0, 2.5),
        new("drop", TryOnPosition.EnPointe, [new("ball", 0.5), new("box", 1), new("crown", 0.5)], -6, 3, 2.5),
        new("heel-fabric", TryOnPosition.EnPointe, [new("length", 1), new("heel", 0.5)], -2, 3, 2),
        new("arch", TryOnPosition.EnPointe, [new("shank", 1)], -1.5, 1.5, 1.5),
        new("toe-load", TryOnPosition.EnPointe, [new("toe-line", 1)], -3, 6, 2),

        // The sign: a box that slopes more than the toes presses them.
        new("outer-toes", TryOnPosition.EnPointe, [new("taper", -1)], -4, 4, 3, AlwaysByDancer: true),
        new("sole-line", TryOnPosition.EnPointe, [], 0, 0, 0),
    ];
}
