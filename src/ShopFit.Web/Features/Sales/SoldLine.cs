using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Papers;

namespace ShopFit.Web.Features.Sales;

/// <summary>A line of a sale with the category of what was sold.</summary>
internal sealed record SoldLine(SaleLine Line, string Category)
{
    /// <summary>The lines of a sale as they stand, in the order of its receipt.</summary>
    public static async Task<IReadOnlyList<SoldLine>> OfAsync(ShopDbContext db, Guid saleId, CancellationToken cancellationToken) =>
        [.. (await (from line in db.SaleLines.AsNoTracking() join item in db.Items on line.ItemId equals item.Id where line.SaleId == saleId orderby line.Id select new { line, item.Category })
            .ToListAsync(cancellationToken)).Select(row => new SoldLine(row.line, row.Category))];

    /// <summary>Whether the prices of the day had the tax in them: the lines themselves tell, whatever the shop does since.</summary>
    public static bool PricesIncludedTax(IReadOnlyList<SoldLine> lines) =>
        lines.All(sold => sold.Line.TotalMinor == (sold.Line.Quantity * sold.Line.UnitPriceMinor) - sold.Line.DiscountMinor);

    /// <summary>All that was sold, for a receipt.</summary>
    public static IReadOnlyList<ReceiptGood> Goods(IReadOnlyList<SoldLine> lines) =>
        [.. lines.Select(sold => sold.Good(sold.Line.Quantity, sold.Line.DiscountMinor, new LineAmount(sold.Line.TaxMinor, sold.Line.TotalMinor)))];

    /// <summary>So many pieces of it, for a receipt.</summary>
    public ReceiptGood Good(int quantity, long discountMinor, LineAmount amount) =>
        new(Line.Text, Category, quantity, Line.UnitPriceMinor, discountMinor, Line.TaxRateBasisPoints, amount);
}
