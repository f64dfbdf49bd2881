using ShopFit.Sheets.Support;

namespace ShopFit.Sheets.TakeHome;

public class SheetReadingTests
{
    // Advice for printed health information: at most US grade 6 (American Medical Association; the National Institutes of Health say 6 to 8).
    private const double HighestGrade = 6;

    public static TheoryData<string> Everything => [.. Sample.Variants().Keys];

    [Theory]
    [MemberData(nameof(Everything))]
    public void A_child_of_eleven_can_read_every_sentence_of_it(string variant)
    {
        var sentences = DrawnSheet.Of(Sample.Variants()[variant]).Pages
            .SelectMany(page => page.Blocks)
            .Where(block => block.Tag is "P" or "LBody")
            .Select(block => block.Text.Trim())
            .Where(text => text.EndsWith('.'))
            .ToList();

        Assert.True(sentences.Count >= 5);
        Assert.InRange(ReadingGrade.Of(sentences), 0, HighestGrade);
    }
}
