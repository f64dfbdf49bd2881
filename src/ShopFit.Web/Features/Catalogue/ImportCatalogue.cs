using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Takes a catalogue file over: all of it, or its good rows where the user said so; otherwise nothing.</summary>
/// <remarks>
/// Rows are matched by code. A code that is missing from the file stays as it is. Pairs on hand count for new codes
/// only, or importing a file again would bring back what was sold meanwhile.
/// </remarks>
public sealed class ImportCatalogue(ShopWrites writes, TimeProvider clock)
{
    /// <summary>Changed rows saved at once: enough to be fast, few enough that the change tracker stays small.</summary>
    private const int BatchRows = 2_000;

    public Task<ImportOutcome> RunAsync(Actor actor, Guid commandId, CatalogueFile file, bool skipBad, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<ImportOutcome>(
            actor,
            commandId,
            nameof(ImportCatalogue),
            (db, stop) => ApplyAsync(db, new StockMove(actor, commandId, clock.GetUtcNow(), LedgerReasons.Opening), file, skipBad, stop),
            cancellationToken);

    private static async Task<ImportOutcome> ApplyAsync(ShopDbContext db, StockMove opening, CatalogueFile file, bool skipBad, CancellationToken cancellationToken)
    {
        var onFile = await CatalogueOnFile.ReadAsync(db, cancellationToken);
        var comparison = CatalogueComparison.Of(file, onFile);
        var report = comparison.ToReport(file);
        if (!report.IsTaken(skipBad))
        {
            return new ImportOutcome.Refused(report);
        }

        if (report.New + report.Changed > 0)
        {
            await CatalogueVersion.RaiseAsync(db, cancellationToken);
        }

        var models = new ModelsOnFile(db, opening.Actor.ShopId, onFile);
        var placeId = comparison.New.Any(row => row.OnHand > 0)
            ? await StockMoves.UsualPlaceAsync(db, opening.Actor.ShopId, cancellationToken)
            : Guid.Empty;

        var added = comparison.New.Select(row => (Id: Guid.CreateVersion7(), ModelId: models.IdOf(row), Row: MergedRow.OfNew(row))).ToList();
        await SaveBatchAsync(db, cancellationToken);
        await BulkRows.AddAsync(db, added.Select(size => ItemOf(opening.Actor.ShopId, size.Id, size.Row)), cancellationToken);
        await BulkRows.AddAsync(db, added.Select(size => SizeOf(opening.Actor.ShopId, size.Id, size.ModelId, size.Row)), cancellationToken);
        await StockMoves.AddNewAsync(db, opening, placeId, added.Where(size => size.Row.Row.OnHand > 0).Select(size => (size.Id, size.Row.Row.OnHand)).ToList(), cancellationToken);

        foreach (var rows in comparison.Changed.Chunk(BatchRows))
        {
            var ids = rows.Select(row => row.ItemId).ToList();
            var items = await db.Items.Where(item => ids.Contains(item.Id)).ToDictionaryAsync(item => item.Id, cancellationToken);
            var sizes = await db.ShoeSizes.Where(size => ids.Contains(size.Id)).ToDictionaryAsync(size => size.Id, cancellationToken);
            foreach (var (id, row) in rows)
            {
                items[id].Change(row.ItemName, row.PriceMinor, row.Gtin);
                sizes[id].Change(models.IdOf(row.Row), row.Row.SizeSystem, row.Row.Size, row.Width, row.Option, row.ShankName, row.Form, row.LeadTimeDays);
            }

            await SaveBatchAsync(db, cancellationToken);
        }

        return new ImportOutcome.Imported(report.New, report.Changed, report.Unchanged, report.Skipped);
    }

    private static Item ItemOf(Guid shopId, Guid id, MergedRow row) =>
        Item.Of(id, shopId, row.Row.Sku, row.ItemName, ItemCategories.Shoes, row.PriceMinor, row.Gtin);

    private static ShoeSize SizeOf(Guid shopId, Guid id, Guid modelId, MergedRow row) =>
        ShoeSize.Of(id, shopId, modelId, row.Row.SizeSystem, row.Row.Size, row.Width, row.Option, row.ShankName, row.Form, row.LeadTimeDays);

    private static async Task SaveBatchAsync(ShopDbContext db, CancellationToken cancellationToken)
    {
        await db.SaveChangesAsync(cancellationToken);
        db.ChangeTracker.Clear();
    }

    /// <summary>Keys of makers and models by name; those that are new are added to the context when first asked for.</summary>
    private sealed class ModelsOnFile(ShopDbContext db, Guid shopId, CatalogueOnFile onFile)
    {
        public Guid IdOf(CatalogueRow row)
        {
            if (!onFile.Makers.TryGetValue(row.Maker, out var maker))
            {
                onFile.Makers.Add(row.Maker, maker = Maker.Of(Guid.CreateVersion7(), shopId, row.Maker));
                db.Makers.Add(maker);
            }

            if (!onFile.Models.TryGetValue((maker.Id, row.Model), out var model))
            {
                onFile.Models.Add((maker.Id, row.Model), model = ShoeModel.Of(Guid.CreateVersion7(), shopId, maker.Id, row.Model, row.Kind));
                db.ShoeModels.Add(model);
            }

            return model.Id;
        }
    }
}

/// <summary>How an import ended.</summary>
[JsonDerivedType(typeof(Imported), "imported")]
[JsonDerivedType(typeof(Refused), "refused")]
public abstract record ImportOutcome
{
    private ImportOutcome()
    {
    }

    /// <summary>The good rows are on file.</summary>
    public sealed record Imported(int New, int Changed, int Unchanged, int Skipped) : ImportOutcome;

    /// <summary>Nothing was taken; the report says why.</summary>
    public sealed record Refused(CatalogueReport Report) : ImportOutcome, IRefusal;
}
