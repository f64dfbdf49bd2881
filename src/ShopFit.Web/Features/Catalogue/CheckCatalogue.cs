using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Reads a catalogue file and says what importing it would do, changing nothing.</summary>
public sealed class CheckCatalogue(IDbContextFactory<ShopDbContext> contexts)
{
    /// <summary>Reads the file by the settings of a shop.</summary>
    public async Task<CatalogueFile> ReadAsync(Guid shopId, Stream stream, CancellationToken cancellationToken)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellationToken);
        var shop = await db.Shops.Where(row => row.Id == shopId).Select(row => new { row.Currency, row.FitOverridesJson }).SingleAsync(cancellationToken);
        var kinds = FitNumbers.Over(shop.FitOverridesJson).Numbers.Kinds.Select(kind => kind.Id).ToList();
        return await CatalogueFileReader.ReadAsync(stream, new CatalogueRules(shop.Currency, kinds), cancellationToken);
    }

    /// <summary>Compares a file that was read with what is on file.</summary>
    public async Task<CatalogueReport> CompareAsync(Guid shopId, CatalogueFile file, CancellationToken cancellationToken)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellationToken);
        db.ShopId = shopId;
        return CatalogueComparison.Of(file, await CatalogueOnFile.ReadAsync(db, cancellationToken)).ToReport(file);
    }
}
