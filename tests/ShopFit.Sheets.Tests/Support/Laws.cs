namespace ShopFit.Sheets.Support;

/// <summary>What holds of every sheet, whatever it says.</summary>
internal static class Laws
{
    // Points. The margins a sheet promises: 12 mm at the sides, 9 mm at top and bottom.
    private const double Millimetre = 72 / 25.4;
    private const double SideMargin = 12 * Millimetre;
    private const double EndMargin = 9 * Millimetre;
    private const double Tolerance = 0.6;

    // The foot of a j, a wide accent on a narrow letter and two accents on a capital hang out of their line: a millimetre in the largest type.
    private const double Overhang = Millimetre;

    // Plain-language advice for printed health information asks for 12 pt or more; captions inside drawings may be smaller.
    private const double ReadingSize = 12;
    private const double CaptionSize = 10.5;

    public static void Hold(DrawnSheet sheet)
    {
        foreach (var page in sheet.Pages)
        {
            NothingLeavesTheMargins(page);
            NothingOverlaps(page);
            EverythingCanBeRead(page);
        }
    }

    private static void NothingLeavesTheMargins(DrawnPage page)
    {
        var letters = page.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)).Select(letter => Box.Of(letter.BoundingBox));
        Assert.All(letters.Concat(page.Paths), box =>
        {
            Assert.InRange(box.Left, SideMargin - Overhang, page.Width - SideMargin + Overhang);
            Assert.InRange(box.Right, SideMargin - Overhang, page.Width - SideMargin + Overhang);
            Assert.InRange(box.Bottom, EndMargin - Tolerance, page.Height - EndMargin + Tolerance);
            Assert.InRange(box.Top, EndMargin - Tolerance, page.Height - EndMargin + Overhang);
        });
    }

    private static void NothingOverlaps(DrawnPage page)
    {
        var lines = page.Blocks.SelectMany((block, i) => block.Lines().Select(line => (Block: i, Line: line))).OrderByDescending(line => line.Line.Top).ToList();
        for (var i = 0; i < lines.Count; i++)
        {
            for (var j = i + 1; j < lines.Count && lines[j].Line.Top > lines[i].Line.Bottom; j++)
            {
                Assert.False(
                    lines[i].Block != lines[j].Block && lines[i].Line.Overlaps(lines[j].Line, Tolerance),
                    $"\"{page.Blocks[lines[i].Block].Text}\" lies over \"{page.Blocks[lines[j].Block].Text}\".");
            }
        }
    }

    private static void EverythingCanBeRead(DrawnPage page)
    {
        // By place, for the reader joins a letter and the accents over it on the page but not in the block.
        var tagged = page.Blocks.SelectMany(block => block.Letters).Select(letter => letter.StartBaseLine).ToHashSet();
        Assert.All(page.Letters, letter => Assert.Contains(letter.StartBaseLine, tagged));
        Assert.All(page.Blocks, block =>
        {
            // Figures carry captions; labels are the numbers and letters that the figures carry too.
            var least = block.Tag is "Figure" or "Lbl" ? CaptionSize : ReadingSize;
            Assert.All(block.Letters, letter => Assert.True(letter.PointSize >= least - 0.01, $"\"{block.Text}\" is set in {letter.PointSize} pt."));
        });
    }
}
