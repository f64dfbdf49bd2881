using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Sheets.Receipts;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Sales;

/// <summary>Undoes a void that was a slip, while the money is still in the till: the sale stands as it did.</summary>
/// <remarks>
/// The goods leave the places to which they went back, with counter lines; the voucher is used again; a fitting that was opened
/// again is closed as it was. Where one of these cannot be, because somebody was quicker, nothing is changed.
/// </remarks>
public sealed class RestoreSale(ShopWrites writes, TimeProvider clock)
{
    public Task<RestoreSaleOutcome> RunAsync(Actor actor, Guid commandId, Guid saleId, CancellationToken cancellationToken) =>
        writes.RunAsync<RestoreSaleOutcome>(actor, commandId, nameof(RestoreSale), async (db, stop) =>
        {
            var now = clock.GetUtcNow();
            var sale = await db.Sales.SingleOrDefaultAsync(row => row.Id == saleId, stop);
            if (sale?.VoidedAt is not { } voidedAt || now - voidedAt > VoidSale.UndoneWithin)
            {
                return new RestoreSaleOutcome.TooLate();
            }

            if (sale.VoucherId is { } voucherId && await db.Vouchers
                .Where(row => row.Id == voucherId && (row.MostUses == null || row.Used < row.MostUses))
                .ExecuteUpdateAsync(row => row.SetProperty(one => one.Used, one => one.Used + 1), stop) == 0)
            {
                return new RestoreSaleOutcome.TooLate();
            }

            var putDown = await db.LedgerLines.AsNoTracking().Where(line => line.SaleId == sale.Id && line.Reason == LedgerReasons.TakenBack && line.At == voidedAt).ToListAsync(stop);
            if (!await StockMoves.CounterAsync(db, new StockMove(actor, commandId, now, LedgerReasons.Undone, sale.Id), putDown, stop)
                || !await CloseFittingAsync(db, sale, voidedAt, stop))
            {
                return new RestoreSaleOutcome.TooLate();
            }

            sale.Restore();
            var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == actor.ShopId, stop);
            var lines = await SoldLine.OfAsync(db, sale.Id, stop);
            var number = await ReceiptBook.NumberAtAsync(db, sale.Id, ReceiptKinds.Void, voidedAt, stop);
            return new RestoreSaleOutcome.Restored(
                await ReceiptBook.WriteAfterAsync(db, actor, sale, new AfterSale(shop, ReceiptKind.Undone, now, number, "", lines, SoldLine.Goods(lines)), stop));
        }, cancellationToken);

    // What was decided stands again, unless the fitting was ended otherwise meanwhile.
    private static async Task<bool> CloseFittingAsync(ShopDbContext db, Sale sale, DateTimeOffset voidedAt, CancellationToken cancellationToken)
    {
        if (sale.FittingId is not { } fittingId)
        {
            return true;
        }

        var fitting = await db.Fittings.SingleAsync(row => row.Id == fittingId, cancellationToken);
        if (!fitting.IsDraft)
        {
            return false;
        }

        foreach (var decision in await db.FittingDecisions.Where(row => row.FittingId == fittingId && row.WithdrawnAt == voidedAt).ToListAsync(cancellationToken))
        {
            decision.Restore();
        }

        fitting.Close(sale.SoldAt);
        return true;
    }
}

/// <summary>How undoing a void ended.</summary>
[JsonDerivedType(typeof(Restored), "restored")]
[JsonDerivedType(typeof(TooLate), "too-late")]
public abstract record RestoreSaleOutcome
{
    private RestoreSaleOutcome()
    {
    }

    /// <summary>The sale stands, with a receipt of the undo.</summary>
    public sealed record Restored(Guid ReceiptPaperId) : RestoreSaleOutcome;

    /// <summary>Its time is over, or goods, voucher or fitting went another way meanwhile. Nothing was changed.</summary>
    public sealed record TooLate : RestoreSaleOutcome, IRefusal;
}
