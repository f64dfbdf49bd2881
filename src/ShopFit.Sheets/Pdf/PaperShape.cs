namespace ShopFit.Sheets.Pdf;

/// <summary>A paper and its margins, in points.</summary>
internal sealed record PaperShape(double Width, double Height)
{
    /// <summary>Left and right; most office printers leave less than 7 mm white, and a photocopier trims a little.</summary>
    public const double Side = 12 * Millimetre;

    public const double Top = 10 * Millimetre;

    public const double Bottom = 9 * Millimetre;

    public const double Millimetre = 72 / 25.4;

    private const double Inch = 72;

    public static PaperShape A4 { get; } = new(210 * Millimetre, 297 * Millimetre);

    public static PaperShape Letter { get; } = new(8.5 * Inch, 11 * Inch);

    public double InnerWidth => Width - 2 * Side;

    public double InnerHeight => Height - Top - Bottom;

    public double End => Height - Bottom;
}
