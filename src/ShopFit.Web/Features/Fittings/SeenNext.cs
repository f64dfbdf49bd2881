namespace ShopFit.Web.Features.Fittings;

/// <summary>The pair to try next.</summary>
/// <param name="Pair">Which pair.</param>
/// <param name="Reason">One sentence why.</param>
/// <param name="ChanceOnShelf">Chance that any pair on the shelf fits, 0 to 1.</param>
public sealed record SeenNext(SeenPair Pair, string Reason, double ChanceOnShelf);
