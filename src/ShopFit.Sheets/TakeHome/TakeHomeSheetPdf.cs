using System.Globalization;

namespace ShopFit.Sheets.TakeHome;

/// <summary>Draws a take-home sheet.</summary>
public static class TakeHomeSheetPdf
{
    /// <summary>The sheet as a tagged PDF of one page; a very long text runs on to a second. May be called from many threads.</summary>
    /// <param name="sheet">What it says.</param>
    /// <param name="culture">Language of the fixed words, and how dates and numbers are written.</param>
    /// <exception cref="NotSupportedException">The sheet was written in a later format than this.</exception>
    public static byte[] Draw(TakeHomeSheet sheet, CultureInfo culture) => throw new NotSupportedException("Not written yet.");
}
