using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Sales;

/// <summary>Sales as their pages show them. Reads only.</summary>
public sealed class SaleQueries(ShopContexts contexts, TimeProvider clock)
{
    /// <summary>One page of sales, the latest first, by day.</summary>
    /// <param name="search">Part of a dancer's name, or of the number of any receipt of a sale; empty finds all.</param>
    /// <param name="page">Which page, from 0.</param>
    /// <param name="pageRows">Sales on a page.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<SalesPageRows> ListAsync(string search, int page, int pageRows, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var found = Find(db, search.Trim());
        var count = await found.CountAsync(cancellationToken);
        var sales = await found.OrderByDescending(sale => sale.SoldAt).ThenByDescending(sale => sale.Id)
            .Skip(page * pageRows).Take(pageRows).ToListAsync(cancellationToken);
        var time = ShopTime.Of(await db.Shops.AsNoTracking().SingleAsync(shop => shop.Id == db.ShopId, cancellationToken));
        var rows = await RowsAsync(db, sales, cancellationToken);
        var totals = search.Trim().Length == 0 && rows.Count > 0
            ? await TotalsAsync(db, time, time.Day(rows[^1].SoldAt), time.Day(rows[0].SoldAt), cancellationToken)
            : Array.Empty<DayTotal>().ToLookup(_ => default(DateOnly));
        var days = rows.GroupBy(row => time.Day(row.SoldAt)).Select(day => new SalesDay(day.Key, [.. totals[day.Key]], [.. day])).ToList();
        return new SalesPageRows(count, time, days);
    }

    /// <summary>One sale with its lines and receipts; null where there is none.</summary>
    public async Task<SeenSale?> SeeAsync(Guid saleId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        if (await db.Sales.AsNoTracking().SingleOrDefaultAsync(row => row.Id == saleId, cancellationToken) is not { } sale)
        {
            return null;
        }

        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        var time = ShopTime.Of(shop);
        var now = clock.GetUtcNow();
        var row = (await RowsAsync(db, [sale], cancellationToken)).Single();
        var lines = await SoldLine.OfAsync(db, saleId, cancellationToken);
        var receipts = await db.SaleReceipts.AsNoTracking().Where(one => one.SaleId == saleId).OrderBy(one => one.MadeAt).ThenBy(one => one.Number).ToListAsync(cancellationToken);
        var returnUntil = time.Day(sale.SoldAt).AddDays(shop.ReturnDays);
        return new SeenSale
        {
            Row = row,
            FittingId = sale.FittingId,
            DancerId = sale.DancerId,
            Time = time,
            Lines = [.. lines.Select(sold => new SeenLine(
                sold.Line.Id,
                sold.Line.Text,
                sold.Category,
                sold.Line.Quantity,
                sold.Line.ReturnedQuantity,
                new Money(sold.Line.UnitPriceMinor, sale.Currency),
                new Money(sold.Line.DiscountMinor, sale.Currency),
                sold.Line.TaxRateBasisPoints,
                new Money(sold.Line.TaxMinor, sale.Currency),
                new Money(sold.Line.TotalMinor, sale.Currency)))],
            Receipts = [.. receipts.Select(one => new SeenReceipt(one.Kind, ReceiptFacts.NumberOf(one.Year, one.Number), one.MadeAt, one.PaperId))],
            VoidedAt = sale.VoidedAt,
            VoidReason = sale.VoidReason,
            CanBeVoided = sale.VoidedAt is null && row.ReturnedPieces == 0 && time.Day(sale.SoldAt) == time.Day(now),
            ReturnUntil = returnUntil,
            CanReturn = sale.VoidedAt is null && time.Day(now) <= returnUntil,
        };
    }

    /// <summary>The sale that ended a fitting and stands, with its receipt; null where there is none, or it was made before there were receipts.</summary>
    public async Task<SoldAtFitting?> AtFittingAsync(Guid fittingId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        return await (
            from sale in db.Sales
            join receipt in db.SaleReceipts on sale.Id equals receipt.SaleId
            where sale.FittingId == fittingId && sale.VoidedAt == null && receipt.Kind == ReceiptKinds.Sale
            select new SoldAtFitting(sale.Id, receipt.PaperId)).SingleOrDefaultAsync(cancellationToken);
    }

    private static IQueryable<Sale> Find(ShopDbContext db, string search)
    {
        var sales = db.Sales.AsNoTracking();
        if (search.Length == 0)
        {
            return sales;
        }

        var pattern = $"%{search.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("%", "\\%", StringComparison.Ordinal).Replace("_", "\\_", StringComparison.Ordinal)}%";
        var (year, number) = NumberIn(search);
        return sales.Where(sale =>
            db.Dancers.Any(dancer => dancer.Id == sale.DancerId && EF.Functions.Like(dancer.Name, pattern, "\\"))
            || (number != null && db.SaleReceipts.Any(receipt => receipt.SaleId == sale.Id && receipt.Number == number && (year == null || receipt.Year == year))));
    }

    // "2026-000017", or its last digits alone.
    private static (int? Year, int? Number) NumberIn(string search)
    {
        var parts = search.Split('-', StringSplitOptions.TrimEntries);
        return parts.Length switch
        {
            1 when Digits(parts[0]) is { } number => (null, number),
            2 when Digits(parts[0]) is { } year && Digits(parts[1]) is { } number => (year, number),
            _ => (null, null),
        };
    }

    private static int? Digits(string text) =>
        int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : null;

    // Of whole days, also where a page shows a part of one: sales taken back count nothing, what was given for returns is told beside it.
    private static async Task<ILookup<DateOnly, DayTotal>> TotalsAsync(ShopDbContext db, ShopTime time, DateOnly first, DateOnly last, CancellationToken cancellationToken)
    {
        var (from, to) = (time.Start(first), time.Start(last.AddDays(1)));
        var sales = await db.Sales.AsNoTracking()
            .Where(sale => sale.VoidedAt == null && sale.SoldAt >= from && sale.SoldAt < to)
            .Select(sale => new { sale.SoldAt, sale.Currency, sale.TotalMinor, Back = db.SaleReturns.Where(one => one.SaleId == sale.Id && one.WithdrawnAt == null).Sum(one => one.TotalMinor) })
            .ToListAsync(cancellationToken);
        return sales.GroupBy(sale => (Day: time.Day(sale.SoldAt), sale.Currency)).ToLookup(
            day => day.Key.Day,
            day => new DayTotal(new Money(day.Sum(sale => sale.TotalMinor - sale.Back), day.Key.Currency), new Money(day.Sum(sale => sale.Back), day.Key.Currency)));
    }

    private static async Task<IReadOnlyList<SaleRow>> RowsAsync(ShopDbContext db, IReadOnlyList<Sale> sales, CancellationToken cancellationToken)
    {
        var ids = sales.Select(sale => sale.Id).ToList();
        var dancerIds = sales.Select(sale => sale.DancerId).OfType<Guid>().Distinct().ToList();
        var personIds = sales.Select(sale => sale.PersonId).Distinct().ToList();
        var lines = (await db.SaleLines.AsNoTracking().Where(line => ids.Contains(line.SaleId)).OrderBy(line => line.Id).ToListAsync(cancellationToken)).ToLookup(line => line.SaleId);
        var sheets = await db.Papers.Where(paper => paper.SaleId != null && ids.Contains(paper.SaleId.Value) && paper.Kind == PaperKinds.TakeHomeSheet)
            .Select(paper => new { SaleId = paper.SaleId!.Value, paper.Id }).ToListAsync(cancellationToken);
        var receipts = await db.SaleReceipts.AsNoTracking().Where(receipt => ids.Contains(receipt.SaleId) && receipt.Kind == ReceiptKinds.Sale).ToDictionaryAsync(receipt => receipt.SaleId, cancellationToken);
        var returns = (await db.SaleReturns.AsNoTracking().Where(one => ids.Contains(one.SaleId) && one.WithdrawnAt == null).ToListAsync(cancellationToken)).ToLookup(one => one.SaleId);
        var dancers = await db.Dancers.Where(dancer => dancerIds.Contains(dancer.Id)).ToDictionaryAsync(dancer => dancer.Id, dancer => dancer.Name, cancellationToken);
        var people = await db.Users.Where(person => person.ShopId == db.ShopId && personIds.Contains(person.Id)).ToDictionaryAsync(person => person.Id, person => person.DisplayName, cancellationToken);
        return [.. sales.Select(sale => new SaleRow
        {
            Id = sale.Id,
            SoldAt = sale.SoldAt,
            Dancer = sale.DancerId is { } dancerId ? dancers.GetValueOrDefault(dancerId, "") : "",
            Things = [.. lines[sale.Id].Select(line => new SoldThing(line.Quantity, line.Text))],
            Total = new Money(sale.TotalMinor, sale.Currency),
            Tax = new Money(sale.TaxMinor, sale.Currency),
            Person = people.GetValueOrDefault(sale.PersonId, ""),
            Receipt = receipts.TryGetValue(sale.Id, out var receipt) ? ReceiptFacts.NumberOf(receipt.Year, receipt.Number) : "",
            SheetPaperId = sheets.FirstOrDefault(paper => paper.SaleId == sale.Id)?.Id,
            Voided = sale.VoidedAt is not null,
            ReturnedPieces = lines[sale.Id].Sum(line => line.ReturnedQuantity),
            GivenBack = new Money(returns[sale.Id].Sum(one => one.TotalMinor), sale.Currency),
        })];
    }
}
