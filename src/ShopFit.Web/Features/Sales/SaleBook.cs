using Microsoft.EntityFrameworkCore;
using ShopFit.Sheets.Receipts;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Sales;

/// <summary>Writes a packed bag down as sold, in the transaction of an action: stock, voucher, sale and receipt together.</summary>
internal static class SaleBook
{
    /// <returns>The sale and its receipt; or what is not to be had any more, and then the action must refuse, which undoes what was begun.</returns>
    public static async Task<SaleEntry> EnterAsync(ShopDbContext db, SaleMoment moment, SaleBag bag, AskedDiscount? asked, CancellationToken cancellationToken)
    {
        var (actor, shop, now) = (moment.Actor, moment.Shop, moment.At);
        if (bag.Voucher is { } voucher && await db.Vouchers
            .Where(row => row.Id == voucher.Id && row.EndedAt == null && (row.MostUses == null || row.Used < row.MostUses))
            .ExecuteUpdateAsync(row => row.SetProperty(one => one.Used, one => one.Used + 1), cancellationToken) == 0)
        {
            return new SaleEntry { Refused = new BagRefusal(SellProblem.VoucherUsedUp, voucher.Code) };
        }

        var saleId = Guid.CreateVersion7(now);
        db.Sales.Add(Sale.Of(saleId, actor, moment.FittingId, moment.Dancer?.Id, now, shop.Currency, bag.TotalMinor, bag.TaxMinor, bag.Voucher?.Id));
        db.SaleLines.AddRange(bag.Lines.Select(line => line.ToSaleLine(actor.ShopId, saleId)));
        var move = new StockMove(actor, moment.CommandId, now, LedgerReasons.Sold, saleId);
        foreach (var line in bag.Lines.Where(line => line.Item.TracksStock))
        {
            if (!await StockMoves.TakeAsync(db, move, line.Item.Id, line.Quantity, cancellationToken))
            {
                return new SaleEntry { Gone = line };
            }
        }

        var receipt = await ReceiptBook.WriteAsync(
            db,
            actor,
            saleId,
            ReceiptKinds.Sale,
            new ReceiptFacts
            {
                Shop = shop,
                Dancer = moment.Dancer,
                ServedBy = actor.Name,
                At = now,
                Kind = ReceiptKind.Sale,
                Number = "",
                Currency = shop.Currency,
                PricesIncludeTax = shop.PricesIncludeTax,
                Goods = [.. bag.Lines.Select(line => new ReceiptGood(line.Item.Name, line.Item.Category, line.Quantity, line.UnitPriceMinor, line.DiscountMinor, line.RateBasisPoints, line.Amount))],
                Discount = asked,
            },
            cancellationToken);
        return new SaleEntry { SaleId = saleId, ReceiptPaperId = receipt };
    }
}

/// <summary>Who sells what to whom, and when.</summary>
/// <param name="Actor">Who sells.</param>
/// <param name="CommandId">Under which command.</param>
/// <param name="Shop">In which shop.</param>
/// <param name="At">When.</param>
/// <param name="Dancer">To whom; null where nobody is on file.</param>
/// <param name="FittingId">At which fitting; null where it is none.</param>
internal sealed record SaleMoment(Actor Actor, Guid CommandId, Shop Shop, DateTimeOffset At, Dancer? Dancer, Guid? FittingId = null);

/// <summary>How writing a bag down ended.</summary>
internal sealed record SaleEntry
{
    public Guid SaleId { get; init; }

    public Guid ReceiptPaperId { get; init; }

    /// <summary>Of this there is not enough.</summary>
    public BagLine? Gone { get; init; }

    /// <summary>The voucher went meanwhile.</summary>
    public BagRefusal? Refused { get; init; }
}
