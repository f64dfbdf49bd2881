using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Seed;

/// <summary>Which pairs the fitter fetches: those of the library's shortlist, with an eye to what the studio asks for.</summary>
internal sealed class DemoChooser(DemoPairs shoes, DemoStock stock)
{
    /// <summary>A model that the teacher asks for is taken before a pair that is likelier by less than this.</summary>
    private const double ForTheTeacher = 0.7;

    private const int Looked = 10;

    /// <summary>From the shelf, the likeliest first: the pair and its chance of fit.</summary>
    internal IReadOnlyList<(int Pair, double Chance)> FromShelf(DemoDancer dancer, string kind, FeetBelief feet, bool firstPair)
    {
        List<ShoeOnFile> here =
        [
            .. Enumerable.Range(0, shoes.Sizes.Count)
                .Where(pair => shoes.Sizes[pair].Model.Kind == kind && stock.Has(pair) && !dancer.Studio.NotWanted.Contains(shoes.Sizes[pair].Model.Name))
                .Select(pair => shoes.OnFile[pair]),
        ];
        return here.Count == 0 ? [] : [.. Ask(here, kind, feet, firstPair, ShortlistFrom.Shelf).OrderByDescending(one => one.Chance * Favour(dancer, one.Pair)).ThenBy(one => one.Pair)];
    }

    /// <summary>The likeliest pair of all that can be had; null where there is none of that kind.</summary>
    internal int? FromCatalogue(DemoDancer dancer, string kind, FeetBelief feet, bool firstPair) => Ask(
            [.. Enumerable.Range(0, shoes.Sizes.Count)
                .Where(pair => shoes.Sizes[pair].Model.Kind == kind && !dancer.Studio.NotWanted.Contains(shoes.Sizes[pair].Model.Name))
                .Select(pair => shoes.OnFile[pair])],
            kind, feet, firstPair, ShortlistFrom.Catalogue)
        .Select(one => (int?)one.Pair).FirstOrDefault();

    private double Favour(DemoDancer dancer, int pair) => dancer.Studio.Asked.Contains(shoes.Sizes[pair].Model.Name) ? 1 / ForTheTeacher : 1;

    private IEnumerable<(int Pair, double Chance)> Ask(IReadOnlyList<ShoeOnFile> among, string kind, FeetBelief feet, bool firstPair, ShortlistFrom from) => Shortlist
        .Of(new ShortlistQuestion { Feet = feet, Shoes = among, Kind = kind, From = from, Limit = Looked, FirstPair = firstPair })
        .Pairs.Select(fit => (shoes.IndexOf[fit.Shoe.Sku], fit.ChanceOfFit));
}
