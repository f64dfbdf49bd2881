using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Shelf;

/// <summary>The shelf as its pages show it. Reads only.</summary>
public sealed class ShelfQueries(ShopContexts contexts)
{
    /// <summary>One page of what is on hand, by name, with its places.</summary>
    public async Task<ShelfPageRows> OnHandAsync(int page, int pageRows, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var items = db.Items.Where(item => db.StockLevels.Any(level => level.ItemId == item.Id && level.OnHand > 0));
        var count = await items.CountAsync(cancellationToken);
        var pairs = await db.StockLevels.SumAsync(level => level.OnHand, cancellationToken);
        var rows = await items.OrderBy(item => item.Name).ThenBy(item => item.Code).Skip(page * pageRows).Take(pageRows)
            .Select(item => new { item.Id, item.Code, item.Name }).ToListAsync(cancellationToken);
        var ids = rows.Select(row => row.Id).ToList();
        var levels = await (
            from level in db.StockLevels
            join place in db.ShelfPlaces on level.PlaceId equals place.Id
            where ids.Contains(level.ItemId) && level.OnHand > 0
            orderby place.Code
            select new { level.ItemId, Place = new StockAtPlace(place.Code, level.OnHand, level.Reserved) }).ToListAsync(cancellationToken);
        var placesOf = levels.ToLookup(level => level.ItemId, level => level.Place);
        return new ShelfPageRows(count, pairs, [.. rows.Select(row => new ShelfRow(row.Id, row.Code, row.Name, [.. placesOf[row.Id]]))]);
    }

    /// <summary>Every change of one thing's stock, the latest first; null where there is no such thing.</summary>
    public async Task<ItemLedger?> LedgerAsync(Guid itemId, int mostLines, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var item = await db.Items.Where(row => row.Id == itemId).Select(row => new { row.Code, row.Name }).SingleOrDefaultAsync(cancellationToken);
        if (item is null)
        {
            return null;
        }

        var lines = await (
            from line in db.LedgerLines
            join place in db.ShelfPlaces on line.PlaceId equals place.Id
            where line.ItemId == itemId
            orderby line.At descending, line.Id descending
            select new { line.Id, line.At, Place = place.Code, line.Change, line.Reason, line.PersonId }).Take(mostLines).ToListAsync(cancellationToken);
        var people = lines.Select(line => line.PersonId).Distinct().ToList();
        var names = await db.Users.Where(person => person.ShopId == db.ShopId && people.Contains(person.Id))
            .ToDictionaryAsync(person => person.Id, person => person.DisplayName, cancellationToken);
        var time = ShopTime.Of(await db.Shops.AsNoTracking().SingleAsync(shop => shop.Id == db.ShopId, cancellationToken));
        return new ItemLedger(
            item.Code,
            item.Name,
            await db.StockLevels.Where(level => level.ItemId == itemId).SumAsync(level => level.OnHand, cancellationToken),
            [.. lines.Select(line => new LedgerRow(line.Id, line.At, line.Place, line.Change, line.Reason, names.GetValueOrDefault(line.PersonId, "")))],
            time);
    }
}

/// <summary>One page of the shelf.</summary>
/// <param name="Count">Things on hand.</param>
/// <param name="Pieces">Pieces of them in all.</param>
/// <param name="Rows">The rows of this page.</param>
public sealed record ShelfPageRows(int Count, int Pieces, IReadOnlyList<ShelfRow> Rows);

/// <summary>One thing on hand.</summary>
public sealed record ShelfRow(Guid ItemId, string Code, string Name, IReadOnlyList<StockAtPlace> Places)
{
    public int OnHand => Places.Sum(place => place.OnHand);

    public int Reserved => Places.Sum(place => place.Reserved);
}

/// <summary>How much of a thing stands at a place.</summary>
public sealed record StockAtPlace(string Code, int OnHand, int Reserved);

/// <summary>The ledger of one thing.</summary>
public sealed record ItemLedger(string Code, string Name, int OnHand, IReadOnlyList<LedgerRow> Lines, ShopTime Time);

/// <summary>One change of stock.</summary>
/// <param name="Id">Its key.</param>
/// <param name="At">When.</param>
/// <param name="Place">Where.</param>
/// <param name="Change">Pieces that came, or went where negative.</param>
/// <param name="Reason">One of <see cref="LedgerReasons"/>.</param>
/// <param name="Person">Who; empty for the command line.</param>
public sealed record LedgerRow(Guid Id, DateTimeOffset At, string Place, int Change, string Reason, string Person);
