using System.Text;

namespace ShopFit.Sheets.Pdf;

public class FontCoverageTests
{
    // The blocks that Inter is made for, by its own description: Latin with its extensions, Cyrillic, Greek; from memory.
    [Theory]
    [InlineData("a")]
    [InlineData("½")]
    [InlineData("Ł")]
    [InlineData("ặ")]
    [InlineData("ж")]
    [InlineData("Ω")]
    [InlineData("−")]
    [InlineData("’")]
    [InlineData("□")]
    public void It_knows_what_both_faces_can_draw(string character) =>
        Assert.True(InterFonts.Coverage.Covers(character.EnumerateRunes().First()));

    [Theory]
    [InlineData("🩰")]
    [InlineData("ש")]
    [InlineData("中")]
    [InlineData("\uE123")]
    public void It_knows_what_they_cannot(string character) =>
        Assert.False(InterFonts.Coverage.Covers(character.EnumerateRunes().First()));
}
