using ShopFit.Fitting.Scoring;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Sales;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Which pairs are likely to fit, worked out away from the screen and given up when the page is left.</summary>
public sealed class ShortlistQueries(ShopContexts contexts, CatalogueQueries catalogue)
{
    // Of the whole catalogue, so many are looked through for one that would have to be ordered.
    private const int LookedThroughForOrder = 10;

    /// <summary>The pairs most likely to fit both feet; null where there is no such fitting.</summary>
    public async Task<SeenShortlist?> AskAsync(Guid fittingId, ShortlistFrom from, int limit, CancellationToken cancellationToken)
    {
        var (shoes, question) = await QuestionAsync(fittingId, cancellationToken);
        return question is null ? null : await Task.Run(() => Answer(shoes, question.Question with { From = from, Limit = limit }, cancellationToken), cancellationToken);
    }

    /// <summary>How one pair fits, wherever it would rank; null where there is no such fitting or pair.</summary>
    /// <param name="fittingId">Which fitting.</param>
    /// <param name="sizeId">Which pair.</param>
    /// <param name="pads">The pads that the fitter chose; null: those that do best.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<SeenPair?> JudgeAsync(Guid fittingId, Guid sizeId, IReadOnlyList<PadUnderFoot>? pads, CancellationToken cancellationToken)
    {
        var (shoes, question) = await QuestionAsync(fittingId, cancellationToken);
        return question is null || shoes.Find(sizeId) is not { } pair || pair.Kind != question.Question.Kind
            ? null
            : await Task.Run(
                () =>
                {
                    var best = Shortlist.Judge(question.Question, pair.OnFile);
                    return new SeenPair(pair, pads is null ? best : ChosenFit.Of(best, pads, shoes.Numbers));
                },
                cancellationToken);
    }

    private async Task<(ShoesOnFile Shoes, FittingQuestion? Question)> QuestionAsync(Guid fittingId, CancellationToken cancellationToken)
    {
        var shoes = await catalogue.ShoesOnFileAsync(cancellationToken);
        await using var db = await contexts.OpenAsync(cancellationToken);
        return (shoes, await FittingQuestion.LoadAsync(db, shoes, fittingId, cancellationToken));
    }

    private static SeenShortlist Answer(ShoesOnFile shoes, ShortlistQuestion question, CancellationToken cancellationToken)
    {
        SeenPair Seen(PairFit fit) => new(shoes.Find(fit.Shoe.Sku)!, fit);

        var shortlist = Shortlist.Of(question, cancellationToken);
        var pairs = shortlist.Pairs.Select(Seen).ToList();
        var bestHere = pairs.Where(pair => pair.Shoe.OnShelf > 0).Select(pair => pair.Fit.ChanceOfFit).DefaultIfEmpty(0).Max();
        var toOrder = Shortlist.Of(question with { From = ShortlistFrom.Catalogue, Limit = LookedThroughForOrder }, cancellationToken).Pairs
            .Select(Seen)
            .FirstOrDefault(pair => pair.Shoe is { OnShelf: 0, Discontinued: false } && pair.Fit.ChanceOfFit > bestHere);
        return new(pairs, shortlist.ChanceOnShelf, toOrder);
    }
}

/// <summary>The answer of a shortlist.</summary>
/// <param name="Pairs">Best first.</param>
/// <param name="ChanceOnShelf">Chance that any pair on the shelf fits, 0 to 1.</param>
/// <param name="ToOrder">A pair that is not here and likelier to fit than any that is; null where there is none.</param>
public sealed record SeenShortlist(IReadOnlyList<SeenPair> Pairs, double ChanceOnShelf, SeenPair? ToOrder);

/// <summary>A pair and how it fits.</summary>
public sealed record SeenPair(ShoeDetails Shoe, PairFit Fit)
{
    /// <summary>Its label without the shank, which is said apart.</summary>
    public string SizeLabel => Shoe.ShankName is { Length: > 0 } shank && Shoe.Label.EndsWith($" {shank}", StringComparison.Ordinal)
        ? Shoe.Label[..^(shank.Length + 1)]
        : Shoe.Label;

    /// <summary>Model and size, as a fitter calls it.</summary>
    public string Name => $"{Shoe.Model} {SizeLabel}";

    /// <summary>As it is laid over the feet.</summary>
    public LaidPair Laid() => new(Shoe.SizeId, Name, Shoe.OnFile.Form, Fit);

    /// <summary>The criteria that are furthest from right, each once, with the foot or both feet that it is about.</summary>
    public IReadOnlyList<WorstPlace> Worst(int count) =>
    [
        .. Fit.WorstFirst().DistinctBy(fit => fit.Criterion.Id, StringComparer.Ordinal).Take(count)
            .Select(fit => new WorstPlace(fit, Fit.Criteria.FirstOrDefault(other => other.Criterion.Id == fit.Criterion.Id && other.Foot != fit.Foot))),
    ];
}

/// <summary>A place of the worse foot, and the same place of the other.</summary>
public sealed record WorstPlace(CriterionFit Worse, CriterionFit? Other);
