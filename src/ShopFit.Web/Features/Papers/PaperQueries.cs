using System.Globalization;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ShopFit.Sheets.Receipts;
using ShopFit.Sheets.TakeHome;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Papers;

/// <summary>Papers drawn again from the facts that were kept.</summary>
public sealed class PaperQueries(ShopContexts contexts)
{
    /// <summary>A paper as PDF; null where the shop of whoever asks has none under that key.</summary>
    public async Task<DrawnPaper?> DrawAsync(Guid paperId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var paper = await db.Papers.Where(row => row.Id == paperId).Select(row => new { row.Kind, row.FactsJson }).SingleOrDefaultAsync(cancellationToken);
        return paper?.Kind switch
        {
            PaperKinds.TakeHomeSheet => DrawSheet(paper.FactsJson),
            PaperKinds.Receipt => DrawReceipt(paper.FactsJson),
            _ => null,
        };
    }

    private static DrawnPaper DrawSheet(string facts)
    {
        var sheet = JsonSerializer.Deserialize<TakeHomeSheet>(facts)!;
        return new DrawnPaper("take-home-sheet.pdf", TakeHomeSheetPdf.Draw(sheet, CultureInfo.GetCultureInfo(sheet.Language)));
    }

    private static DrawnPaper DrawReceipt(string facts)
    {
        var receipt = JsonSerializer.Deserialize<Receipt>(facts)!;
        return new DrawnPaper($"receipt-{receipt.Number}.pdf", ReceiptPdf.Draw(receipt, CultureInfo.GetCultureInfo(receipt.Language)));
    }
}

/// <summary>A paper that was drawn.</summary>
/// <param name="FileName">What a saved copy of it is called.</param>
/// <param name="Pdf">Its bytes.</param>
public sealed record DrawnPaper(string FileName, byte[] Pdf);
