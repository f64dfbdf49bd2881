using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ShopFit.Sheets.Receipts;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Sales;

/// <summary>Gives receipts their numbers, in the transaction of what they are of: a number is taken only with a receipt that stands.</summary>
internal static class ReceiptBook
{
    /// <summary>Writes a receipt with the next number of the year.</summary>
    /// <returns>The key of its paper.</returns>
    public static async Task<Guid> WriteAsync(ShopDbContext db, Actor actor, Guid saleId, string kind, ReceiptFacts facts, CancellationToken cancellationToken)
    {
        var year = ShopTime.Of(facts.Shop).Day(facts.At).Year;
        var number = 1 + (await db.SaleReceipts.Where(row => row.Year == year).MaxAsync(row => (int?)row.Number, cancellationToken) ?? 0);
        var receipt = (facts with { Number = ReceiptFacts.NumberOf(year, number) }).Write();
        var paper = Paper.Of(Guid.CreateVersion7(facts.At), actor, PaperKinds.Receipt, fittingId: null, saleId, facts.At, receipt.FormatVersion, JsonSerializer.Serialize(receipt));
        db.Papers.Add(paper);
        db.SaleReceipts.Add(SaleReceipt.Of(Guid.CreateVersion7(facts.At), actor.ShopId, saleId, kind, year, number, facts.At, paper.Id));
        return paper.Id;
    }

    /// <summary>Writes the receipt of what happened to a sale later, in the currency of the sale.</summary>
    /// <returns>The key of its paper.</returns>
    public static async Task<Guid> WriteAfterAsync(ShopDbContext db, Actor actor, Sale sale, AfterSale after, CancellationToken cancellationToken) =>
        await WriteAsync(
            db,
            actor,
            sale.Id,
            ReceiptKinds.Of(after.Kind),
            new ReceiptFacts
            {
                Shop = after.Shop,
                Dancer = await db.Dancers.AsNoTracking().SingleOrDefaultAsync(row => row.Id == sale.DancerId, cancellationToken),
                ServedBy = actor.Name,
                At = after.At,
                Kind = after.Kind,
                Number = "",
                OfNumber = after.OfNumber,
                Reason = after.Reason.Trim(),
                Currency = sale.Currency,
                PricesIncludeTax = SoldLine.PricesIncludedTax(after.Sold),
                Goods = after.Goods,
            },
            cancellationToken);

    /// <summary>The number on the receipt of a void or return that happened at a moment; null where it has none.</summary>
    public static async Task<string?> NumberAtAsync(ShopDbContext db, Guid saleId, string kind, DateTimeOffset at, CancellationToken cancellationToken) =>
        await db.SaleReceipts.AsNoTracking().Where(row => row.SaleId == saleId && row.Kind == kind && row.MadeAt == at)
            .OrderByDescending(row => row.Number).FirstOrDefaultAsync(cancellationToken) is { } receipt
            ? ReceiptFacts.NumberOf(receipt.Year, receipt.Number)
            : null;

    /// <summary>The number on the receipt of a sale; null where it was made before there were any.</summary>
    public static async Task<string?> NumberOfAsync(ShopDbContext db, Guid saleId, CancellationToken cancellationToken) =>
        await db.SaleReceipts.AsNoTracking().SingleOrDefaultAsync(row => row.SaleId == saleId && row.Kind == ReceiptKinds.Sale, cancellationToken) is { } receipt
            ? ReceiptFacts.NumberOf(receipt.Year, receipt.Number)
            : null;
}

/// <summary>What happened to a sale after it was made.</summary>
/// <param name="Shop">In which shop.</param>
/// <param name="Kind">A void, a return, or an undo.</param>
/// <param name="At">When.</param>
/// <param name="OfNumber">Number of the receipt that it is about.</param>
/// <param name="Reason">Why; may be empty.</param>
/// <param name="Sold">The lines of the sale.</param>
/// <param name="Goods">The goods it is about.</param>
internal sealed record AfterSale(Shop Shop, ReceiptKind Kind, DateTimeOffset At, string? OfNumber, string Reason, IReadOnlyList<SoldLine> Sold, IReadOnlyList<ReceiptGood> Goods);
