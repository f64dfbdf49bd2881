using System.Globalization;
using PdfSharp.Drawing;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Outlines;
using ShopFit.Sheets.Pdf;

namespace ShopFit.Sheets.TakeHome;

/// <summary>Both feet from above in the shoe, at one scale, with each pad where it goes and its number, and a bar to measure by.</summary>
internal sealed class SolesDrawing(TakeHomeSheet sheet, SheetText text, double height) : Block
{
    // Points.
    private const double Between = 10;
    private const double GapBehindPad = 3;
    private const double Caption = Paragraph.CaptionSize;

    private readonly Sole _left = new(sheet.Left, sheet, Side.Left);
    private readonly Sole _right = new(sheet.Right, sheet, Side.Right);

    private static readonly double CaptionLine = Paragraph.Leading(Caption);

    private static readonly XPen FootLine = new(XColors.Black, 1);
    private static readonly XPen Fine = new(XColors.Black, 0.6);
    private static readonly XPen ShoeLine = new(XColor.FromGrayScale(0.25), 1.3) { DashStyle = XDashStyle.Custom, DashPattern = [5, 2.4] };
    private static readonly XBrush PadFill = new XSolidBrush(XColor.FromGrayScale(0.62));
    private static readonly XPen PadEdge = new(XColors.Black, 0.9);
    private static readonly XPen PlatformLine = new(XColor.FromGrayScale(0.25), 3.2);

    /// <summary>The width at which the soles are as high as they may be, points.</summary>
    public double FittingWidth => BothAcross * ScaleByHeight + Between + 2;

    private double BothAcross => _left.Across + _right.Across;

    private double ScaleByHeight => (height - PlatformLine.Width) / Math.Max(_left.Forward, _right.Forward);

    public override double Height(Typesetter type, double width) => height + 3 * CaptionLine + 4;

    public override void Draw(Sheet page, double x, double y, double width)
    {
        var box = new XRect(x, y, width, Height(page.Type, width));
        page.Figure(text.Soles(), box, () => DrawSoles(page, box));
    }

    private void DrawSoles(Sheet page, XRect box)
    {
        var scale = Math.Min(ScaleByHeight, (box.Width - Between - 2) / BothAcross);
        var heels = box.Y + height - 1;
        var middle = box.X + box.Width / 2;
        // Toes up, the inner sides face each other: a left foot reaches from its axis to the right by its inner side.
        var from = middle - (BothAcross * scale + Between) / 2;
        DrawSole(page, _left, from + (_left.Across - _left.Inner) * scale, heels, scale);
        DrawSole(page, _right, from + (_left.Across + _right.Inner) * scale + Between, heels, scale);

        var at = box.Y + height + 3;
        var half = box.Width / 2;
        Label(page, text.Words["DancersLeft"], box.X, at, half - 2);
        Label(page, text.Words["DancersRight"], box.X + half + 2, at, half - 2);
        Label(page, text.Length(sheet.Left.Length), box.X, at + CaptionLine, half - 2);
        Label(page, text.Length(sheet.Right.Length), box.X + half + 2, at + CaptionLine, half - 2);
        DrawBar(page, middle, at + 2 * CaptionLine, scale);
    }

    private static void Label(Sheet page, string label, double x, double y, double width) =>
        page.Lines(page.Type.Break([label], Caption, width), Caption, x, y, CaptionLine, TextAlign.Middle, width);

    private void DrawBar(Sheet page, double middle, double y, double scale)
    {
        var bar = text.BarLength * scale;
        var word = page.Type.Width(text.Bar, Caption, bold: false);
        var from = middle - (bar + 5 + word) / 2;
        var level = y + CaptionLine / 2;
        page.Graphics.DrawLine(FootLine, from, level, from + bar, level);
        page.Graphics.DrawLine(FootLine, from, level - 3, from, level + 3);
        page.Graphics.DrawLine(FootLine, from + bar, level - 3, from + bar, level + 3);
        page.Lines(page.Type.Break([text.Bar], Caption, 100), Caption, from + bar + 5, y, CaptionLine);
    }

    private static void DrawSole(Sheet page, Sole sole, double axis, double heel, double scale)
    {
        var origin = new PagePlacement(sole.Side);
        XPoint Place(OutlinePoint point)
        {
            var placed = origin.Place(point);
            return new(axis + placed.X * scale, heel + placed.Y * scale);
        }

        var g = page.Graphics;
        g.DrawPath(FootLine, Path(sole.Foot.Curves, Place, closed: true));
        foreach (var cleft in sole.Clefts)
        {
            g.DrawPath(Fine, Path(cleft.Curves, Place, closed: false));
        }

        foreach (var shape in sole.Pads.SelectMany(pad => pad.Shapes))
        {
            g.DrawPath(PadEdge, PadFill, Path(shape.Curves, Place, closed: true));
        }

        if (sole.Shoe is { } shoe)
        {
            g.DrawPath(ShoeLine, Path(shoe.Curves, Place, closed: true));
        }

        if (sole.Platform is { } platform)
        {
            g.DrawPath(PlatformLine, Path(platform.Curves, Place, closed: false));
        }

        DrawNumbers(page, sole, Place, scale);
    }

    /// <summary>Each number stands behind its pad, towards the middle of the foot, and a line leads to every part of the pad.</summary>
    private static void DrawNumbers(Sheet page, Sole sole, Func<OutlinePoint, XPoint> place, double scale)
    {
        var clear = (LabelledList.Disc + 3) / scale;
        var lowest = double.PositiveInfinity;
        foreach (var (number, shapes) in sole.Pads.OrderByDescending(pad => pad.Shapes.Max(Forward)))
        {
            var back = shapes.Min(Forward);
            var atHeel = back < sole.Forward / 4;
            var stands = shapes.Count > 1 ? shapes.Average(Forward)
                : atHeel ? shapes.Max(Forward) + clear
                : Forward(shapes[0]) - HalfLength(shapes[0]) - clear / 2 - GapBehindPad / scale;
            // Two numbers on a foot keep clear of each other.
            var forward = atHeel ? stands : Math.Min(stands, lowest - clear);
            lowest = forward;
            var across = shapes.Count > 1 ? shapes.Average(Across) : Across(shapes[0]);
            var at = place(new(across, forward));
            foreach (var shape in shapes)
            {
                page.Graphics.DrawLine(Fine, at, place(new(Across(shape), Forward(shape))));
            }

            LabelledList.DrawDisc(page, number.ToString(CultureInfo.InvariantCulture), at.X, at.Y);
        }
    }

    private static double Forward(Outline shape) => Middle(shape.Curves.Select(curve => curve.To.Forward));

    private static double Across(Outline shape) => Middle(shape.Curves.Select(curve => curve.To.Across));

    private static double HalfLength(Outline shape) => Forward(shape) - shape.Curves.Min(curve => curve.To.Forward);

    private static double Middle(IEnumerable<double> values)
    {
        var all = values.ToList();
        return (all.Min() + all.Max()) / 2;
    }

    private static XGraphicsPath Path(IReadOnlyList<OutlineCurve> curves, Func<OutlinePoint, XPoint> place, bool closed)
    {
        var path = new XGraphicsPath();
        foreach (var curve in curves)
        {
            path.AddBezier(place(curve.From), place(curve.FirstHandle), place(curve.SecondHandle), place(curve.To));
        }

        if (closed)
        {
            path.CloseFigure();
        }

        return path;
    }
}
