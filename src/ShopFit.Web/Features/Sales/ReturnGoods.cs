using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Sheets.Receipts;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Sales;

/// <summary>Takes single lines of a sale back that can be sold again: money and stock in one transaction, never more than was sold.</summary>
public sealed class ReturnGoods(ShopWrites writes, TimeProvider clock)
{
    public Task<ReturnGoodsOutcome> RunAsync(Actor actor, Guid commandId, ReturnGoodsRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<ReturnGoodsOutcome>(actor, commandId, nameof(ReturnGoods), async (db, stop) =>
        {
            if (request.Reason.Trim().Length > VoidSale.LongestReason)
            {
                return new ReturnGoodsOutcome.Refused(ReturnProblem.Reason);
            }

            var now = clock.GetUtcNow();
            var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == actor.ShopId, stop);
            var time = ShopTime.Of(shop);
            var sale = await db.Sales.AsNoTracking().SingleOrDefaultAsync(row => row.Id == request.SaleId, stop);
            switch (sale)
            {
                case null:
                    return new ReturnGoodsOutcome.Refused(ReturnProblem.Missing);
                case { VoidedAt: not null }:
                    return new ReturnGoodsOutcome.Refused(ReturnProblem.SaleTakenBack);
                case var _ when time.Day(now) > time.Day(sale.SoldAt).AddDays(shop.ReturnDays):
                    return new ReturnGoodsOutcome.Refused(ReturnProblem.TooLate);
            }

            if (request.Lines.Count == 0)
            {
                return new ReturnGoodsOutcome.Refused(ReturnProblem.Nothing);
            }

            var sold = await SoldLine.OfAsync(db, sale.Id, stop);
            var goods = new List<ReceiptGood>();
            var rows = new List<SaleReturnLine>();
            var move = new StockMove(actor, commandId, now, LedgerReasons.Returned, sale.Id);
            foreach (var asked in request.Lines)
            {
                var line = sold.FirstOrDefault(one => one.Line.Id == asked.SaleLineId);
                if (Check(asked, line) is { } problem)
                {
                    return new ReturnGoodsOutcome.Refused(problem, line?.Line.Text ?? "");
                }

                if (await db.SaleLines
                    .Where(row => row.Id == asked.SaleLineId && row.ReturnedQuantity + asked.Quantity <= row.Quantity)
                    .ExecuteUpdateAsync(row => row.SetProperty(one => one.ReturnedQuantity, one => one.ReturnedQuantity + asked.Quantity), stop) == 0)
                {
                    return new ReturnGoodsOutcome.Refused(ReturnProblem.MoreThanSold, line!.Line.Text);
                }

                var amount = ReturnAmount.Of(new LineAmount(line!.Line.TaxMinor, line.Line.TotalMinor), line.Line.Quantity, line.Line.ReturnedQuantity, asked.Quantity);
                rows.Add(SaleReturnLine.Of(Guid.CreateVersion7(now), actor.ShopId, commandId, line.Line.Id, asked.Quantity, amount));
                goods.Add(line.Good(asked.Quantity, discountMinor: 0, amount));
                await SoldStock.PutBackAsync(db, move, line.Line.ItemId, asked.Quantity, stop);
            }

            db.SaleReturns.Add(SaleReturn.Of(commandId, actor, sale.Id, now, request.Reason, rows.Sum(row => row.TotalMinor), rows.Sum(row => row.TaxMinor)));
            db.SaleReturnLines.AddRange(rows);
            var number = await ReceiptBook.NumberOfAsync(db, sale.Id, stop);
            var receipt = await ReceiptBook.WriteAfterAsync(db, actor, sale, new AfterSale(shop, ReceiptKind.Return, now, number, request.Reason, sold, goods), stop);
            return new ReturnGoodsOutcome.Returned(commandId, receipt);
        }, cancellationToken);

    // Work that was done cannot come back, and what was worn, sewn, cut or opened cannot be sold again.
    private static ReturnProblem? Check(ReturnedLine asked, SoldLine? line) => line switch
    {
        null => ReturnProblem.LineMissing,
        { Category: ItemCategories.Service } => ReturnProblem.Work,
        _ when asked.Quantity < 1 || asked.Quantity > line.Line.Quantity => ReturnProblem.MoreThanSold,
        _ when asked.AsNew => null,
        { Category: ItemCategories.Pads } => ReturnProblem.Opened,
        { Category: ItemCategories.Shoes } => ReturnProblem.Worn,
        _ => ReturnProblem.Used,
    };
}

/// <summary>What comes back of a sale.</summary>
/// <param name="SaleId">Of which sale.</param>
/// <param name="Lines">Which lines.</param>
/// <param name="Reason">Why, in the fitter's words; may be empty.</param>
public sealed record ReturnGoodsRequest(Guid SaleId, IReadOnlyList<ReturnedLine> Lines, string Reason = "");

/// <summary>Pieces of one line that come back.</summary>
/// <param name="SaleLineId">Of which line.</param>
/// <param name="Quantity">How many.</param>
/// <param name="AsNew">The fitter has looked: shoes unworn and unsewn, a pad in its unopened packet, ribbon uncut.</param>
public sealed record ReturnedLine(Guid SaleLineId, int Quantity, bool AsNew);

/// <summary>Why goods are not taken back.</summary>
public enum ReturnProblem
{
    /// <summary>There is no such sale.</summary>
    Missing,

    /// <summary>The whole sale was taken back before.</summary>
    SaleTakenBack,

    /// <summary>The shop's days for a return are over.</summary>
    TooLate,

    /// <summary>No line was chosen.</summary>
    Nothing,

    /// <summary>There is no such line in this sale.</summary>
    LineMissing,

    /// <summary>More would come back than was sold and has not come back yet.</summary>
    MoreThanSold,

    /// <summary>Work that was done is not given back.</summary>
    Work,

    /// <summary>Shoes come back unworn and unsewn only.</summary>
    Worn,

    /// <summary>Pads come back unopened only.</summary>
    Opened,

    /// <summary>Other goods come back uncut and unused only.</summary>
    Used,

    /// <summary>The reason is too long.</summary>
    Reason,
}

/// <summary>How taking goods back ended.</summary>
[JsonDerivedType(typeof(Returned), "returned")]
[JsonDerivedType(typeof(Refused), "refused")]
public abstract record ReturnGoodsOutcome
{
    private ReturnGoodsOutcome()
    {
    }

    /// <summary>They are back on the shelf and the money is given back, with a receipt of its own.</summary>
    public sealed record Returned(Guid ReturnId, Guid ReceiptPaperId) : ReturnGoodsOutcome;

    /// <summary>They are not taken back. Nothing was changed.</summary>
    /// <param name="Problem">Why.</param>
    /// <param name="About">What it is about; empty where the problem says it all.</param>
    public sealed record Refused(ReturnProblem Problem, string About = "") : ReturnGoodsOutcome, IRefusal;
}
