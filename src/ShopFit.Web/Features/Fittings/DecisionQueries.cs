using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What can be put under a foot, or be asked for, at the end of a fitting. Reads only.</summary>
public sealed class DecisionQueries(FitNumbers numbers, CatalogueQueries catalogue)
{
    // So many sizes smaller are as many as anybody asks for.
    private const int Smaller = 4;

    /// <summary>Ids of all pads that may be put under a foot in a kind of footwear, those that correct first.</summary>
    public async Task<IReadOnlyList<string>> PadsAsync(string kind, CancellationToken cancellationToken) =>
        [.. (await numbers.SeeAsync(cancellationToken)).PadsOf(kind).OrderByDescending(pad => pad.Corrects).Select(pad => pad.Id)];

    /// <summary>Labels of the next smaller sizes of the same model and width, the nearest first.</summary>
    public async Task<IReadOnlyList<string>> SmallerAsync(Guid sizeId, CancellationToken cancellationToken)
    {
        var shoes = await catalogue.ShoesOnFileAsync(cancellationToken);
        return shoes.Find(sizeId) is not { } pair
            ? []
            : [.. shoes.OfKind(pair.Kind).Select(shoe => shoes.Find(shoe.Sku)!)
                .Where(other => other.ModelId == pair.ModelId && other.SizeSystem == pair.SizeSystem && other.Size < pair.Size && Width(other) == Width(pair))
                .OrderByDescending(other => other.Size)
                .Select(other => other.LabelWithoutShank).Distinct(StringComparer.Ordinal).Take(Smaller)];
    }

    // A label begins with its size; what follows is the width and the option.
    private static string Width(ShoeDetails shoe) => shoe.LabelWithoutShank.IndexOf(' ', StringComparison.Ordinal) is var blank and > 0 ? shoe.LabelWithoutShank[blank..] : "";
}
