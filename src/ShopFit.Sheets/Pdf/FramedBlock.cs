using PdfSharp.Drawing;

namespace ShopFit.Sheets.Pdf;

/// <summary>A framed block with a large word before it. It is never broken over two pages.</summary>
internal sealed class FramedBlock(Block inside, double lineWidth, string? word = null) : Block
{
    // Points.
    private const double Corner = 4;
    private const double WordSize = 21;
    private const double Gap = 12;
    private const double AcrossPadding = 11;
    private const double DownPadding = 6;

    public override double Height(Typesetter type, double width) => inside.Height(type, InsideWidth(type, width)) + 2 * DownPadding;

    public override void Draw(Sheet sheet, double x, double y, double width)
    {
        var height = Height(sheet.Type, width);
        var half = lineWidth / 2;
        sheet.Decoration(() => sheet.Graphics.DrawRoundedRectangle(
            new XPen(XColors.Black, lineWidth), new XRect(x + half, y + half, width - lineWidth, height - lineWidth), new XSize(2 * Corner, 2 * Corner)));
        if (word is not null)
        {
            var heading = Paragraph.Heading(word, 2, WordSize);
            heading.Draw(sheet, x + AcrossPadding, y + (height - heading.Height(sheet.Type, width)) / 2, WordWidth(sheet.Type));
        }

        inside.Draw(sheet, x + width - AcrossPadding - InsideWidth(sheet.Type, width), y + DownPadding, InsideWidth(sheet.Type, width));
    }

    private double InsideWidth(Typesetter type, double width) => width - 2 * AcrossPadding - (word is null ? 0 : WordWidth(type) + Gap);

    private double WordWidth(Typesetter type) => type.Width(word!, WordSize, bold: true) + 1;
}
