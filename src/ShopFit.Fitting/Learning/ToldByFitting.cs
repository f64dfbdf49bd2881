using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Learning;

/// <summary>What a closed fitting tells of the shoes that were tried.</summary>
/// <remarks>
/// The checks count as they were seen. A pair that was returned or fitted anew for a reason is one more try-on, with the check of that
/// reason answered on the wrong side.
/// </remarks>
public sealed record ToldByFitting
{
    /// <summary>What was believed of the feet by readings alone.</summary>
    public required FeetBelief Feet { get; init; }

    /// <summary>The kind of footwear.</summary>
    public required string Kind { get; init; }

    /// <summary>The sizes that were tried, as they are on file.</summary>
    public required IReadOnlyList<ShoeOnFile> Tried { get; init; }

    /// <summary>What was seen of them. Sore feet left out: they teach nothing.</summary>
    public required IReadOnlyList<TryOn> TryOns { get; init; }

    /// <summary>The pairs that were found to fit, and how far that counts.</summary>
    public IReadOnlyList<FoundToFit> Fitted { get; init; } = [];

    /// <summary>First pair: answers count for less.</summary>
    public bool FirstPair { get; init; }

    /// <summary>The numbers of the shop.</summary>
    public FitDefaults Defaults { get; init; } = FitDefaults.Standard;
}

/// <summary>A pair that was found to fit with the pads under it.</summary>
/// <param name="Sku">Which pair.</param>
/// <param name="Pads">The pads it was sold with.</param>
/// <param name="Confirmed">Whether the look after three weeks said so too; at the sale alone it counts half.</param>
public sealed record FoundToFit(string Sku, IReadOnlyList<PadUnderFoot> Pads, bool Confirmed = false)
{
    /// <summary>How far it counts at the sale, before anybody has danced in it (cp).</summary>
    public const double AtSale = 0.5;

    /// <summary>How far it counts, 0 to 1.</summary>
    internal double Weight => Confirmed ? 1 : AtSale;
}
