using PdfSharp.Drawing;
using ShopFit.Sheets.Pdf;

namespace ShopFit.Sheets.TakeHome;

/// <summary>The words under the two ends and the middle of the strips above it.</summary>
internal sealed class StripEnds((string Low, string Middle, string High) ends, string inWords) : Block
{
    private const double Size = Paragraph.CaptionSize;
    private const double At = StripRow.NameWidth + 6;

    public override double Height(Typesetter type, double width) => Paragraph.Leading(Size);

    public override void Draw(Sheet sheet, double x, double y, double width) =>
        sheet.Figure(inWords, new XRect(x + At, y, StripRow.StripWidth, Paragraph.Leading(Size)), () =>
        {
            Word(sheet, ends.Low, x + At, y, TextAlign.Left);
            Word(sheet, ends.Middle, x + At, y, TextAlign.Middle);
            Word(sheet, ends.High, x + At, y, TextAlign.Right);
        });

    private static void Word(Sheet sheet, string word, double x, double y, TextAlign align) =>
        sheet.Lines(sheet.Type.Break([word], Size, StripRow.StripWidth), Size, x, y, Paragraph.Leading(Size), align, StripRow.StripWidth);
}
