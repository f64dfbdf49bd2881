namespace ShopFit.Web.Features.Fittings;

/// <summary>A smaller size that was asked for, and what was advised instead. It stays in the shop's record and is never printed.</summary>
/// <param name="Label">The size that was asked for, as people write it.</param>
/// <param name="Advised">The pair that was advised when it was asked for.</param>
public sealed record AskedSize(string Label, string Advised)
{
    /// <summary>Longest label of a size that was asked for, in letters.</summary>
    public const int LongestLabel = 40;

    /// <summary>Longest name of a pair that was advised, in letters.</summary>
    public const int LongestAdvised = 200;

    /// <summary>Whether both say something and fit into the record.</summary>
    public bool IsClear => !string.IsNullOrWhiteSpace(Label) && Label.Length <= LongestLabel && !string.IsNullOrWhiteSpace(Advised) && Advised.Length <= LongestAdvised;
}
