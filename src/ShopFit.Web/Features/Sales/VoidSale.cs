using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Sheets.Receipts;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Sales;

/// <summary>Takes a whole sale back on its own day, because it was a mistake.</summary>
/// <remarks>
/// Stock, money and the use of a voucher go back in one transaction. A fitting that the sale closed is open again, just as it
/// lay, and may be decided anew; what was decided is withdrawn and stays on record.
/// </remarks>
public sealed class VoidSale(ShopWrites writes, TimeProvider clock)
{
    /// <summary>Longest reason that is kept.</summary>
    public const int LongestReason = 300;

    /// <summary>How long a void or a return can be undone: as long as it is offered, and the way to the shop's computer. Later the money has left the till.</summary>
    public static readonly TimeSpan UndoneWithin = TimeSpan.FromMinutes(1);

    public Task<VoidSaleOutcome> RunAsync(Actor actor, Guid commandId, VoidSaleRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<VoidSaleOutcome>(actor, commandId, nameof(VoidSale), async (db, stop) =>
        {
            if (string.IsNullOrWhiteSpace(request.Reason) || request.Reason.Trim().Length > LongestReason)
            {
                return new VoidSaleOutcome.Refused(VoidProblem.Reason);
            }

            var now = clock.GetUtcNow();
            var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == actor.ShopId, stop);
            var time = ShopTime.Of(shop);
            var sale = await db.Sales.SingleOrDefaultAsync(row => row.Id == request.SaleId, stop);
            switch (sale)
            {
                case null:
                    return new VoidSaleOutcome.Refused(VoidProblem.Missing);
                case { VoidedAt: not null }:
                    return new VoidSaleOutcome.Refused(VoidProblem.Already);
                case var _ when time.Day(sale.SoldAt) != time.Day(now):
                    return new VoidSaleOutcome.Refused(VoidProblem.AnotherDay);
                case var _ when await db.SaleReturns.AnyAsync(row => row.SaleId == sale.Id && row.WithdrawnAt == null, stop):
                    return new VoidSaleOutcome.Refused(VoidProblem.PartReturned);
            }

            sale.Void(now, actor.PersonId, request.Reason);
            if (sale.VoucherId is { } voucherId)
            {
                await db.Vouchers.Where(row => row.Id == voucherId && row.Used > 0).ExecuteUpdateAsync(row => row.SetProperty(one => one.Used, one => one.Used - 1), stop);
            }

            var lines = await SoldLine.OfAsync(db, sale.Id, stop);
            var move = new StockMove(actor, commandId, now, LedgerReasons.TakenBack, sale.Id);
            foreach (var line in lines)
            {
                await SoldStock.PutBackAsync(db, move, line.Line.ItemId, line.Line.Quantity, stop);
            }

            await ReopenFittingAsync(db, sale, now, stop);
            var number = await ReceiptBook.NumberOfAsync(db, sale.Id, stop);
            var receipt = await ReceiptBook.WriteAfterAsync(db, actor, sale, new AfterSale(shop, ReceiptKind.Void, now, number, request.Reason, lines, SoldLine.Goods(lines)), stop);
            return new VoidSaleOutcome.Voided(receipt);
        }, cancellationToken);

    private static async Task ReopenFittingAsync(ShopDbContext db, Sale sale, DateTimeOffset now, CancellationToken cancellationToken)
    {
        if (sale.FittingId is null || await db.Fittings.SingleOrDefaultAsync(row => row.Id == sale.FittingId, cancellationToken) is not { IsDraft: false } fitting)
        {
            return;
        }

        foreach (var decision in await db.FittingDecisions.Where(row => row.FittingId == fitting.Id && row.WithdrawnAt == null).ToListAsync(cancellationToken))
        {
            decision.Withdraw(now);
        }

        fitting.Reopen();
    }
}

/// <summary>Which sale was a mistake, and why.</summary>
/// <param name="SaleId">The sale.</param>
/// <param name="Reason">Why, in the fitter's words; it stands on the receipt.</param>
public sealed record VoidSaleRequest(Guid SaleId, string Reason);

/// <summary>Why a sale is not taken back.</summary>
public enum VoidProblem
{
    /// <summary>There is no such sale.</summary>
    Missing,

    /// <summary>It was taken back before.</summary>
    Already,

    /// <summary>It was made on another business day.</summary>
    AnotherDay,

    /// <summary>Something of it came back already: the rest can come back the same way.</summary>
    PartReturned,

    /// <summary>The reason is missing or too long.</summary>
    Reason,
}

/// <summary>How taking a sale back ended.</summary>
[JsonDerivedType(typeof(Voided), "voided")]
[JsonDerivedType(typeof(Refused), "refused")]
public abstract record VoidSaleOutcome
{
    private VoidSaleOutcome()
    {
    }

    /// <summary>It is taken back, with a receipt of its own.</summary>
    public sealed record Voided(Guid ReceiptPaperId) : VoidSaleOutcome;

    /// <summary>It is not. Nothing was changed.</summary>
    public sealed record Refused(VoidProblem Problem) : VoidSaleOutcome, IRefusal;
}
