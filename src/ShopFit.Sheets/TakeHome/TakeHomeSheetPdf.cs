using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using ShopFit.Sheets.Pdf;
using ShopFit.Sheets.Words;

namespace ShopFit.Sheets.TakeHome;

/// <summary>Draws a take-home sheet.</summary>
public static class TakeHomeSheetPdf
{
    /// <summary>The sheet as a tagged PDF of one page; a very long text runs on to a second. May be called from many threads.</summary>
    /// <param name="sheet">What it says.</param>
    /// <param name="culture">Language of the fixed words, and how dates and numbers are written.</param>
    /// <exception cref="NotSupportedException">The sheet was written in a later format than this.</exception>
    public static byte[] Draw(TakeHomeSheet sheet, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(culture);
        if (sheet.FormatVersion > TakeHomeSheet.CurrentFormatVersion)
        {
            throw new NotSupportedException(
                $"This sheet was written in format {sheet.FormatVersion}; formats up to {TakeHomeSheet.CurrentFormatVersion} can be drawn.");
        }

        InterFonts.Install();
        var text = new SheetText(sheet, new SheetWords(culture));
        var paper = sheet.Paper == PaperSize.Letter ? PaperShape.Letter : PaperShape.A4;
        using var type = new Typesetter();
        using var document = new PdfDocument();
        document.Info.Title = PlainText.Of(text.DocumentTitle);
        document.Info.Author = PlainText.Of(sheet.Shop.Name);
        document.Info.Subject = text.Words["Subject"];
        document.ViewerPreferences.DisplayDocTitle = true;

        // Tagging must be on before the first page is made.
        var tagging = UAManager.ForDocument(document);
        tagging.SetDocumentLanguage(sheet.Language);
        foreach (var blocks in SheetPlan.Of(sheet, text, type, paper))
        {
            var page = document.AddPage();
            page.Width = XUnit.FromPoint(paper.Width);
            page.Height = XUnit.FromPoint(paper.Height);
            using var graphics = XGraphics.FromPdfPage(page);
            var drawn = new Sheet(type, graphics, tagging.StructureBuilder, paper.Height);
            foreach (var (block, x, y, width) in blocks)
            {
                block.Draw(drawn, x, y, width);
            }
        }

        return FinishedPdf.Of(document);
    }
}
