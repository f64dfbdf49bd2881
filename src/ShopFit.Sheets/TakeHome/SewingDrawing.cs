using PdfSharp.Drawing;
using ShopFit.Sheets.Pdf;

namespace ShopFit.Sheets.TakeHome;

/// <summary>The inner side of a shoe on a foot: where ribbon, elastic and drawstring are and where the knot lies. Our own drawing.</summary>
/// <param name="letters">The letter of each thing that is pointed at: Ribbon, Elastic, Drawstring, Knot.</param>
/// <param name="inWords">The same for those who do not see it.</param>
/// <param name="widest">The widest that it is drawn, points.</param>
internal sealed class SewingDrawing(IReadOnlyDictionary<string, string> letters, string inWords, double widest) : Block
{
    // The drawing is laid out on a grid of this size, toe to the left, and scaled to the width it is given.
    private const double GridWidth = 172;
    private const double GridHeight = 106;

    private static readonly XColor Soft = XColor.FromGrayScale(0.4);

    public override double Height(Typesetter type, double width) => GridHeight * Scale(width);

    public override void Draw(Sheet sheet, double x, double y, double width)
    {
        var scale = Scale(width);
        var box = new XRect(x, y, GridWidth * scale, GridHeight * scale);
        sheet.Figure(inWords, box, () => DrawShoe(sheet, new Grid(box.X, box.Y, scale)));
    }

    private double Scale(double width) => Math.Min(width, widest) / GridWidth;

    private void DrawShoe(Sheet sheet, Grid grid)
    {
        var g = sheet.Graphics;
        XPen line = new(XColors.Black, 1.2) { LineJoin = XLineJoin.Round, LineCap = XLineCap.Round }, fine = new(XColors.Black, 0.7);
        XPen leg = new(Soft, 0.9), dashed = new(XColors.Black, 0.9) { DashStyle = XDashStyle.Custom, DashPattern = [2.4, 2] }, dotted = new(XColors.Black, 0.9) { DashStyle = XDashStyle.Custom, DashPattern = [1.2, 1.6] };

        // The foot and the leg, and the line along which the tendon stands out.
        g.DrawPath(leg, grid.Path((61, 50), (76, 40, 91, 28, 94, 0)));
        g.DrawPath(leg, grid.Path((145, 46), (139, 34, 136, 18, 137, 0)));
        g.DrawPath(leg, grid.Path((137, 42), (131, 32, 128, 18, 129, 0)));
        g.DrawPath(leg, grid.Path((104, 46), (102, 38, 108, 33, 114, 35), (118, 37, 119, 42, 117, 46)));

        // The shoe: platform, vamp, edge, heel, sole with its outsole.
        var shoe = grid.Path(
            (7, 99), (5, 93, 5, 86, 6, 80), (16, 70, 40, 64, 60, 50), (66, 66, 86, 77, 105, 74), (122, 71, 136, 61, 146, 46),
            (150, 58, 155, 80, 151, 92), (150, 97, 147, 100, 142, 100), (130, 101, 118, 97, 104, 94), (86, 91, 70, 95, 52, 99), (38, 102, 18, 102, 7, 99));
        g.DrawPath(line, XBrushes.White, shoe);
        g.DrawPath(new XPen(XColors.Black, 3.4), grid.Path((7, 98.5), (5.4, 93, 5.2, 86, 6, 81)));
        g.DrawPath(fine, grid.Path((16, 97.5), (30, 98.5, 46, 96, 60, 93), (76, 89, 92, 88, 106, 91), (120, 94, 132, 96, 144, 95)));
        foreach (var (fromX, fromY, toX, toY) in new[] { (12.0, 97.0, 13.0, 89.0), (17, 97.4, 20, 90), (22.5, 97.6, 27, 91.5), (28.5, 97.2, 34, 92), (35, 96.6, 41, 92) })
        {
            g.DrawLine(fine, grid.At(fromX, fromY), grid.At(toX, toY));
        }

        DrawDrawstring(g, grid, fine, dotted);
        if (letters.ContainsKey("Elastic"))
        {
            DrawElastic(g, grid, line);
        }

        DrawRibbon(g, grid, line, dashed, letters.ContainsKey("Ribbon"));
        DrawLetters(sheet, grid, fine);
    }

