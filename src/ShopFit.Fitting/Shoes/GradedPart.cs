namespace ShopFit.Fitting.Shoes;

/// <summary>A part of a form that was measured on a sample, under another label perhaps.</summary>
/// <param name="Value">mm (points for the shank).</param>
/// <param name="Sample">Which sample it comes from, or mostly comes from: its index among the samples.</param>
public readonly record struct GradedPart(double Value, int Sample);
