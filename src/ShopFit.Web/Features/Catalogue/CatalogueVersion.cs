using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Says that the catalogue changed: what others keep in memory of it is old from the commit on.</summary>
/// <remarks>
/// It is the upper half of the shop's shelf version, whose lower half counts the moves of stock, so that one number tells whether
/// anything changed, and whether more than stock did. Were it ever to overflow from below, the catalogue would be read once for nothing.
/// </remarks>
internal static class CatalogueVersion
{
    private const long Step = 1L << 32;

    /// <summary>Says it in the transaction of an action.</summary>
    public static Task<int> RaiseAsync(ShopDbContext db, CancellationToken cancellationToken) => db.Shops
        .Where(shop => shop.Id == db.ShopId)
        .ExecuteUpdateAsync(row => row.SetProperty(shop => shop.ShelfVersion, shop => shop.ShelfVersion + Step), cancellationToken);

    /// <summary>The part of a shop's shelf version that goes up with the catalogue alone.</summary>
    public static long Of(long shelfVersion) => shelfVersion / Step;
}
