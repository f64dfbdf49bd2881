using PdfSharp.Drawing;
using ShopFit.Sheets.Pdf;

namespace ShopFit.Sheets.TakeHome;

/// <summary>One criterion: its name, the strip with the left foot over it and the right foot under it, and both in words.</summary>
internal sealed class StripRow(SheetText text, SheetCriterion row) : Block
{
    // Points. A strip is drawn with a third of it right, whatever the criterion (see SheetEase.OnStrip).
    public const double NameWidth = 64;
    public const double StripWidth = 104;

    private const double Third = 1 / 3.0;
    private const double Gap = 6;
    private const double Size = Paragraph.ReadingSize;
    private const double Disc = 12.6;
    private const double DiscFromRail = 8.6;
    private const double IdealHeight = 6;
    private const double LeastHeight = 30.6;
    private const double BetweenFeet = 1.8;

    private static readonly XBrush Ideal = new XSolidBrush(XColor.FromGrayScale(0.3));

    public static double TextAt => NameWidth + StripWidth + 2 * Gap;

    public override double Height(Typesetter type, double width)
    {
        var sentences = Sentences();
        var high = sentences.Sum(sentence => type.Break(sentence, Size, width - TextAt).Count * Paragraph.Leading(Size)) + BetweenFeet * (sentences.Count - 1);
        return Math.Max(Math.Max(LeastHeight, high), Name.Height(type, NameWidth));
    }

    public override void Draw(Sheet sheet, double x, double y, double width)
    {
        var height = Height(sheet.Type, width);
        Name.Draw(sheet, x, y + (height - Name.Height(sheet.Type, NameWidth)) / 2, NameWidth);

        var strip = new XRect(x + NameWidth + Gap, y + height / 2 - LeastHeight / 2, StripWidth, LeastHeight);
        sheet.Figure(text.Strip(row), strip, () => DrawStrip(sheet, strip));

        var blocks = Sentences().Select(sentence => new Paragraph(sentence)).ToList();
        var textWidth = width - TextAt;
        var free = height - blocks.Sum(block => block.Height(sheet.Type, textWidth));
        var at = y + (blocks.Count == 1 ? free / 2 : 0);
        foreach (var block in blocks)
        {
            block.Draw(sheet, x + TextAt, at, textWidth);
            at += block.Height(sheet.Type, textWidth) + free;
        }
    }

    private Paragraph Name => new(row.Name, bold: true);

    private List<IReadOnlyList<TextRun>> Sentences()
    {
        TextRun left = new(text.Words["LeftLetter"], Bold: true), right = new(text.Words["RightLetter"], Bold: true);
        return (row.Left, row.Right) switch
        {
            ({ } l, { } r) when l.Sentence == r.Sentence => [[left, right, l.Sentence]],
            ({ } l, { } r) => [[left, l.Sentence], [right, r.Sentence]],
            ({ } l, null) => [[left, l.Sentence]],
            (null, { } r) => [[right, r.Sentence]],
            _ => [],
        };
    }

    private void DrawStrip(Sheet sheet, XRect box)
    {
        var g = sheet.Graphics;
        // The discs of an ease at an end of the strip must not leave the box.
        double from = box.X + Disc / 2, to = box.Right - Disc / 2, rail = box.Y + box.Height / 2;
        double At(double onStrip) => from + Math.Clamp(onStrip, 0, 1) * (to - from);

        var thin = new XPen(XColors.Black, 0.7);
        g.DrawLine(thin, from, rail, to, rail);
        g.DrawLine(thin, from, rail - 5, from, rail + 5);
        g.DrawLine(thin, to, rail - 5, to, rail + 5);

        double idealFrom = At(Third), idealTo = row.OpenAbove ? to : At(2 * Third);
        g.DrawRectangle(Ideal, idealFrom, rail - IdealHeight / 2, idealTo - idealFrom, IdealHeight);
        for (var hatch = from + 2.5; hatch + 4 < idealFrom; hatch += 4)
        {
            g.DrawLine(thin, hatch, rail + 3, hatch + 3.6, rail - 3);
        }

        var dots = 0;
        for (var dot = idealTo + 3; dot < to - 1.5; dot += 3.4)
        {
            g.DrawEllipse(XBrushes.Black, dot - 0.8, rail + (dots++ % 2 == 0 ? -3.2 : 1.6), 1.6, 1.6);
        }

        DrawEase(sheet, row.Left, text.Words["LeftLetter"], rail - DiscFromRail, At);
        DrawEase(sheet, row.Right, text.Words["RightLetter"], rail + DiscFromRail, At);
    }

    private static void DrawEase(Sheet sheet, SheetEase? ease, string letter, double y, Func<double, double> at)
    {
        if (ease is null)
        {
            return;
        }

        var pen = new XPen(XColors.Black, 1.2);
        double low = at(Math.Min(ease.LowOnStrip, ease.HighOnStrip)), high = at(Math.Max(ease.LowOnStrip, ease.HighOnStrip));
        sheet.Graphics.DrawLine(pen, low, y, high, y);
        sheet.Graphics.DrawLine(pen, low, y - 3.2, low, y + 3.2);
        sheet.Graphics.DrawLine(pen, high, y - 3.2, high, y + 3.2);
        LabelledList.DrawDisc(sheet, letter, at(ease.OnStrip), y, Disc);
    }
}
