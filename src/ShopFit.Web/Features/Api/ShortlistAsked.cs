using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Web.Features.Api;

/// <summary>A request for a shortlist that was read and found good, in the words of the library.</summary>
internal sealed record ShortlistAsked
{
    public IReadOnlyList<Reading> Readings { get; init; } = [];

    public DateOnly? BirthDate { get; init; }

    public Sex? Sex { get; init; }

    public bool FirstPair { get; init; }

    public IReadOnlyList<TryOn> TryOns { get; init; } = [];

    public ShortlistFrom From { get; init; } = ShortlistFrom.Shelf;

    public int Limit { get; init; } = ShortlistRequestReader.UsualLimit;

    public string Kind { get; init; } = ShortlistRequestReader.UsualKind;

    /// <summary>The day the question is about: feet grow, so the answer changes with it.</summary>
    public required DateOnly AsOf { get; init; }
}
