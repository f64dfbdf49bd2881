namespace ShopFit.Fitting.Defaults;

/// <summary>The standard numbers with a shop's own over them.</summary>
/// <param name="Numbers">Numbers that make sense together.</param>
/// <param name="Problems">The shop's own numbers that were left at their defaults, and why.</param>
public sealed record AdjustedNumbers(FitDefaults Numbers, IReadOnlyList<FitProblem> Problems);
