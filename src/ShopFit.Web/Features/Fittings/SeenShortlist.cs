using ShopFit.Fitting.Scoring;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Features.Fittings;

/// <summary>The answer of a shortlist.</summary>
public sealed record SeenShortlist
{
    /// <summary>What was asked for.</summary>
    public required ShortlistWish Wish { get; init; }

    /// <summary>What is worth one walk, in the order of the walk.</summary>
    public required IReadOnlyList<SeenFetched> Fetch { get; init; }

    /// <summary>Chance that one of those fits, 0 to 1.</summary>
    public required double ChanceOneFits { get; init; }

    /// <summary>Best first; those worth a walk among them.</summary>
    public required IReadOnlyList<SeenPair> Pairs { get; init; }

    /// <summary>Chance that any pair on the shelf that is not left out fits, 0 to 1.</summary>
    public required double ChanceOnShelf { get; init; }

    /// <summary>A pair that is not here and likelier to fit than any that is; null where there is none.</summary>
    public required SeenPair? ToOrder { get; init; }

    /// <summary>How the list can be narrowed.</summary>
    public required ShortlistChoices Choices { get; init; }

    /// <summary>What the teacher asks for.</summary>
    public required TeacherAsks Asked { get; init; }

    /// <summary>ISO 4217 code of the prices.</summary>
    public required string Currency { get; init; }

    /// <summary>Whether the shelf has hardly anything for these feet, which has to be said plainly.</summary>
    public bool IsUnlikelyOnShelf => ShortlistNotices.IsSmall(ChanceOnShelf);

    /// <summary>Whether enough is known of the feet that a pair that is not here is worth an order.</summary>
    public bool IsOrderWorthwhile => ToOrder is { } order && !ShortlistNotices.IsSmall(order.Fit.ChanceOfFit);

    /// <summary>The pairs that are not among those worth a walk, best first.</summary>
    public IEnumerable<SeenPair> Others => Pairs.Where(pair => Fetch.All(fetched => fetched.Pair.Shoe.SizeId != pair.Shoe.SizeId));

    /// <summary>The pair of that size, wherever it stands in the answer; null where it is not in it.</summary>
    public SeenPair? Find(Guid sizeId) =>
        Fetch.Select(fetched => fetched.Pair).Concat(Pairs).Append(ToOrder).FirstOrDefault(pair => pair?.Shoe.SizeId == sizeId);
}

/// <summary>A pair worth a walk.</summary>
/// <param name="Pair">The pair.</param>
/// <param name="Place">Where it is taken from; null where it has to be ordered.</param>
/// <param name="Adds">Chance that it fits and none of the others does, 0 to 1.</param>
public sealed record SeenFetched(SeenPair Pair, string? Place, double Adds);
