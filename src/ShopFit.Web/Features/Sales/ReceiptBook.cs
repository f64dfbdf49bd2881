using System.Text.Json;
using Microsoft.EntityFrameworkCore;
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

    /// <summary>The number on the receipt of a sale; null where it was made before there were any.</summary>
    public static async Task<string?> NumberOfAsync(ShopDbContext db, Guid saleId, CancellationToken cancellationToken) =>
        await db.SaleReceipts.AsNoTracking().SingleOrDefaultAsync(row => row.SaleId == saleId && row.Kind == ReceiptKinds.Sale, cancellationToken) is { } receipt
            ? ReceiptFacts.NumberOf(receipt.Year, receipt.Number)
            : null;
}
