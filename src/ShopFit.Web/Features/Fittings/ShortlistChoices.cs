using ShopFit.Fitting.Scoring;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Features.Fittings;

/// <summary>How a shortlist can be narrowed, each choice with the pairs that it would leave.</summary>
/// <remarks>Counted are sizes that may fit: of what no single ease lets fit, any number would say nothing.</remarks>
/// <param name="Left">Pairs that may fit and are left as it is narrowed now.</param>
/// <param name="Makers">The makers.</param>
/// <param name="Models">The models of the chosen maker, or all.</param>
/// <param name="Prices">Some prices to stay below.</param>
/// <param name="Teacher">What the teacher's wishes can be used for; empty where there are none.</param>
/// <param name="From">The shelf, and all that can be had.</param>
/// <param name="Loosened">For each way in which it is narrowed, what would be left without it; the one that gives most first.</param>
public sealed record ShortlistChoices(
    int Left,
    IReadOnlyList<ShortlistChoice> Makers,
    IReadOnlyList<ShortlistChoice> Models,
    IReadOnlyList<ShortlistChoice> Prices,
    IReadOnlyList<ShortlistChoice> Teacher,
    IReadOnlyList<ShortlistChoice> From,
    IReadOnlyList<LoosenedFilter> Loosened)
{
    // More steps than these are no help to a thumb.
    private const int PriceSteps = 4;

    /// <summary>Counts the choices over the pairs that may fit.</summary>
    public static ShortlistChoices Of(IReadOnlyList<ShoeDetails> inReach, ShortlistWish wish, TeacherAsks asks)
    {
        int Count(ShortlistWish other) => inReach.Count(shoe => other.Finds(shoe, asks));
        IEnumerable<ShoeDetails> Found(ShortlistWish other) => inReach.Where(shoe => other.Finds(shoe, asks));
        ShortlistChoice Choice(ShortlistWish option, ShortlistWish without, bool chosen, string name = "", long? priceMinor = null) =>
            new(option, chosen ? without : option, chosen, Count(option), name, priceMinor);

        // What is chosen is offered even where nothing of it is left, so that it can be taken off again.
        var anyMaker = wish.Without(ShortlistFilter.Maker).Without(ShortlistFilter.Model);
        var makers = Found(anyMaker).Select(shoe => shoe.Maker).Append(wish.Maker).OfType<string>()
            .Distinct(StringComparer.Ordinal).Order(StringComparer.CurrentCulture)
            .Select(maker => Choice(anyMaker with { Maker = maker }, anyMaker, wish.Maker == maker, maker));
        var anyModel = wish.Without(ShortlistFilter.Model);
        var models = Found(anyModel).Concat(inReach.Where(shoe => shoe.ModelId == wish.ModelId))
            .DistinctBy(shoe => shoe.ModelId).OrderBy(shoe => shoe.Model, StringComparer.CurrentCulture)
            .Select(shoe => Choice(anyModel with { ModelId = shoe.ModelId }, anyModel, wish.ModelId == shoe.ModelId, shoe.Model));
        var anyPrice = wish.Without(ShortlistFilter.Price);
        var prices = StepsOf(Found(anyPrice), wish.PriceUpToMinor)
            .Select(price => Choice(anyPrice with { PriceUpToMinor = price }, anyPrice, wish.PriceUpToMinor == price, priceMinor: price));
        var anyway = wish.Without(ShortlistFilter.Teacher);
        var teacher = new[] { (Wish: TeachersWish.AskedOnly, Models: asks.AskedModelIds), (Wish: TeachersWish.WithoutUnwanted, Models: asks.UnwantedModelIds) }
            .Where(way => way.Models.Count > 0 || wish.Teacher == way.Wish)
            .Select(way => Choice(anyway with { Teacher = way.Wish }, anyway, wish.Teacher == way.Wish));
        var from = new[] { ShortlistFrom.Shelf, ShortlistFrom.Catalogue }
            .Select(each => Choice(wish with { From = each }, wish, wish.From == each));
        var loosened = wish.Narrowing.Concat(wish.From is ShortlistFrom.Shelf ? [ShortlistFilter.Shelf] : [])
            .Select(filter => new LoosenedFilter(filter, wish.Without(filter), Count(wish.Without(filter))))
            .OrderByDescending(filter => filter.Left);
        return new(Count(wish), [.. makers], [.. models], [.. prices], [.. teacher], [.. from], [.. loosened]);
    }

    // Where prices are many, those that part them into equal shares; never the highest, which leaves nothing out.
    private static IEnumerable<long> StepsOf(IEnumerable<ShoeDetails> shoes, long? chosen)
    {
        long[] prices = [.. shoes.Select(shoe => shoe.PriceMinor).OfType<long>().Distinct().Order()];
        var steps = prices.Length <= PriceSteps + 1
            ? prices.SkipLast(1)
            : Enumerable.Range(1, PriceSteps).Select(step => prices[step * prices.Length / (PriceSteps + 1)]);
        return (chosen is { } price ? steps.Append(price) : steps).Distinct().Order();
    }
}

/// <summary>One choice.</summary>
/// <param name="Option">The choice.</param>
/// <param name="To">What a tap asks for: the choice, or the list without it where it is chosen.</param>
/// <param name="Chosen">Whether it is chosen now.</param>
/// <param name="Left">Pairs that may fit and that it leaves.</param>
/// <param name="Name">Name of the maker or model; empty for other choices.</param>
/// <param name="PriceMinor">The price, for prices.</param>
public sealed record ShortlistChoice(ShortlistWish Option, ShortlistWish To, bool Chosen, int Left, string Name, long? PriceMinor);

/// <summary>What would be left without one of the ways in which a list is narrowed.</summary>
public sealed record LoosenedFilter(ShortlistFilter Filter, ShortlistWish To, int Left);
