using PdfSharp.UniversalAccessibility;

namespace ShopFit.Sheets.Pdf;

/// <summary>A paragraph or, with a level, a heading.</summary>
internal sealed class Paragraph(IReadOnlyList<TextRun> runs, double size = Paragraph.ReadingSize, TextAlign align = TextAlign.Left, int headingLevel = 0) : Block
{
    /// <summary>The least size of anything to be read, in points.</summary>
    public const double ReadingSize = 12;

    /// <summary>The least size of a caption inside a drawing, in points.</summary>
    public const double CaptionSize = 10.5;

    private const double LineSpacing = 1.2;

    public Paragraph(string text, bool bold = false, double size = ReadingSize, TextAlign align = TextAlign.Left)
        : this([new TextRun(text, bold)], size, align)
    {
    }

    public static double Leading(double size) => size * LineSpacing;

    public static Paragraph Heading(string text, int level, double size) => new([new TextRun(text, Bold: true)], size, TextAlign.Left, level);

    public override bool LeadsOn => headingLevel > 0;

    public override double Height(Typesetter type, double width) => Lines(type, width).Count * Leading(size);

    public override void Draw(Sheet sheet, double x, double y, double width) =>
        sheet.Tagged(
            headingLevel switch { 0 => PdfBlockLevelElementTag.Paragraph, 1 => PdfBlockLevelElementTag.Heading1, _ => PdfBlockLevelElementTag.Heading2 },
            () => sheet.Lines(Lines(sheet.Type, width), size, x, y, Leading(size), align, width));

    public override (Block? Fits, Block? Left) Split(Typesetter type, double width, double height)
    {
        var lines = Lines(type, width);
        var fitting = (int)Math.Floor(height / Leading(size) + 1e-9);
        return fitting >= lines.Count ? (this, null)
            : fitting == 0 || headingLevel > 0 ? (null, this)
            : (Part(lines.Take(fitting)), Part(lines.Skip(fitting)));
    }

    private Paragraph Part(IEnumerable<TextLine> lines) =>
        new([.. lines.SelectMany(line => line.Words).Select(word => new TextRun(word.Text, word.Bold))], size, align, headingLevel);

    private IReadOnlyList<TextLine> Lines(Typesetter type, double width) => type.Break(runs, size, width);
}
