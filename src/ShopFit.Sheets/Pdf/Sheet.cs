using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace ShopFit.Sheets.Pdf;

/// <summary>A page being drawn: text goes into tagged elements, decoration into artifacts. Points, y down from the top.</summary>
internal sealed class Sheet(Typesetter type, XGraphics graphics, StructureBuilder tags, double height)
{
    public Typesetter Type => type;

    public XGraphics Graphics => graphics;

    public void Tagged(PdfBlockLevelElementTag tag, Action draw)
    {
        tags.BeginElement(tag);
        draw();
        tags.End();
    }

    /// <summary>A figure with words for those who do not see it; text drawn within belongs to it.</summary>
    public void Figure(string insteadOfSeeing, XRect box, Action draw)
    {
        // The box of a figure is counted from the bottom of the page (ISO 32000-1, 14.8.5.4.3).
        tags.BeginElement(PdfIllustrationElementTag.Figure, insteadOfSeeing, new XRect(box.X, height - box.Bottom, box.Width, box.Height));
        draw();
        tags.End();
    }

    public void Decoration(Action draw)
    {
        tags.BeginArtifact();
        draw();
        tags.End();
    }

    /// <summary>Draws lines; words of one weight are drawn together, and a space ends each line so that read aloud the words stay apart.</summary>
    public void Lines(IReadOnlyList<TextLine> lines, double size, double x, double y, double leading, TextAlign align = TextAlign.Left, double width = 0, XBrush? ink = null)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            var start = align switch
            {
                TextAlign.Right => x + width - line.Width,
                TextAlign.Middle => x + (width - line.Width) / 2,
                _ => x,
            };
            var baseline = y + i * leading + Baseline(size, leading);
            for (var first = 0; first < line.Words.Count;)
            {
                var next = first + 1;
                while (next < line.Words.Count && line.Words[next].Bold == line.Words[first].Bold)
                {
                    next++;
                }

                var last = next == line.Words.Count && i == lines.Count - 1;
                var text = string.Join(' ', line.Words.Skip(first).Take(next - first).Select(word => word.Text)) + (last ? "" : " ");
                graphics.DrawString(text, type.Font(size, line.Words[first].Bold), ink ?? XBrushes.Black, start + line.Words[first].At, baseline);
                first = next;
            }
        }
    }

    // Inter: ascent 1984, descent 494, of 2048 units (its hhea table).
    private static double Baseline(double size, double leading) => (leading - size * (1984 + 494) / 2048) / 2 + size * 1984 / 2048;
}

internal enum TextAlign
{
    Left,
    Right,
    Middle,
}
