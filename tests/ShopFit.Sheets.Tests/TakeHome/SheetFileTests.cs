using System.Globalization;
using ShopFit.Sheets.Support;

namespace ShopFit.Sheets.TakeHome;

/// <summary>What programs of others say of the file.</summary>
public sealed class SheetFileTests : IDisposable
{
    private const int LargestBytes = 120 * 1024;

    private readonly string _file = Path.Combine(Path.GetTempPath(), $"sheet-{Guid.CreateVersion7()}.pdf");

    [Fact]
    public async Task A_checker_of_pdf_files_finds_nothing_to_warn_of()
    {
        await WriteAsync(Sample.First(Sample.Sheet()) with { Pads = Sample.TwoAFoot() });

        var (code, output) = await Tool.RunAsync("qpdf", "--check", _file);

        Assert.True(code == 0, output);
        Assert.DoesNotContain("WARNING", output, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Fonts_are_inside_and_only_the_letters_that_are_used()
    {
        await WriteAsync(Sample.Sheet());

        var (_, output) = await Tool.RunAsync("pdffonts", _file);

        var fonts = output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).ToList();
        Assert.Equal(2, fonts.Count);
        // Columns: embedded, subset, can be read as Unicode.
        Assert.All(fonts, font => Assert.Matches(@"^[A-Z]{6}\+Inter .* yes yes yes ", font));
        Assert.True(new FileInfo(_file).Length <= LargestBytes);
    }

    [Fact]
    public async Task It_is_tagged_with_title_language_headings_lists_and_figures_in_words()
    {
        await WriteAsync(Sample.Sheet());

        var (_, about) = await Tool.RunAsync("pdfinfo", _file);
        var (_, structure) = await Tool.RunAsync("pdfinfo", "-struct-text", _file);
        var (_, objects) = await Tool.RunAsync("qpdf", "--qdf", "--object-streams=disable", _file, "-");

        Assert.Matches("Title: +Tilly’s new shoes: Quillmere 37 two-bar", about);
        Assert.Matches("Tagged: +yes", about);
        Assert.Matches("Suspects: +no", about);
        Assert.Contains("/Lang (en)", objects, StringComparison.Ordinal);
        Assert.Contains("/DisplayDocTitle true", objects, StringComparison.Ordinal);
        Assert.Contains("/Tabs /S", objects, StringComparison.Ordinal);
        Assert.Matches("H1 \\(block\\)\\s+\"Tilly’s new shoes\"", structure);
        Assert.All(["How they sit today", "Sewing", "Breaking in", "Care", "Time for new ones", "Come back", "Stop"], heading => Assert.Matches($"H2 \\(block\\)\\s+\"{heading}\"", structure));
        Assert.Contains("Lbl (block)", structure, StringComparison.Ordinal);
        Assert.Contains("LBody (block)", structure, StringComparison.Ordinal);
        // Both soles, five strips and the words at their ends, the picture of the sewing.
        Assert.Equal(8, objects.Split("/S /Figure").Length - 1);
        Assert.Equal(8, objects.Split("/Alt ").Length - 1);
    }

    [Fact]
    public void The_picture_of_a_soft_shoe_shows_the_feet_alone()
    {
        var soft = Sample.Soft();
        var known = DrawnSheet.Of(soft with { Pair = soft.Pair with { Inside = Sample.Sheet().Pair.Inside }, Pads = [] });
        var unknown = DrawnSheet.Of(soft with { Pads = [] });

        Assert.Equal(unknown.Pages[0].Paths.Count, known.Pages[0].Paths.Count);
        Assert.True(DrawnSheet.Of(Sample.Sheet() with { Pads = [] }).Pages[0].Paths.Count > known.Pages[0].Paths.Count);
    }

    [Fact]
    public async Task Read_aloud_the_words_of_two_lines_stay_apart()
    {
        await WriteAsync(Sample.Sheet());

        var (_, structure) = await Tool.RunAsync("pdfinfo", "-struct-text", _file);

        Assert.Contains("See a doctor or physiotherapist before dancing en pointe again.", structure, StringComparison.Ordinal);
    }

    public void Dispose() => File.Delete(_file);

    private Task WriteAsync(TakeHomeSheet sheet) =>
        File.WriteAllBytesAsync(_file, TakeHomeSheetPdf.Draw(sheet, CultureInfo.GetCultureInfo("en-GB")), TestContext.Current.CancellationToken);
}
