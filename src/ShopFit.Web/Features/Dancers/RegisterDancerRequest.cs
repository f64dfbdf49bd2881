using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Features.Dancers;

/// <summary>A dancer as the fitter writes her down.</summary>
public sealed record RegisterDancerRequest
{
    public string Name { get; init; } = "";

    public string KnownAs { get; init; } = "";

    public DateOnly? BirthDate { get; init; }

    /// <summary>Under age, or grown, where the day of birth is not known; null where nobody asked.</summary>
    public bool? UnderAge { get; init; }

    public Sex? Sex { get; init; }

    /// <summary>Name of her studio, on file or new.</summary>
    public string Studio { get; init; } = "";

    public string Teacher { get; init; } = "";

    /// <summary>Somebody on file who answers for her, as for a sister; null where they are new.</summary>
    public Guid? GuardianId { get; init; }

    public string GuardianName { get; init; } = "";

    public string GuardianContact { get; init; } = "";

    /// <summary>Whoever answers for her, or she herself, has agreed that her feet are measured and kept on file.</summary>
    public bool ConsentGiven { get; init; }
}
