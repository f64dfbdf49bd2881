using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>What the shop has on file, as far as a catalogue file can speak of it.</summary>
internal sealed class CatalogueOnFile
{
    private CatalogueOnFile(Dictionary<string, Item> items, Dictionary<Guid, ShoeSize> sizes, Dictionary<string, Maker> makers, Dictionary<(Guid MakerId, string Name), ShoeModel> models)
    {
        Items = items;
        Sizes = sizes;
        Makers = makers;
        Models = models;
        CodesWhateverCase = items.Keys.ToLookup(code => code, StringComparer.OrdinalIgnoreCase);
        CodeOfGtin = items.Values.Where(item => item.Gtin is not null).GroupBy(item => item.Gtin!, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.First().Code, StringComparer.Ordinal);
    }

    /// <summary>Everything that can be sold, by code.</summary>
    public Dictionary<string, Item> Items { get; }

    /// <summary>Codes on file by code, capitals and small letters taken for the same.</summary>
    public ILookup<string, string> CodesWhateverCase { get; }

    public Dictionary<Guid, ShoeSize> Sizes { get; }

    public Dictionary<string, Maker> Makers { get; }

    public Dictionary<(Guid MakerId, string Name), ShoeModel> Models { get; }

    public Dictionary<string, string> CodeOfGtin { get; }

    public static async Task<CatalogueOnFile> ReadAsync(ShopDbContext db, CancellationToken cancellationToken) => new(
        await db.Items.AsNoTracking().ToDictionaryAsync(item => item.Code, StringComparer.Ordinal, cancellationToken),
        await db.ShoeSizes.AsNoTracking().ToDictionaryAsync(size => size.Id, cancellationToken),
        await db.Makers.AsNoTracking().ToDictionaryAsync(maker => maker.Name, StringComparer.Ordinal, cancellationToken),
        await db.ShoeModels.AsNoTracking().ToDictionaryAsync(model => (model.MakerId, model.Name), cancellationToken));
}
