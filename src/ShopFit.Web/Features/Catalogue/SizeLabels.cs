using System.Globalization;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>How a size is written out for people.</summary>
public static class SizeLabels
{
    private const double Half = 0.5;

    /// <summary>The label: size, width, option and shank, such as "38½ broad tall reed".</summary>
    public static string Of(string system, double size, string width, string option, string shankName) =>
        string.Join(' ', new[] { SizeOf(system, size), width, option, shankName }.Where(part => part.Length > 0));

    /// <summary>The name of the item as it stands on file, whatever the culture of whoever wrote it.</summary>
    public static string ItemName(string maker, string model, double size, string width, string option, string shankName) =>
        string.Join(' ', new[] { maker, model, size.ToString("0.##", CultureInfo.InvariantCulture), width, option, shankName }.Where(part => part.Length > 0));

    // Sizes are said in halves; centimetres of the Japanese scale and millimetres are measures, and keep their decimals.
    private static string SizeOf(string system, double size) => system is not ("jp" or "mondopoint") && size - Math.Floor(size) == Half
        ? size < 1 ? "½" : $"{Math.Floor(size).ToString("0", CultureInfo.CurrentCulture)}½"
        : size.ToString("0.##", CultureInfo.CurrentCulture);
}
