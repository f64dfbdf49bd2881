namespace ShopFit.Fitting.Scoring;

/// <summary>The pairs most likely to fit both feet, best first.</summary>
/// <param name="Pairs">At most as many as were asked for.</param>
/// <param name="ChanceOnShelf">Chance that any pair on the shelf fits, 0 to 1.</param>
public sealed record Shortlist(IReadOnlyList<PairFit> Pairs, double ChanceOnShelf)
{
    /// <summary>Answers a question. The same question gives the same answer, to the bit.</summary>
    /// <remarks>Ordered by the chance of fit, then by the score, then by the code of the pair.</remarks>
    /// <exception cref="ArgumentException">The kind of footwear is unknown, or a try-on speaks of something that is not there.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><see cref="ShortlistQuestion.Limit"/> is not 1 to 100.</exception>
    public static Shortlist Of(ShortlistQuestion question, CancellationToken cancellationToken = default)
    {
        using var search = ShortlistSearch.Of(question);
        return search.Run(cancellationToken);
    }

    /// <summary>Judges one named pair as the shortlist would, wherever it would rank.</summary>
    /// <exception cref="ArgumentException">The kind of footwear is unknown, or a try-on speaks of something that is not there.</exception>
    public static PairFit Judge(ShortlistQuestion question, ShoeOnFile shoe)
    {
        using var search = ShortlistSearch.Of(question);
        return search.Judge(shoe);
    }
}
