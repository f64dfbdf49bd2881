namespace ShopFit.Seed;

/// <summary>An invented maker and what it lets a shop choose.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Code">Two letters, the first part of every code of its shoes.</param>
/// <param name="InStorePrefix">First two digits of its article numbers, 20 to 29: the range that is free for use inside a shop.</param>
/// <param name="SizeSystem">Id of the size system of its labels.</param>
/// <param name="LeadTimeDays">Days from order to delivery.</param>
/// <param name="Widths">Its own words for the widths of its pointe and demi-pointe shoes; one without a word where it has no choice.</param>
/// <param name="Vamps">Its own words for the vamp, likewise.</param>
/// <param name="Shanks">Its own words for the shank, likewise.</param>
/// <param name="Models">Its models.</param>
internal sealed record DemoMaker(
    string Name,
    string Code,
    string InStorePrefix,
    string SizeSystem,
    int LeadTimeDays,
    IReadOnlyList<DemoChoice> Widths,
    IReadOnlyList<DemoChoice> Vamps,
    IReadOnlyList<DemoChoice> Shanks,
    IReadOnlyList<DemoModel> Models);

/// <summary>One of the things a maker lets a shop choose.</summary>
/// <param name="Word">The maker's own word; empty where there is no choice.</param>
/// <param name="Step">Width or vamp: the step that the shop has mapped the word to. Shank: points.</param>
/// <param name="Wanted">How often it is wanted beside its neighbours.</param>
internal sealed record DemoChoice(string Word, double Step, double Wanted);

/// <summary>A model of an invented maker.</summary>
internal sealed record DemoModel(string Name, string Code, string Kind, string Construction)
{
    /// <summary>Whether it came when the shop took up further kinds.</summary>
    public bool CameLater { get; init; }

    /// <summary>Smallest label.</summary>
    public required double From { get; init; }

    /// <summary>Largest label.</summary>
    public required double To { get; init; }

    /// <summary>−1 tapered, 0 plain, +1 square.</summary>
    public double BoxStep { get; init; }

    /// <summary>Price in minor units before what the shank adds.</summary>
    public required int PriceMinor { get; init; }

    /// <summary>How often it is wanted beside the other models.</summary>
    public double Wanted { get; init; } = 1;

    /// <summary>Feet of those who ask for it, mm: for pointe from girls of twelve to women *(cp)*.</summary>
    public double UsualFoot { get; init; } = 237;

    /// <summary>Their standard deviation, mm *(cp)*.</summary>
    public double FootDeviation { get; init; } = 13;

    /// <summary>Shelf places by the smallest label that stands there.</summary>
    public required IReadOnlyList<(double From, string Place)> Places { get; init; }

    /// <summary>Choices of this model alone, where it has fewer than its maker's other models.</summary>
    public IReadOnlyList<DemoChoice>? Vamps { get; init; }

    /// <summary>Widths of this model alone.</summary>
    public IReadOnlyList<DemoChoice>? Widths { get; init; }

    /// <summary>Choices of shank of this model alone.</summary>
    public IReadOnlyList<DemoChoice>? Shanks { get; init; }

    /// <summary>What is known of its inside in mm; null where only the labels are known.</summary>
    public DemoSample? Sample { get; init; }
}

/// <summary>The inside of one size of a model in mm, and the sizes for which it is known.</summary>
/// <param name="Source">"measured" or "maker".</param>
/// <param name="Size">The label of the sample, in the standard width and vamp.</param>
/// <param name="From">Smallest label for which it is known.</param>
/// <param name="To">Largest label for which it is known.</param>
/// <param name="Length">Inner length.</param>
/// <param name="BallGirth">Girth at the joints.</param>
/// <param name="Vamp">Platform edge to throat.</param>
/// <param name="BoxBreadth">Breadth of the box; null where nobody told.</param>
/// <param name="HeelBreadth">Breadth of the heel, likewise.</param>
/// <param name="CrownDepth">Height of the box, likewise.</param>
/// <param name="ToeSlope">Slope of the box, likewise.</param>
internal sealed record DemoSample(
    string Source,
    double Size,
    double From,
    double To,
    double Length,
    double BallGirth,
    double Vamp,
    double? BoxBreadth = null,
    double? HeelBreadth = null,
    double? CrownDepth = null,
    double? ToeSlope = null);
