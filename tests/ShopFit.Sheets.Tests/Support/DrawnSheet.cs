using System.Globalization;
using System.Text;
using ShopFit.Sheets.Receipts;
using ShopFit.Sheets.TakeHome;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace ShopFit.Sheets.Support;

/// <summary>A sheet drawn and read back by another library: its pages, and on each the tagged blocks with their letters.</summary>
internal sealed class DrawnSheet
{
    private DrawnSheet(byte[] bytes)
    {
        Bytes = bytes;
        using var document = PdfDocument.Open(bytes);
        Pages = [.. document.GetPages().Select(page => new DrawnPage(page))];
        Title = document.Information.Title ?? "";
    }

    public byte[] Bytes { get; }

    public IReadOnlyList<DrawnPage> Pages { get; }

    public string Title { get; }

    /// <summary>All that is written, without white space, so that a line break inside a long word does not matter.</summary>
    public string Text => string.Concat(Pages.Select(page => page.Text));

    public static DrawnSheet Of(TakeHomeSheet sheet, string culture = "en-GB") =>
        new(TakeHomeSheetPdf.Draw(sheet, CultureInfo.GetCultureInfo(culture)));

    public static DrawnSheet Of(Receipt receipt, string culture = "") =>
        new(ReceiptPdf.Draw(receipt, CultureInfo.GetCultureInfo(culture.Length > 0 ? culture : receipt.Language)));

    public static string Squeezed(string text) => string.Concat(text.Normalize(NormalizationForm.FormC).Where(c => !char.IsWhiteSpace(c)));

    public void Says(string fact) => Assert.Contains(Squeezed(fact), Text, StringComparison.Ordinal);

    public void DoesNotSay(string words) => Assert.DoesNotContain(Squeezed(words), Text, StringComparison.Ordinal);
}

/// <summary>One page as read back. Points from the bottom left.</summary>
internal sealed class DrawnPage
{
    public DrawnPage(Page page)
    {
        Width = page.Width;
        Height = page.Height;
        Blocks = [.. page.GetMarkedContents().SelectMany(Leaves).Where(block => block.Letters.Count > 0)];
        Letters = page.Letters;
        Paths = [.. page.Paths.Select(path => path.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>().Select(Box.Of)];
    }

    public double Width { get; }

    public double Height { get; }

    public IReadOnlyList<DrawnBlock> Blocks { get; }

    public IReadOnlyList<Letter> Letters { get; }

    public IReadOnlyList<Box> Paths { get; }

    public string Text => DrawnSheet.Squeezed(string.Concat(Letters.Select(letter => letter.Value)));

    private static IEnumerable<DrawnBlock> Leaves(MarkedContentElement element) =>
        [new DrawnBlock(element.Tag ?? "", element.Letters), .. element.Children.SelectMany(Leaves)];
}

/// <summary>A tagged block: its tag and its letters.</summary>
internal sealed record DrawnBlock(string Tag, IReadOnlyList<Letter> Letters)
{
    public string Text => string.Concat(Letters.Select(letter => letter.Value));

    /// <summary>The box of each line of the block, from the boxes of its letters.</summary>
    public IEnumerable<Box> Lines() => Letters
        .Where(letter => !string.IsNullOrWhiteSpace(letter.Value))
        .GroupBy(letter => Math.Round(letter.StartBaseLine.Y, 1))
        .Select(line => line.Select(letter => Box.Of(letter.BoundingBox)).Aggregate((one, other) => one.With(other)));
}

/// <summary>A box in points from the bottom left.</summary>
internal readonly record struct Box(double Left, double Bottom, double Right, double Top)
{
    public static Box Of(UglyToad.PdfPig.Core.PdfRectangle box) => new(
        Math.Min(box.Left, box.Right), Math.Min(box.Bottom, box.Top), Math.Max(box.Left, box.Right), Math.Max(box.Bottom, box.Top));

    public Box With(Box other) => new(Math.Min(Left, other.Left), Math.Min(Bottom, other.Bottom), Math.Max(Right, other.Right), Math.Max(Top, other.Top));

    public bool Overlaps(Box other, double by) =>
        Math.Min(Right, other.Right) - Math.Max(Left, other.Left) > by && Math.Min(Top, other.Top) - Math.Max(Bottom, other.Bottom) > by;
}
