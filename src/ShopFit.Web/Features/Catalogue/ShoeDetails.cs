using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>One size of one model with all that is said of it to people.</summary>
public sealed record ShoeDetails
{
    /// <summary>Key of the size, which is the key of its item.</summary>
    public required Guid SizeId { get; init; }

    public required Guid ModelId { get; init; }

    public required Guid MakerId { get; init; }

    public required string Sku { get; init; }

    /// <summary>The digits under its barcode, where they are known.</summary>
    public required string? Gtin { get; init; }

    public required string Maker { get; init; }

    public required string Model { get; init; }

    public required string Kind { get; init; }

    /// <summary>"paste", "moulded" or "soft"; null where nobody has said.</summary>
    public required string? Construction { get; init; }

    public required bool Discontinued { get; init; }

    public required string SizeSystem { get; init; }

    public required double Size { get; init; }

    /// <summary>The whole label: size, width, option and shank.</summary>
    public required string Label { get; init; }

    /// <summary>The label without the shank, for where the shank has a place of its own.</summary>
    public required string LabelWithoutShank { get; init; }

    /// <summary>The maker's word for its shank; may be empty.</summary>
    public required string ShankName { get; init; }

    public required long? PriceMinor { get; init; }

    public required int? LeadTimeDays { get; init; }

    /// <summary>Where free pairs stand that can be sold now, by code of the place.</summary>
    public required IReadOnlyList<PairsAtPlace> Places { get; init; }

    /// <summary>The same size as the fit model takes it.</summary>
    public required ShoeOnFile OnFile { get; init; }

    /// <summary>Free pairs that can be sold now.</summary>
    public int OnShelf => Places.Sum(place => place.Free);

    /// <summary>The same size when its pairs stand at these places.</summary>
    internal ShoeDetails StandingAt(IReadOnlyList<PairsAtPlace> places) =>
        places.SequenceEqual(Places) ? this : this with { Places = places, OnFile = OnFile with { OnShelf = places.Count > 0 } };
}

/// <summary>How many free pairs stand at a place.</summary>
/// <param name="Code">The place, such as B3.</param>
/// <param name="Free">On hand less put aside.</param>
public sealed record PairsAtPlace(string Code, int Free);
