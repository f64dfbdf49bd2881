using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>The catalogue as pages and programs read it.</summary>
public sealed class CatalogueQueries(ShopContexts contexts, ShoesInMemory shoes)
{
    /// <summary>Every size of every kind, kept in memory until something changes.</summary>
    public async Task<ShoesOnFile> ShoesOnFileAsync(CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        return await shoes.SeeAsync(db, cancellationToken);
    }

    /// <summary>One page of what matches a search, by maker, model and size.</summary>
    /// <param name="search">What is looked for.</param>
    /// <param name="page">Which page, from 0.</param>
    /// <param name="pageRows">Rows of a page.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<CataloguePageRows> FindAsync(CatalogueSearch search, int page, int pageRows, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var found = (await shoes.SeeAsync(db, cancellationToken)).Search(search).ToList();
        var shown = found.Skip(page * pageRows).Take(pageRows).ToList();
        var ids = shown.Select(shoe => shoe.SizeId).ToList();
        var onHand = await db.StockLevels.Where(level => ids.Contains(level.ItemId)).GroupBy(level => level.ItemId)
            .Select(levels => new { levels.Key, OnHand = levels.Sum(level => level.OnHand) }).ToDictionaryAsync(levels => levels.Key, levels => levels.OnHand, cancellationToken);
        var currency = await db.Shops.Where(shop => shop.Id == db.ShopId).Select(shop => shop.Currency).SingleAsync(cancellationToken);
        return new CataloguePageRows(found.Count, currency, [.. shown.Select(shoe => new CatalogueSizeRow(
            shoe.SizeId, shoe.ModelId, shoe.Sku, shoe.Maker, shoe.Model, shoe.Kind, shoe.SizeSystem, shoe.Label, shoe.PriceMinor,
            onHand.GetValueOrDefault(shoe.SizeId), CatalogueIndex.SourceOf(shoe.OnFile.Form.Source)))]);
    }

    /// <summary>The makers and kinds that a search can be narrowed to.</summary>
    public async Task<CatalogueChoices> ChoicesAsync(CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        return new CatalogueChoices(
            await db.Makers.OrderBy(maker => maker.Name).Select(maker => new MakerChoice(maker.Id, maker.Name)).ToListAsync(cancellationToken),
            await db.ShoeModels.Select(model => model.Kind).Distinct().OrderBy(kind => kind).ToListAsync(cancellationToken));
    }
}

/// <summary>The makers and kinds on file.</summary>
public sealed record CatalogueChoices(IReadOnlyList<MakerChoice> Makers, IReadOnlyList<string> Kinds);

/// <summary>A maker to choose.</summary>
public sealed record MakerChoice(Guid Id, string Name);

/// <summary>One page of the catalogue, and how many rows there are in all.</summary>
/// <param name="Count">Sizes that match.</param>
/// <param name="Currency">The currency of their prices.</param>
/// <param name="Rows">The rows of this page.</param>
public sealed record CataloguePageRows(int Count, string Currency, IReadOnlyList<CatalogueSizeRow> Rows);

/// <summary>One size as the list shows it.</summary>
/// <param name="SizeId">Its key.</param>
/// <param name="ModelId">Key of its model.</param>
/// <param name="Sku">Its code.</param>
/// <param name="Maker">Its maker.</param>
/// <param name="Model">Its model.</param>
/// <param name="Kind">Its kind of footwear.</param>
/// <param name="SizeSystem">Id of the size system of its label.</param>
/// <param name="Label">Its whole label.</param>
/// <param name="PriceMinor">Its price in minor units; null where it has none.</param>
/// <param name="OnHand">Pairs on hand anywhere.</param>
/// <param name="FormSource">"measured", "maker" or "label".</param>
public sealed record CatalogueSizeRow(
    Guid SizeId,
    Guid ModelId,
    string Sku,
    string Maker,
    string Model,
    string Kind,
    string SizeSystem,
    string Label,
    long? PriceMinor,
    int OnHand,
    string FormSource);
