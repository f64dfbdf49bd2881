namespace ShopFit.Fitting.Outlines;

/// <summary>A direction of travel along a line.</summary>
/// <param name="Across">Share that goes towards the little toe.</param>
/// <param name="Forward">Share that goes towards the toes.</param>
internal readonly record struct Heading(double Across, double Forward)
{
    /// <summary>Towards the toes.</summary>
    internal static Heading Toeward { get; } = new(0, 1);

    /// <summary>Towards the heel.</summary>
    internal static Heading Heelward { get; } = new(0, -1);

    /// <summary>Towards the little toe.</summary>
    internal static Heading Outward { get; } = new(1, 0);

    /// <summary>Towards the big toe.</summary>
    internal static Heading Inward { get; } = new(-1, 0);
}
