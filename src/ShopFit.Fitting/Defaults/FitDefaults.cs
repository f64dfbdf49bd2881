namespace ShopFit.Fitting.Defaults;

/// <summary>Every number of the fit model that a shop can change, with its starting value. The one place for them.</summary>
public sealed record FitDefaults
{
    /// <summary>The starting values.</summary>
    public static FitDefaults Standard { get; } = new();
}
