using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Sheets.Receipts;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Sales;

/// <summary>Undoes a return that was a slip, while the money is still in the till: the goods stay sold.</summary>
/// <remarks>Only the last return of a sale can be undone, since the cents of each piece follow from those that came back before it.</remarks>
public sealed class WithdrawReturn(ShopWrites writes, TimeProvider clock)
{
    public Task<WithdrawReturnOutcome> RunAsync(Actor actor, Guid commandId, Guid returnId, CancellationToken cancellationToken) =>
        writes.RunAsync<WithdrawReturnOutcome>(actor, commandId, nameof(WithdrawReturn), async (db, stop) =>
        {
            var now = clock.GetUtcNow();
            var back = await db.SaleReturns.SingleOrDefaultAsync(row => row.Id == returnId && row.WithdrawnAt == null, stop);
            if (back is null
                || now - back.ReturnedAt > VoidSale.UndoneWithin
                || await db.SaleReturns.AnyAsync(later => later.SaleId == back.SaleId && later.WithdrawnAt == null && later.ReturnedAt > back.ReturnedAt, stop))
            {
                return new WithdrawReturnOutcome.TooLate();
            }

            var putDown = await db.LedgerLines.AsNoTracking().Where(line => line.CommandId == back.Id && line.Reason == LedgerReasons.Returned).ToListAsync(stop);
            if (!await StockMoves.CounterAsync(db, new StockMove(actor, commandId, now, LedgerReasons.Undone, back.SaleId), putDown, stop))
            {
                return new WithdrawReturnOutcome.TooLate();
            }

            var sold = await SoldLine.OfAsync(db, back.SaleId, stop);
            var goods = new List<Papers.ReceiptGood>();
            foreach (var line in await db.SaleReturnLines.AsNoTracking().Where(row => row.ReturnId == back.Id).OrderBy(row => row.Id).ToListAsync(stop))
            {
                await db.SaleLines.Where(row => row.Id == line.SaleLineId)
                    .ExecuteUpdateAsync(row => row.SetProperty(one => one.ReturnedQuantity, one => one.ReturnedQuantity - line.Quantity), stop);
                goods.Add(sold.Single(one => one.Line.Id == line.SaleLineId).Good(line.Quantity, discountMinor: 0, new LineAmount(line.TaxMinor, line.TotalMinor)));
            }

            back.Withdraw(now);
            var sale = await db.Sales.AsNoTracking().SingleAsync(row => row.Id == back.SaleId, stop);
            var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == actor.ShopId, stop);
            var number = await ReceiptBook.NumberAtAsync(db, sale.Id, ReceiptKinds.Return, back.ReturnedAt, stop);
            return new WithdrawReturnOutcome.Withdrawn(
                await ReceiptBook.WriteAfterAsync(db, actor, sale, new AfterSale(shop, ReceiptKind.Undone, now, number, "", sold, goods), stop));
        }, cancellationToken);
}

/// <summary>How undoing a return ended.</summary>
[JsonDerivedType(typeof(Withdrawn), "withdrawn")]
[JsonDerivedType(typeof(TooLate), "too-late")]
public abstract record WithdrawReturnOutcome
{
    private WithdrawReturnOutcome()
    {
    }

    /// <summary>The goods stay sold, with a receipt of the undo.</summary>
    public sealed record Withdrawn(Guid ReceiptPaperId) : WithdrawReturnOutcome;

    /// <summary>Its time is over, more came back since, or the goods went another way. Nothing was changed.</summary>
    public sealed record TooLate : WithdrawReturnOutcome, IRefusal;
}
