namespace ShopFit.Fitting.Scoring;

/// <summary>The pairs that are worth one walk to the stockroom: chosen together, so that one of them fits as likely as possible.</summary>
/// <remarks>
/// The three likeliest pairs are often one model in three neighbouring sizes, and fail together. These are chosen over the same fixed draws as
/// the shortlist, in which pairs share the feet, and the differences of a model and of a maker between what they make: what counts is in how many draws at least one fits.
/// They are the best of the forty likeliest pairs, never worse than the three likeliest.
/// </remarks>
/// <param name="Pairs">At most <see cref="OneWalk"/>, in the order of the walk.</param>
/// <param name="ChanceOneFits">Chance that at least one of them fits both feet, 0 to 1.</param>
/// <param name="List">The shortlist that they were chosen from, as <see cref="Shortlist.Of"/> answers it.</param>
/// <param name="ToOrder">The likeliest of the allowed pairs that do not stand on the shelf; null where none could fit.</param>
/// <param name="InReach">Every shoe of the question, allowed or not, of which no single ease says that it cannot fit.</param>
public sealed record FetchList(
    IReadOnlyList<FetchedPair> Pairs, double ChanceOneFits, Shortlist List, PairFit? ToOrder, IReadOnlyList<ShoeOnFile> InReach)
{
    /// <summary>How many pairs two hands carry in one walk (common practice, no source).</summary>
    public const int OneWalk = 3;

    /// <summary>Answers a question. The same question gives the same answer, to the bit.</summary>
    /// <param name="question">The question; its limit is that of the shortlist.</param>
    /// <param name="placesOf">The places where a pair stands, nearest first; empty for a pair that has to be ordered.</param>
    /// <param name="atHand">Codes of pairs that were fetched already; nobody walks for them again.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="ArgumentException">The kind of footwear is unknown, or a try-on speaks of something that is not there.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><see cref="ShortlistQuestion.Limit"/> is not 1 to 100.</exception>
    public static FetchList Of(
        ShortlistQuestion question,
        Func<ShoeOnFile, IReadOnlyList<string>> placesOf,
        IReadOnlySet<string>? atHand = null,
        CancellationToken cancellationToken = default)
    {
        using var search = ShortlistSearch.Of(question);
        return search.Run(placesOf, atHand ?? new HashSet<string>(), cancellationToken);
    }
}

/// <summary>A pair to be fetched.</summary>
/// <param name="Fit">How it fits, with the chance that it does by itself.</param>
/// <param name="Place">Where it is taken from; null where it has to be ordered.</param>
/// <param name="Adds">Chance that it fits and none of the others does, 0 to 1: what the walk would lose without it.</param>
public sealed record FetchedPair(PairFit Fit, string? Place, double Adds);
