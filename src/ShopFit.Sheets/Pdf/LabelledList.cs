using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace ShopFit.Sheets.Pdf;

/// <summary>A list whose items hang from a bullet or from a letter or number in a disc, as the drawings carry them.</summary>
internal sealed class LabelledList(IReadOnlyList<(string Label, IReadOnlyList<TextRun> Runs)> items, double gap = 2) : Block
{
    public const string Bullet = "•";

    /// <summary>Across a disc, points.</summary>
    public const double Disc = 14;

    private const double Size = Paragraph.ReadingSize;

    private double Indent => items.Any(item => item.Label != Bullet) ? Disc + 4 : 11;

    public static void DrawDisc(Sheet sheet, string label, double centreX, double centreY, double across = Disc)
    {
        const double size = Paragraph.CaptionSize;
        var wide = Math.Max(across, sheet.Type.Width(label, size, bold: true) + 5);
        sheet.Graphics.DrawRoundedRectangle(XBrushes.Black, new XRect(centreX - wide / 2, centreY - across / 2, wide, across), new XSize(across, across));
        var line = sheet.Type.Break([new TextRun(label, Bold: true)], size, 200);
        sheet.Lines(line, size, centreX - wide / 2, centreY - Paragraph.Leading(size) / 2, Paragraph.Leading(size), TextAlign.Middle, wide, XBrushes.White);
    }

    public override double Height(Typesetter type, double width) =>
        items.Sum(item => Lines(type, item.Runs, width).Count * Paragraph.Leading(Size)) + gap * (items.Count - 1);

    public override void Draw(Sheet sheet, double x, double y, double width) =>
        sheet.Tagged(PdfBlockLevelElementTag.List, () =>
        {
            foreach (var (label, runs) in items)
            {
                var lines = Lines(sheet.Type, runs, width);
                sheet.Tagged(PdfBlockLevelElementTag.ListItem, () =>
                {
                    sheet.Tagged(PdfBlockLevelElementTag.Label, () => DrawLabel(sheet, label, x, y));
                    sheet.Tagged(PdfBlockLevelElementTag.ListBody, () => sheet.Lines(lines, Size, x + Indent, y, Paragraph.Leading(Size)));
                });
                y += lines.Count * Paragraph.Leading(Size) + gap;
            }
        });

    public override (Block? Fits, Block? Left) Split(Typesetter type, double width, double height)
    {
        var fitting = 0;
        for (; fitting < items.Count; fitting++)
        {
            height -= Lines(type, items[fitting].Runs, width).Count * Paragraph.Leading(Size) + (fitting == 0 ? 0 : gap);
            if (height < -1e-9)
            {
                break;
            }
        }

        return fitting == items.Count ? (this, null)
            : fitting == 0 ? SplitFirst(type, width, height)
            : (new LabelledList([.. items.Take(fitting)], gap), new LabelledList([.. items.Skip(fitting)], gap));
    }

    // An item longer than a page breaks between its lines; its label stays with the first.
    private (Block? Fits, Block? Left) SplitFirst(Typesetter type, double width, double shortOf)
    {
        var lines = Lines(type, items[0].Runs, width);
        var fitting = lines.Count - (int)Math.Ceiling(-shortOf / Paragraph.Leading(Size) - 1e-9);
        if (fitting <= 0)
        {
            return (null, this);
        }

        static IReadOnlyList<TextRun> Runs(IEnumerable<TextLine> part) => [.. part.SelectMany(line => line.Words).Select(word => new TextRun(word.Text, word.Bold))];
        return (
            new LabelledList([(items[0].Label, Runs(lines.Take(fitting)))], gap),
            new LabelledList([(items[0].Label, Runs(lines.Skip(fitting))), .. items.Skip(1)], gap));
    }

    private static void DrawLabel(Sheet sheet, string label, double x, double y)
    {
        if (label == Bullet)
        {
            sheet.Lines(sheet.Type.Break([label], Size, 20), Size, x, y, Paragraph.Leading(Size));
        }
        else
        {
            DrawDisc(sheet, label, x + Disc / 2, y + Paragraph.Leading(Size) / 2);
        }
    }

    private IReadOnlyList<TextLine> Lines(Typesetter type, IReadOnlyList<TextRun> runs, double width) => type.Break(runs, Size, width - Indent);
}
