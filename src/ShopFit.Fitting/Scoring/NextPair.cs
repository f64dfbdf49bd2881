using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Scoring;

/// <summary>What to try next: the pairs most likely to fit of those that were not tried yet, and why the first of them.</summary>
/// <remarks>
/// Taking the likeliest pair gets to a fit in as few try-ons as looking two steps ahead does. Whatever else is taken, the next question
/// goes on from there.
/// </remarks>
/// <param name="List">The pairs, best first, none of them tried before; and the chance that any pair on the shelf fits.</param>
/// <param name="Steps">For each pair of the list, how it differs from the last one tried and what trying it would tell.</param>
public sealed record NextPair(Shortlist List, IReadOnlyList<NextStep> Steps)
{
    /// <summary>Answers a question. The same question gives the same answer, to the bit.</summary>
    /// <param name="question">The question, with what was tried on.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="ArgumentException">The kind of footwear is unknown, or a try-on speaks of something that is not there.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><see cref="ShortlistQuestion.Limit"/> is not 1 to 100.</exception>
    public static NextPair Of(ShortlistQuestion question, CancellationToken cancellationToken = default)
    {
        var tried = question.TryOns.Select(tryOn => tryOn.Sku).ToHashSet(StringComparer.Ordinal);
        var allows = question.Allows;
        using var search = ShortlistSearch.Of(question with { Allows = shoe => !tried.Contains(shoe.Sku) && (allows is null || allows(shoe)) });
        var list = search.Run(cancellationToken);
        var last = question.TryOns.Count == 0 ? null : search.WithoutPads(question.Shoes.First(shoe => shoe.Sku == question.TryOns[^1].Sku));
        return new NextPair(list, [.. list.Pairs.Select(pair => NextStep.Of(last, search.WithoutPads(pair.Shoe)))]);
    }
}

/// <summary>How a pair differs from the one tried last, as both are believed to be now, and what trying it would tell.</summary>
/// <param name="Amiss">The places where the last pair was amiss, the surest first; empty where nothing was tried.</param>
/// <param name="Differences">How this pair is believed to differ from it, what it mends of those places first; empty where nothing was tried.</param>
/// <param name="TellsMostOf">The place of which trying it would tell most; null where all are well known.</param>
public sealed record NextStep(IReadOnlyList<CriterionFit> Amiss, IReadOnlyList<FormDifference> Differences, CriterionFit? TellsMostOf)
{
    // A sentence holds so many (common practice, no source).
    private const int MostSaid = 3;

    // A place is well known when its 90 % interval is no wider than what fits (common practice, no source).
    private const double WellKnown = 1;

    internal static NextStep Of(IReadOnlyList<CriterionFit>? last, IReadOnlyList<CriterionFit> next)
    {
        var open = next.Where(fit => Openness(fit) > WellKnown).MaxBy(fit => Openness(fit) * fit.Criterion.Weight);
        if (last is null)
        {
            return new NextStep([], [], open);
        }

        CriterionFit[] amiss = [.. last
            .Where(fit => fit.Ease < fit.Criterion.IdealFrom || fit.Ease > fit.Criterion.IdealTo)
            .OrderByDescending(Sureness)
            .DistinctBy(fit => fit.Criterion.Id)
            .Take(MostSaid - 1)];
        var differences = next
            .Where(fit => fit.Foot == Side.Left)
            .Select(fit => (Place: fit, Difference: fit.Ease - last.Single(before => before.Foot == fit.Foot && before.Criterion.Id == fit.Criterion.Id).Ease))
            .OrderBy(entry => Rank(amiss, entry.Place.Criterion.Id, entry.Difference))
            .ThenByDescending(entry => entry.Place.Criterion.Weight * Math.Abs(entry.Difference))
            .Take(MostSaid)
            .Select(entry => new FormDifference(entry.Place.Criterion.Id, entry.Difference));
        return new NextStep(amiss, [.. differences], open);
    }

    // What is mended is said first, in the order in which it was amiss; what is made no better last.
    private static int Rank(CriterionFit[] amiss, string criterionId, double difference)
    {
        int at = Array.FindIndex(amiss, fit => fit.Criterion.Id == criterionId);
        bool wasTooMuch = at >= 0 && amiss[at].Ease > amiss[at].Criterion.IdealTo;
        return at < 0 ? MostSaid : wasTooMuch == difference < 0 ? at : MostSaid + 1;
    }

    // By how many of its own intervals a place lies beyond what is ideal: what was seen comes before what is only feared.
    private static double Sureness(CriterionFit fit) =>
        Math.Max(fit.Criterion.IdealFrom - fit.Ease, fit.Ease - fit.Criterion.IdealTo) / (fit.High - fit.Low);

    // How wide what is believed is beside what would fit; nothing is open where nothing is too much.
    private static double Openness(CriterionFit fit)
    {
        double room = fit.Criterion.NoFitAbove - fit.Criterion.NoFitBelow;
        return double.IsFinite(room) ? (fit.High - fit.Low) / room : 0;
    }
}
