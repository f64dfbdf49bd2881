using ShopFit.Fitting.Shoes;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>One size of one model, read from a catalogue file and found good.</summary>
public sealed record CatalogueRow
{
    /// <summary>The line of the file on which it starts, the header being line 1.</summary>
    public required int Line { get; init; }

    public required string Sku { get; init; }

    public required string Maker { get; init; }

    public required string Model { get; init; }

    public required string Kind { get; init; }

    public required string SizeSystem { get; init; }

    public required double Size { get; init; }

    public string Width { get; init; } = "";

    public string Option { get; init; } = "";

    public string ShankName { get; init; } = "";

    /// <summary>The millimetres given (the shank in points), in the order of <see cref="FormPart"/>; null where empty.</summary>
    public required IReadOnlyList<double?> Form { get; init; }

    public required FormSource FormSource { get; init; }

    public double WidthStep { get; init; }

    public double BoxStep { get; init; }

    public double VampStep { get; init; }

    public long? PriceMinor { get; init; }

    public string? Gtin { get; init; }

    public int? LeadTimeDays { get; init; }

    /// <summary>Pairs on hand; counts only where the code is new to the shop.</summary>
    public int OnHand { get; init; }
}
