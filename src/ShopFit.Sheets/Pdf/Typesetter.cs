using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace ShopFit.Sheets.Pdf;

/// <summary>The fonts of one document and how wide words are in them. Used by one thread.</summary>
internal sealed class Typesetter : IDisposable
{
    private readonly XGraphics _ruler = XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards);
    private readonly Dictionary<(double Size, bool Bold), XFont> _fonts = [];
    private readonly Dictionary<(string Text, double Size, bool Bold), double> _widths = [];

    public XFont Font(double size, bool bold)
    {
        if (!_fonts.TryGetValue((size, bold), out var font))
        {
            font = new XFont(InterFonts.Family, size, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular, new XPdfFontOptions(PdfFontEncoding.Unicode));
            _fonts.Add((size, bold), font);
        }

        return font;
    }

    /// <summary>Width in points.</summary>
    public double Width(string text, double size, bool bold)
    {
        if (!_widths.TryGetValue((text, size, bold), out var width))
        {
            width = _ruler.MeasureString(text, Font(size, bold)).Width;
            _widths.Add((text, size, bold), width);
        }

        return width;
    }

    /// <summary>Breaks words over lines that are no wider than <paramref name="width"/>; a word wider than that is broken inside.</summary>
    public IReadOnlyList<TextLine> Break(IEnumerable<TextRun> runs, double size, double width)
    {
        var space = Width("a a", size, bold: false) - Width("aa", size, bold: false);
        var lines = new List<TextLine>();
        var line = new List<TextWord>();
        var end = 0.0;

        void Close()
        {
            if (line.Count > 0)
            {
                lines.Add(new TextLine([.. line], end));
            }

            line = [];
            end = 0;
        }

        foreach (var run in runs)
        {
            foreach (var whole in PlainText.Of(run.Text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                foreach (var word in Pieces(whole, size, run.Bold, width))
                {
                    var wide = Width(word, size, run.Bold);
                    if (line.Count > 0 && end + space + wide > width)
                    {
                        Close();
                    }

                    var at = line.Count == 0 ? 0 : end + space;
                    line.Add(new TextWord(word, run.Bold, at));
                    end = at + wide;
                }
            }
        }

        Close();
        return lines;
    }

    public void Dispose() => _ruler.Dispose();

    // A letter stays with the accents over it.
    private IEnumerable<string> Pieces(string word, double size, bool bold, double width)
    {
        while (Width(word, size, bold) > width && StringInfo.ParseCombiningCharacters(word) is { Length: > 1 } starts)
        {
            int low = 1, high = starts.Length - 1;
            while (low < high)
            {
                var middle = (low + high + 1) / 2;
                (low, high) = Width(word[..starts[middle]], size, bold) <= width ? (middle, high) : (low, middle - 1);
            }

            yield return word[..starts[low]];
            word = word[starts[low]..];
        }

        yield return word;
    }
}

/// <summary>Words in one weight.</summary>
internal readonly record struct TextRun(string Text, bool Bold = false)
{
    public static implicit operator TextRun(string text) => new(text);
}

/// <summary>A word, its weight and how far from the start of its line it stands, in points.</summary>
internal readonly record struct TextWord(string Text, bool Bold, double At);

/// <summary>A line of words and how wide it is, in points.</summary>
internal sealed record TextLine(IReadOnlyList<TextWord> Words, double Width);
