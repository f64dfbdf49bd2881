using System.Globalization;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>How a size is written out for people.</summary>
public static class SizeLabels
{
    /// <summary>The label: size, width, option and shank, such as "38.5 broad tall reed".</summary>
    public static string Of(double size, string width, string option, string shankName) =>
        string.Join(' ', new[] { size.ToString("0.##", CultureInfo.CurrentCulture), width, option, shankName }.Where(part => part.Length > 0));

    /// <summary>The name of the item as it stands on file, whatever the culture of whoever wrote it.</summary>
    public static string ItemName(string maker, string model, double size, string width, string option, string shankName) =>
        string.Join(' ', new[] { maker, model, size.ToString("0.##", CultureInfo.InvariantCulture), width, option, shankName }.Where(part => part.Length > 0));
}
