using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using ShopFit.Sheets.Pdf;
using ShopFit.Sheets.TakeHome;
using ShopFit.Sheets.Words;

namespace ShopFit.Sheets.Receipts;

/// <summary>Draws a receipt.</summary>
public static class ReceiptPdf
{
    /// <summary>The receipt as a tagged PDF; many lines run on to further pages. May be called from many threads.</summary>
    /// <param name="receipt">What it says.</param>
    /// <param name="culture">Language of the fixed words, and how dates are written.</param>
    /// <exception cref="NotSupportedException">The receipt was written in a later format than this.</exception>
    public static byte[] Draw(Receipt receipt, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(receipt);
        ArgumentNullException.ThrowIfNull(culture);
        if (receipt.FormatVersion > Receipt.CurrentFormatVersion)
        {
            throw new NotSupportedException(
                $"This receipt was written in format {receipt.FormatVersion}; formats up to {Receipt.CurrentFormatVersion} can be drawn.");
        }

        InterFonts.Install();
        var text = new ReceiptText(receipt, new SheetWords(culture));
        var paper = receipt.Paper == PaperSize.Letter ? PaperShape.Letter : PaperShape.A4;
        using var type = new Typesetter();
        using var document = new PdfDocument();
        document.Info.Title = PlainText.Of(text.DocumentTitle);
        document.Info.Author = PlainText.Of(receipt.Shop.Name);
        document.Info.Subject = text.Title;
        document.ViewerPreferences.DisplayDocTitle = true;

        // Tagging must be on before the first page is made.
        var tagging = UAManager.ForDocument(document);
        tagging.SetDocumentLanguage(receipt.Language);
        foreach (var (block, line) in ReceiptPlan.Of(receipt, text, type, paper))
        {
            var page = document.AddPage();
            page.Width = XUnit.FromPoint(paper.Width);
            page.Height = XUnit.FromPoint(paper.Height);
            using var graphics = XGraphics.FromPdfPage(page);
            var drawn = new Sheet(type, graphics, tagging.StructureBuilder, paper.Height);
            block.Draw(drawn, PaperShape.Side, PaperShape.Top, paper.InnerWidth);
            line.Draw(drawn, PaperShape.Side, paper.End - line.Height(type, paper.InnerWidth), paper.InnerWidth);
        }

        return FinishedPdf.Of(document);
    }
}
