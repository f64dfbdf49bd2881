using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Dancers;

/// <summary>A dancer as her page shows her.</summary>
public sealed record SeenDancer
{
    public required Guid Id { get; init; }

    public required int Version { get; init; }

    public required string Name { get; init; }

    public required string KnownAs { get; init; }

    public required DateOnly? BirthDate { get; init; }

    public required int? AgeYears { get; init; }

    /// <summary>Whether somebody else answers for her; null while nobody knows.</summary>
    public required bool? UnderAge { get; init; }

    public required Sex? Sex { get; init; }

    public required Guid? StudioId { get; init; }

    public required string Studio { get; init; }

    public required string Teacher { get; init; }

    public required Guid? GuardianId { get; init; }

    public required string GuardianName { get; init; }

    public required string GuardianContact { get; init; }

    /// <summary>When the yes was given that holds now; null while there is none.</summary>
    public required DateTimeOffset? ConsentAt { get; init; }

    /// <summary>For whom the same person answers.</summary>
    public required IReadOnlyList<Sibling> Siblings { get; init; }

    /// <summary>The kinds of footwear that the shop fits.</summary>
    public required IReadOnlyList<string> Kinds { get; init; }

    /// <summary>The wall clock of the shop.</summary>
    public required ShopTime Time { get; init; }

    /// <summary>Whether a yes is needed before anything is measured.</summary>
    public bool NeedsConsent => UnderAge is true && ConsentAt is null;
}
