using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Sales;

/// <summary>Puts goods of a sale back where they came from, with counter lines in the ledger.</summary>
internal static class SoldStock
{
    /// <summary>Puts so many pieces of an item back; where it is not counted, nothing moves.</summary>
    /// <param name="db">The context of the action.</param>
    /// <param name="move">Why they come back; it names the sale.</param>
    /// <param name="itemId">What comes back.</param>
    /// <param name="quantity">How many.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public static async Task PutBackAsync(ShopDbContext db, StockMove move, Guid itemId, int quantity, CancellationToken cancellationToken)
    {
        var moved = await db.LedgerLines.AsNoTracking()
            .Where(line => line.SaleId == move.SaleId && line.ItemId == itemId)
            .GroupBy(line => line.PlaceId)
            .Select(place => new { PlaceId = place.Key, Out = -place.Sum(line => line.Change) })
            .Where(place => place.Out > 0)
            .OrderBy(place => place.PlaceId)
            .ToListAsync(cancellationToken);
        foreach (var place in moved)
        {
            var back = Math.Min(quantity, place.Out);
            if (back > 0)
            {
                await StockMoves.AddAsync(db, move, itemId, place.PlaceId, back, cancellationToken);
                quantity -= back;
            }
        }
    }
}
