using PdfSharp.Drawing;

namespace ShopFit.Sheets.Pdf;

/// <summary>A line across.</summary>
internal sealed class Rule(double thickness, double grey = 0) : Block
{
    public override double Height(Typesetter type, double width) => thickness;

    public override void Draw(Sheet sheet, double x, double y, double width) => sheet.Decoration(() =>
        sheet.Graphics.DrawLine(new XPen(XColor.FromGrayScale(grey), thickness), x, y + thickness / 2, x + width, y + thickness / 2));
}
