using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Defaults;

/// <summary>One part of the form that a label implies: constant + slope · foot length + steps.</summary>
/// <param name="Part">The part.</param>
/// <param name="Constant">mm (points for the shank).</param>
/// <param name="PerLength">mm a mm of the foot that the label means.</param>
/// <param name="PerWidthStep">mm a width step.</param>
/// <param name="PerBoxStep">mm a box step.</param>
/// <param name="PerVampStep">mm a vamp step.</param>
public sealed record LabelPart(FormPart Part, double Constant, double PerLength, double PerWidthStep, double PerBoxStep, double PerVampStep);

/// <summary>How much shorter than its label a shoe is made on the inside.</summary>
/// <param name="SystemId">Id of the size system.</param>
/// <param name="Millimetres">mm taken off the foot length that the label means.</param>
public sealed record LabelAllowance(string SystemId, double Millimetres);

/// <summary>What a size label alone says about the inside of a shoe (cp, from the regressions of the surveyed women's feet).</summary>
public sealed record LabelForm
{
    /// <summary>The eight parts, in the order of <see cref="FormPart"/>.</summary>
    /// <remarks>Box: toe-breadth 0.86 of the ball breadth 40.16 + 0.2134 · length of ANSUR II women, half a mm less. Girth: women's 86.94 + 0.5732 · length less 8 mm of squeeze and 2.5 mm. Heel: women's 14.525 + 0.2137 · length less 2.5 mm.</remarks>
    public IReadOnlyList<LabelPart> Parts { get; init; } =
    [
        new(FormPart.Length, 0, 1, 0, 0, 0),
        new(FormPart.BoxBreadth, (0.86 * 40.16) - 0.5, 0.86 * 0.2134, 2.5, 1, 0),
        new(FormPart.BallGirth, 76.44, 0.5732, 7, 0, 0),
        new(FormPart.HeelBreadth, 12.03, 0.2137, 1.5, 0, 0),
        new(FormPart.CrownDepth, -0.5, 0.155, 0, 0, 0),
        new(FormPart.ToeSlope, 16, 0, 0, -4, 0),
        new(FormPart.Vamp, -1.11, 0.2714, 0, 0, 5),
        new(FormPart.Shank, 5.2, 0, 0, 0, 0),
    ];

    /// <summary>Label less foot, by size system: three quarters of a size where a size is a third of an inch, one Paris point, 5 mm elsewhere (cp).</summary>
    public IReadOnlyList<LabelAllowance> Allowances { get; init; } =
    [
        new("eu", 20.0 / 3),
        new("uk-adult", 6.35),
        new("uk-child", 6.35),
        new("us-men", 6.35),
        new("us-women", 6.35),
        new("us-women-fia", 6.35),
        new("us-child", 6.35),
        new("mondopoint", 5),
        new("jp", 5),
    ];

    /// <summary>The allowance of a size system, mm.</summary>
    /// <exception cref="ArgumentException">There is no allowance for it.</exception>
    public double AllowanceOf(string systemId) =>
        Allowances.FirstOrDefault(row => row.SystemId == systemId)?.Millimetres
        ?? throw new ArgumentException($"No label allowance is set for the size system '{systemId}'.", nameof(systemId));
}
