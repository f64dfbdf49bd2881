using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Shelf;

/// <summary>The only ways in which a stock level changes: each with its ledger line, in the transaction of an action.</summary>
/// <remarks>
/// A level is never read and written back: the update itself says what must hold, and the rows it touched say whether
/// it did. Call these only from the work given to <see cref="ShopWrites"/>.
/// </remarks>
public static class StockMoves
{
    /// <summary>Code of the place that is made where stock arrives before any place was named.</summary>
    public const string FirstPlaceCode = "Shelf";

    /// <summary>Takes one piece from the first place, by code, that sells and has one to spare.</summary>
    /// <returns>Whether there was one; if not, nothing changed.</returns>
    public static Task<bool> TakeOneAsync(ShopDbContext db, StockMove move, Guid itemId, CancellationToken cancellationToken) =>
        TakeAsync(db, move, itemId, 1, cancellationToken);

    /// <summary>Takes so many pieces, from several places where no single one has enough.</summary>
    /// <returns>Whether there were so many. If not, some may have been taken already: the action must refuse, which undoes it.</returns>
    public static async Task<bool> TakeAsync(ShopDbContext db, StockMove move, Guid itemId, int quantity, CancellationToken cancellationToken)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(quantity, 1);
        await RaiseVersionAsync(db, cancellationToken);
        var levels = await (
            from level in db.StockLevels
            join place in db.ShelfPlaces on level.PlaceId equals place.Id
            where level.ItemId == itemId && place.Sells && level.OnHand > level.Reserved
            orderby place.Code
            select new { level.Id, level.PlaceId, Spare = level.OnHand - level.Reserved }).ToListAsync(cancellationToken);

        var wanted = quantity;
        foreach (var level in levels)
        {
            var taken = Math.Min(wanted, level.Spare);
            if (await db.StockLevels
                .Where(row => row.Id == level.Id && row.OnHand - row.Reserved >= taken)
                .ExecuteUpdateAsync(row => row.SetProperty(stock => stock.OnHand, stock => stock.OnHand - taken), cancellationToken) == 0)
            {
                continue;
            }

            Write(db, move, itemId, level.PlaceId, -taken);
            wanted -= taken;
            if (wanted == 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Puts so many pieces down at a place.</summary>
    public static async Task AddAsync(ShopDbContext db, StockMove move, Guid itemId, Guid placeId, int quantity, CancellationToken cancellationToken)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(quantity, 1);
        if (await db.StockLevels
            .Where(level => level.ItemId == itemId && level.PlaceId == placeId)
            .ExecuteUpdateAsync(row => row.SetProperty(stock => stock.OnHand, stock => stock.OnHand + quantity), cancellationToken) == 0)
        {
            await AddNewAsync(db, move, placeId, [(itemId, quantity)], cancellationToken);
            return;
        }

        await RaiseVersionAsync(db, cancellationToken);
        Write(db, move, itemId, placeId, quantity);
    }

    /// <summary>Undoes moves that put pieces down: the same pieces leave the same places, each with its counter line.</summary>
    /// <returns>Whether all of them still stood there to spare. If not, some may have left already: the action must refuse, which undoes it.</returns>
    public static async Task<bool> CounterAsync(ShopDbContext db, StockMove move, IReadOnlyList<LedgerLine> putDown, CancellationToken cancellationToken)
    {
        await RaiseVersionAsync(db, cancellationToken);
        foreach (var line in putDown)
        {
            if (await db.StockLevels
                .Where(level => level.ItemId == line.ItemId && level.PlaceId == line.PlaceId && level.OnHand - level.Reserved >= line.Change)
                .ExecuteUpdateAsync(row => row.SetProperty(stock => stock.OnHand, stock => stock.OnHand - line.Change), cancellationToken) == 0)
            {
                return false;
            }

            Write(db, move, line.ItemId, line.PlaceId, -line.Change);
        }

        return true;
    }

    /// <summary>Puts pieces down of items that have never stood at that place; thousands cost little.</summary>
    public static async Task AddNewAsync(ShopDbContext db, StockMove move, Guid placeId, IReadOnlyList<(Guid ItemId, int Quantity)> pieces, CancellationToken cancellationToken)
    {
        if (pieces.Count > 0)
        {
            await RaiseVersionAsync(db, cancellationToken);
        }

        await BulkRows.AddAsync(db, pieces.Select(piece => StockLevel.Of(Guid.CreateVersion7(), move.Actor.ShopId, piece.ItemId, placeId, piece.Quantity)), cancellationToken);
        await BulkRows.AddAsync(db, pieces.Select(piece => LineOf(move, piece.ItemId, placeId, piece.Quantity)), cancellationToken);
    }

    /// <summary>The place where stock goes when nobody named one: the first that sells, made where there is none.</summary>
    public static async Task<Guid> UsualPlaceAsync(ShopDbContext db, Guid shopId, CancellationToken cancellationToken)
    {
        if (await db.ShelfPlaces.Where(place => place.Sells).OrderBy(place => place.Code).Select(place => (Guid?)place.Id).FirstOrDefaultAsync(cancellationToken) is { } known)
        {
            return known;
        }

        // Its code may be taken by a place that does not sell, such as the van.
        var place = await db.ShelfPlaces.AnyAsync(taken => taken.Code == FirstPlaceCode, cancellationToken)
            ? ShelfPlace.Of(Guid.CreateVersion7(), shopId, FirstPlaceCode + " 1")
            : ShelfPlace.Of(Guid.CreateVersion7(), shopId, FirstPlaceCode);
        db.ShelfPlaces.Add(place);
        await db.SaveChangesAsync(cancellationToken);
        return place.Id;
    }

    // What others keep in memory of the stock is old from the commit on.
    private static Task<int> RaiseVersionAsync(ShopDbContext db, CancellationToken cancellationToken) => db.Shops
        .Where(shop => shop.Id == db.ShopId)
        .ExecuteUpdateAsync(row => row.SetProperty(shop => shop.ShelfVersion, shop => shop.ShelfVersion + 1), cancellationToken);

    private static void Write(ShopDbContext db, StockMove move, Guid itemId, Guid placeId, int change) =>
        db.LedgerLines.Add(LineOf(move, itemId, placeId, change));

    private static LedgerLine LineOf(StockMove move, Guid itemId, Guid placeId, int change) =>
        LedgerLine.Of(Guid.CreateVersion7(), move.Actor, move.At, itemId, placeId, change, move.Reason, move.CommandId, move.SaleId);
}
