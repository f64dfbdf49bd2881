using System.Globalization;
using System.Text;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Every size in the order in which the catalogue shows them, with what it can be found by. Knows nothing of stock.</summary>
internal sealed class CatalogueIndex
{
    private readonly Entry[] _entries;
    private readonly ILookup<Guid, Guid> _ofModel;

    public CatalogueIndex(IEnumerable<ShoeDetails> shoes)
    {
        _entries =
        [
            .. shoes
                .OrderBy(shoe => shoe.Maker, StringComparer.Ordinal).ThenBy(shoe => shoe.Model, StringComparer.Ordinal)
                .ThenBy(shoe => shoe.SizeSystem, StringComparer.Ordinal).ThenBy(shoe => shoe.Size)
                .ThenBy(shoe => shoe.Label, StringComparer.Ordinal).ThenBy(shoe => shoe.Sku, StringComparer.Ordinal)
                .Select(shoe => new Entry(shoe, TextOf(shoe), SourceOf(shoe.OnFile.Form.Source))),
        ];
        _ofModel = _entries.ToLookup(entry => entry.Shoe.ModelId, entry => entry.Shoe.SizeId);
    }

    /// <summary>Keys of all sizes of a model, in order.</summary>
    public IEnumerable<Guid> OfModel(Guid modelId) => _ofModel[modelId];

    /// <summary>Keys of the sizes that match, in order.</summary>
    public IEnumerable<Guid> Find(CatalogueSearch search)
    {
        var words = Folded(search.Text).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return _entries.Where(entry => Matches(entry.Shoe, entry.Source, search) && Array.TrueForAll(words, word => entry.Text.Contains(word, StringComparison.Ordinal)))
            .Select(entry => entry.Shoe.SizeId);
    }

    /// <summary>Text as it is compared: accents and capitals forgiven, halves written as point five, a comma between digits as a point.</summary>
    internal static string Folded(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (var sign in text.Replace("½", ".5", StringComparison.Ordinal).Normalize(NormalizationForm.FormKD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(sign) is not UnicodeCategory.NonSpacingMark)
            {
                folded.Append(char.IsWhiteSpace(sign) ? ' ' : sign is ',' ? '.' : char.ToLowerInvariant(sign));
            }
        }

        return folded.ToString();
    }

    private static bool Matches(ShoeDetails shoe, string source, CatalogueSearch search) =>
        (search.Kind is null || shoe.Kind == search.Kind)
        && (search.MakerId is null || shoe.MakerId == search.MakerId)
        && (search.Source is null || source == search.Source)
        && search.Missing switch
        {
            CatalogueGap.Price => shoe.PriceMinor is null,
            CatalogueGap.Form => source is "label",
            CatalogueGap.Gtin => shoe.Gtin is null,
            _ => true,
        };

    /// <summary>The word for how a form is known: "measured", "maker" or "label".</summary>
    internal static string SourceOf(FormSource source) => source switch
    {
        FormSource.Measured => "measured",
        FormSource.Maker => "maker",
        _ => "label",
    };

    private static string TextOf(ShoeDetails shoe) =>
        Folded($"{shoe.Sku} {shoe.Maker} {shoe.Model} {shoe.Label} {shoe.Kind} {shoe.Gtin}");

    private sealed record Entry(ShoeDetails Shoe, string Text, string Source);
}
