using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Reads a catalogue file and says what importing it would do, changing nothing.</summary>
public sealed class CheckCatalogue(IDbContextFactory<ShopDbContext> contexts)
{
    /// <summary>Reads the file by the settings of a shop.</summary>
    public async Task<CatalogueFile> ReadAsync(Guid shopId, Stream stream, CancellationToken cancellationToken)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellationToken);
        var currency = await db.Shops.Where(shop => shop.Id == shopId).Select(shop => shop.Currency).SingleAsync(cancellationToken);
        return await CatalogueFileReader.ReadAsync(stream, new CatalogueRules(currency, FootwearKinds.All), cancellationToken);
    }

    /// <summary>Compares a file that was read with what is on file.</summary>
    public async Task<CatalogueReport> CompareAsync(Guid shopId, CatalogueFile file, CancellationToken cancellationToken)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellationToken);
        db.ShopId = shopId;
        return CatalogueComparison.Of(file, await CatalogueOnFile.ReadAsync(db, cancellationToken)).ToReport(file);
    }
}
