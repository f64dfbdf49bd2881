using System.Globalization;
using ShopFit.Sheets.Support;

namespace ShopFit.Sheets.TakeHome;

/// <summary>The sheet beside the picture of it that was looked at and approved.</summary>
/// <remarks>
/// After a wanted change look at the new sheet, then approve it:
/// <c>SHEETS_APPROVE=1 dotnet run --project tests/ShopFit.Sheets.Tests -- -method "*approved_picture*"</c>
/// writes TakeHome/approved-sheet.pgm.gz in the sources.
/// </remarks>
public sealed class SheetPictureTests : IDisposable
{
    // Grey, 100 dots an inch; after a blur of one pixel at most one pixel in two hundred may differ by more than 40 of 255.
    private const string DotsAnInch = "100";
    private const int LargestDifference = 40;
    private const double LargestShareOff = 0.005;

    private readonly string _folder = Directory.CreateTempSubdirectory("sheet").FullName;

    [Fact]
    public async Task A_sheet_looks_like_its_approved_picture()
    {
        var drawn = await RenderAsync(Sample.Sheet());
        var approve = Environment.GetEnvironmentVariable("SHEETS_APPROVE") == "1";
        if (approve)
        {
            drawn.WritePacked(InSources("approved-sheet.pgm.gz"));
        }

        var approved = GreyPicture.Read(approve ? InSources("approved-sheet.pgm.gz") : Path.Combine(AppContext.BaseDirectory, "TakeHome", "approved-sheet.pgm.gz"));
        Assert.Equal((approved.Width, approved.Height), (drawn.Width, drawn.Height));
        Assert.InRange(drawn.Blurred().ShareOff(approved.Blurred(), LargestDifference), 0, LargestShareOff);
    }

    [Fact]
    public async Task A_sheet_of_a_shorter_foot_with_its_pad_at_another_place_is_told_apart()
    {
        var sheet = Sample.Sheet();
        var approved = await RenderAsync(sheet);
        var other = await RenderAsync(sheet with
        {
            Left = sheet.Left with { Length = sheet.Left.Length - 20 },
            Pads = [Sample.Pad(1, Fitting.Feet.Side.Left, "heel-cushion"), Sample.Pad(2, Fitting.Feet.Side.Right, "first-toe-lift")],
        });

        Assert.InRange(other.Blurred().ShareOff(approved.Blurred(), LargestDifference), LargestShareOff, 1);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static string InSources(string name, [System.Runtime.CompilerServices.CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, name);

    private async Task<GreyPicture> RenderAsync(TakeHomeSheet sheet)
    {
        var pdf = Path.Combine(_folder, "sheet.pdf");
        await File.WriteAllBytesAsync(pdf, TakeHomeSheetPdf.Draw(sheet, CultureInfo.GetCultureInfo("en-GB")), TestContext.Current.CancellationToken);
        var (code, output) = await Tool.RunAsync("pdftoppm", "-r", DotsAnInch, "-gray", "-singlefile", pdf, Path.Combine(_folder, "sheet"));
        Assert.True(code == 0, output);
        return GreyPicture.Read(Path.Combine(_folder, "sheet.pgm"));
    }
}
