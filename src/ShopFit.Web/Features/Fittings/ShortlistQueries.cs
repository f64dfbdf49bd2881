using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Sentences;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Which pairs are likely to fit, worked out away from the screen and given up when the page is left.</summary>
public sealed class ShortlistQueries(ShopContexts contexts, CatalogueQueries catalogue)
{
    // So many pairs are as many as anybody looks through.
    private const int Shown = 20;

    /// <summary>What is worth a walk, and the pairs most likely to fit both feet; null where there is no such fitting.</summary>
    /// <param name="fittingId">Which fitting.</param>
    /// <param name="wish">Which pairs are wanted.</param>
    /// <param name="asks">What the teacher asks for.</param>
    /// <param name="atHand">Sizes that were fetched already; nobody walks for them again.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<SeenShortlist?> AskAsync(Guid fittingId, ShortlistWish wish, TeacherAsks asks, IReadOnlyCollection<Guid> atHand, CancellationToken cancellationToken)
    {
        var shoes = await catalogue.ShoesOnFileAsync(cancellationToken);
        FittingQuestion? question;
        string currency;
        await using (var db = await contexts.OpenAsync(cancellationToken))
        {
            question = await FittingQuestion.LoadAsync(db, shoes, fittingId, cancellationToken);
            currency = await db.Shops.Where(shop => shop.Id == db.ShopId).Select(shop => shop.Currency).SingleAsync(cancellationToken);
        }

        return question is null
            ? null
            : await Task.Run(() => Answer(shoes, question.Question with { From = wish.From, Limit = Shown }, wish, asks, atHand, currency, cancellationToken), cancellationToken);
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

    /// <summary>The first of the proposals on the shelf; null where there is none.</summary>
    public async Task<SeenPair?> FirstAsync(Guid fittingId, CancellationToken cancellationToken)
    {
        var (shoes, question) = await QuestionAsync(fittingId, cancellationToken);
        return question is null
            ? null
            : await Task.Run(
                () => Shortlist.Of(question.Question with { From = ShortlistFrom.Shelf, Limit = 1 }, cancellationToken).Pairs is [var first, ..] ? new SeenPair(shoes.Find(first.Shoe.Sku)!, first) : null,
                cancellationToken);
    }

    /// <summary>The pair to try next of those on the shelf, and why; null where there is none.</summary>
    public async Task<SeenNext?> NextAsync(Guid fittingId, CancellationToken cancellationToken)
    {
        var (shoes, question) = await QuestionAsync(fittingId, cancellationToken);
        return question is null
            ? null
            : await Task.Run(
                () =>
                {
                    var next = NextPair.Of(question.Question with { From = ShortlistFrom.Shelf, Limit = 1 }, cancellationToken);
                    return next.List.Pairs is [var first, ..]
                        ? new SeenNext(new SeenPair(shoes.Find(first.Shoe.Sku)!, first), FitSentences.NextReason(first, next.Steps[0], question.Question.Defaults), next.List.ChanceOnShelf)
                        : null;
                },
                cancellationToken);
    }

    private async Task<(ShoesOnFile Shoes, FittingQuestion? Question)> QuestionAsync(Guid fittingId, CancellationToken cancellationToken)
    {
        var shoes = await catalogue.ShoesOnFileAsync(cancellationToken);
        await using var db = await contexts.OpenAsync(cancellationToken);
        return (shoes, await FittingQuestion.LoadAsync(db, shoes, fittingId, cancellationToken));
    }

    private static SeenShortlist Answer(
        ShoesOnFile shoes, ShortlistQuestion question, ShortlistWish wish, TeacherAsks asks, IReadOnlyCollection<Guid> atHand, string currency, CancellationToken cancellationToken)
    {
        ShoeDetails Details(ShoeOnFile shoe) => shoes.Find(shoe.Sku)!;
        SeenPair Seen(PairFit fit) => new(Details(fit.Shoe), fit);

        var list = FetchList.Of(
            question with { Allows = shoe => wish.Allows(Details(shoe), asks) },
            shoe => [.. Details(shoe).Places.Select(place => place.Code)],
            atHand.Select(shoes.Find).OfType<ShoeDetails>().Select(shoe => shoe.Sku).ToHashSet(StringComparer.Ordinal),
            cancellationToken);
        var pairs = list.List.Pairs.Select(Seen).ToList();
        double bestHere = pairs.Where(pair => pair.Shoe.OnShelf > 0).Select(pair => pair.Fit.ChanceOfFit).DefaultIfEmpty(0).Max();
        return new SeenShortlist
        {
            Wish = wish,
            Fetch = [.. list.Pairs.Select(fetched => new SeenFetched(Seen(fetched.Fit), fetched.Place, fetched.Adds))],
            ChanceOneFits = list.ChanceOneFits,
            Pairs = pairs,
            ChanceOnShelf = list.List.ChanceOnShelf,
            ToOrder = list.ToOrder is { } order && order.ChanceOfFit > bestHere && !Details(order.Shoe).Discontinued ? Seen(order) : null,
            Choices = ShortlistChoices.Of([.. list.InReach.Select(Details)], wish, asks),
            Asked = asks,
            Currency = currency,
        };
    }
}

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
