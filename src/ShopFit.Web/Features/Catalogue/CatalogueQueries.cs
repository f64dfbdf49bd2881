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
    /// <param name="search">Words that must all be found in code, maker, model, size or width; empty finds all.</param>
    /// <param name="page">Which page, from 0.</param>
    /// <param name="pageRows">Rows of a page.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<CataloguePageRows> FindAsync(string search, int page, int pageRows, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var rows =
            from size in db.ShoeSizes
            join item in db.Items on size.Id equals item.Id
            join model in db.ShoeModels on size.ModelId equals model.Id
            join maker in db.Makers on model.MakerId equals maker.Id
            select new { Item = item, Size = size, Model = model, Maker = maker.Name };
        foreach (var word in search.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            // The name of an item holds maker, model and the whole label.
            var pattern = $"%{word.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("%", "\\%", StringComparison.Ordinal).Replace("_", "\\_", StringComparison.Ordinal)}%";
            rows = rows.Where(row => EF.Functions.Like(row.Item.Name, pattern, "\\") || EF.Functions.Like(row.Item.Code, pattern, "\\"));
        }

        var count = await rows.CountAsync(cancellationToken);
        var found = await rows
            .OrderBy(row => row.Maker).ThenBy(row => row.Model.Name).ThenBy(row => row.Size.Size).ThenBy(row => row.Item.Code)
            .Skip(page * pageRows)
            .Take(pageRows)
            .Select(row => new
            {
                row.Item.Id,
                row.Item.Code,
                row.Maker,
                Model = row.Model.Name,
                row.Size.SizeSystem,
                row.Size.Size,
                row.Size.Width,
                row.Size.Option,
                row.Size.ShankName,
                row.Size.Form.Source,
                OnHand = db.StockLevels.Where(level => level.ItemId == row.Item.Id).Sum(level => level.OnHand),
            })
            .ToListAsync(cancellationToken);
        return new CataloguePageRows(count, [.. found.Select(row => new CatalogueSizeRow(
            row.Id, row.Code, row.Maker, row.Model, row.SizeSystem, SizeLabels.Of(row.SizeSystem, row.Size, row.Width, row.Option, row.ShankName), row.OnHand, row.Source))]);
    }
}

/// <summary>One page of the catalogue, and how many rows there are in all.</summary>
public sealed record CataloguePageRows(int Count, IReadOnlyList<CatalogueSizeRow> Rows);

/// <summary>One size as the list shows it.</summary>
/// <param name="SizeId">Its key.</param>
/// <param name="Sku">Its code.</param>
/// <param name="Maker">Its maker.</param>
/// <param name="Model">Its model.</param>
/// <param name="SizeSystem">Id of the size system of its label.</param>
/// <param name="Label">Its whole label.</param>
/// <param name="OnHand">Pairs on hand anywhere.</param>
/// <param name="FormSource">"measured", "maker" or "label".</param>
public sealed record CatalogueSizeRow(Guid SizeId, string Sku, string Maker, string Model, string SizeSystem, string Label, int OnHand, string FormSource);
