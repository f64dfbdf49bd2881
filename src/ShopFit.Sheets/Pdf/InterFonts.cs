using System.Reflection;
using PdfSharp.Fonts;

namespace ShopFit.Sheets.Pdf;

/// <summary>Gives PDFsharp the two faces of Inter that this library carries; it finds no fonts of a system by itself.</summary>
internal sealed class InterFonts : IFontResolver
{
    public const string Family = "Inter";

    private const string Regular = "Inter-Regular.ttf";
    private const string SemiBold = "Inter-SemiBold.ttf";

    private static readonly Lazy<byte[]> RegularFile = new(() => Read(Regular));
    private static readonly Lazy<byte[]> SemiBoldFile = new(() => Read(SemiBold));

    // PDFsharp keeps one resolver for the whole process and refuses to change it once a font was made.
    private static readonly Lazy<bool> Installed = new(() =>
    {
        GlobalFontSettings.FontResolver ??= new InterFonts();
        return true;
    });

    private static readonly Lazy<FontCoverage> Both = new(() =>
        FontCoverage.Of(RegularFile.Value).And(FontCoverage.Of(SemiBoldFile.Value)));

    /// <summary>The characters that both faces can draw.</summary>
    public static FontCoverage Coverage => Both.Value;

    public static void Install() => _ = Installed.Value;

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) => new(bold ? SemiBold : Regular);

    public byte[]? GetFont(string faceName) => faceName == SemiBold ? SemiBoldFile.Value : RegularFile.Value;

    private static byte[] Read(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The font {name} is not embedded in this library.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
