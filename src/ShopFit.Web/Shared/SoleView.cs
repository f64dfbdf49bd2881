using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Outlines;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Web.Shared;

/// <summary>What is drawn of one foot.</summary>
/// <param name="Foot">Which foot.</param>
/// <param name="Shape">The foot as it is believed to be.</param>
public sealed record SoleView(Side Foot, FootShape Shape)
{
    /// <summary>How far off each of its measures may be (standard deviations, mm); null: not drawn.</summary>
    public FootShape? Deviations { get; init; }

    /// <summary>The length as it is written at the toes; null: not written.</summary>
    public string? LengthText { get; init; }

    /// <summary>The breadth as it is written at the joints; null: not written.</summary>
    public string? BallText { get; init; }

    /// <summary>The inside of the shoe laid over the foot.</summary>
    public ShoeForm? Shoe { get; init; }

    /// <summary>Whether such a shoe ends in a platform; a soft shoe has none.</summary>
    public bool HasPlatform { get; init; } = true;

    /// <summary>The inside of another shoe, laid over the same foot to be compared; null: none.</summary>
    public ShoeForm? OtherShoe { get; init; }

    /// <summary>Places of this foot in that shoe; those out of their band are marked.</summary>
    public IReadOnlyList<CriterionFit> Places { get; init; } = [];
}