    private static void DrawDrawstring(XGraphics g, Grid grid, XPen fine, XPen dotted)
    {
        g.DrawPath(dotted, grid.Path((61.5, 55.5), (68, 70, 87, 80, 105.5, 77.4), (123, 74.4, 137, 65, 147, 50.5)));
        g.DrawPath(fine, grid.Path((60, 50), (52, 50, 50, 44, 53, 43), (57, 42, 59, 46, 60, 50)));
        g.DrawPath(fine, grid.Path((60, 50), (57, 42, 61, 38, 64, 40), (67, 43, 63, 47, 60, 50)));
    }

    private static void DrawElastic(XGraphics g, Grid grid, XPen line)
    {
        var band = grid.Path((142, 63), (141, 54, 139, 47, 132, 41), (118, 52, 96, 50, 75, 40), (78, 38, 80, 36, 82, 34), (100, 44, 119, 45, 133, 34), (142, 40, 147, 52, 149, 63), (147, 63.4, 144, 63.4, 142, 63));
        g.DrawPath(line, XBrushes.White, band);
    }

    private static void DrawRibbon(XGraphics g, Grid grid, XPen line, XPen dashed, bool showSewing)
    {
        // Round the leg, then down to the side of the shoe.
        g.DrawPath(line, XBrushes.White, grid.Path((91, 13), (105, 20, 122, 21, 137, 15), (136.4, 19, 136.4, 22, 137, 26), (122, 32, 104, 31, 88, 24), (89.6, 20, 90.4, 17, 91, 13)));
        g.DrawPath(line, XBrushes.White, grid.Path((100, 76), (97, 62, 92, 44, 86, 27), (90, 25, 94, 24, 97, 23), (103, 42, 108, 60, 111, 75), (107, 75.6, 104, 76, 100, 76)));
        if (showSewing)
        {
            // Inside the shoe: the sewn end, and the line along which the heel folds in.
            g.DrawPath(dashed, grid.Path((100, 76), (100.6, 80, 101.4, 85, 102, 89), (105.6, 88.6, 109.4, 88, 113, 87.4), (112.4, 83, 111.8, 79, 111, 75)));
            g.DrawPath(dashed, grid.Path((112, 74), (117, 82, 123, 90, 131, 98)));
        }
    }

    private void DrawLetters(Sheet sheet, Grid grid, XPen fine)
    {
        // The knot, a little off the middle of the band, in the hollow between bone and tendon.
        sheet.Graphics.DrawEllipse(XBrushes.Black, new XRect(grid.At(118.5, 21.5), grid.At(126.5, 29)));
        sheet.Graphics.DrawPath(fine, grid.Path((121, 28), (119, 31, 118, 33, 116, 34)));
        sheet.Graphics.DrawPath(fine, grid.Path((124, 28), (124, 31, 125, 33, 126, 35)));
        foreach (var (thing, at, to) in new[]
        {
            ("Ribbon", (X: 79.0, Y: 80.0), (X: 103.0, Y: 83.0)),
            ("Elastic", (164, 72), (147, 60)),
            ("Drawstring", (34, 45), (62, 57)),
            ("Knot", (158, 14), (124, 25)),
        })
        {
            if (letters.TryGetValue(thing, out var letter))
            {
                sheet.Graphics.DrawLine(fine, grid.At(at.X, at.Y), grid.At(to.X, to.Y));
                var disc = grid.At(at.X, at.Y);
                LabelledList.DrawDisc(sheet, letter, disc.X, disc.Y);
            }
        }
    }

    private readonly record struct Grid(double X, double Y, double Scale)
    {
        public XPoint At(double x, double y) => new(X + x * Scale, Y + y * Scale);

        public XGraphicsPath Path((double X, double Y) from, params ReadOnlySpan<(double X1, double Y1, double X2, double Y2, double X, double Y)> curves)
        {
            var path = new XGraphicsPath();
            foreach (var curve in curves)
            {
                path.AddBezier(At(from.X, from.Y), At(curve.X1, curve.Y1), At(curve.X2, curve.Y2), At(curve.X, curve.Y));
                from = (curve.X, curve.Y);
            }

            return path;
        }
    }
}
