using System.Globalization;
using System.Text;
using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Outlines;

/// <summary>Writes outlines as path data of SVG, in mm to a hundredth, the same in every culture.</summary>
public static class SvgPath
{
    /// <summary>How far the rectangle round an outline reaches, mm: past any foot on any page.</summary>
    private const double FarAway = 1000;

    /// <summary>Path data in mm: x to the right, y down; a right foot with its toes up keeps its across, a left foot mirrors it.</summary>
    public static string Of(Outline outline, Side foot, double originX = 0, double originY = 0) =>
        Of(outline, new PagePlacement(foot, originX, originY));

    /// <summary>Path data of a closed outline.</summary>
    public static string Of(Outline outline, PagePlacement placement)
    {
        ArgumentNullException.ThrowIfNull(outline);
        return Write(outline.Curves, placement).Append('Z').ToString();
    }

    /// <summary>Path data of an open line.</summary>
    public static string Of(OpenLine line, PagePlacement placement)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Write(line.Curves, placement).ToString();
    }

    /// <summary>Path data of several lines as one path.</summary>
    public static string Of(IEnumerable<OpenLine> lines, PagePlacement placement) => string.Concat(lines.Select(line => Of(line, placement)));

    /// <summary>Path data of several outlines as one path.</summary>
    public static string Of(IEnumerable<Outline> outlines, PagePlacement placement) => string.Concat(outlines.Select(outline => Of(outline, placement)));

    /// <summary>Path data of a band, to be filled by the even-odd rule.</summary>
    public static string Of(SpreadBand band, PagePlacement placement)
    {
        ArgumentNullException.ThrowIfNull(band);
        return Of(band.Larger, placement) + Of(band.Smaller, placement);
    }

    /// <summary>Path data of all that lies outside an outline, to be used as a clip path with the even-odd rule.</summary>
    public static string Outside(Outline outline, PagePlacement placement)
    {
        var (x, y) = (placement.OriginX, placement.OriginY);
        return $"M{Number(x - FarAway)} {Number(y - FarAway)}H{Number(x + FarAway)}V{Number(y + FarAway)}H{Number(x - FarAway)}Z{Of(outline, placement)}";
    }

    private static StringBuilder Write(IReadOnlyList<OutlineCurve> curves, PagePlacement placement)
    {
        var path = new StringBuilder("M").Append(Point(curves[0].From, placement));
        foreach (var curve in curves)
        {
            path.Append('C').Append(Point(curve.FirstHandle, placement))
                .Append(' ').Append(Point(curve.SecondHandle, placement))
                .Append(' ').Append(Point(curve.To, placement));
        }

        return path;
    }

    private static string Point(OutlinePoint point, PagePlacement placement)
    {
        var (x, y) = placement.Place(point);
        return $"{Number(x)} {Number(y)}";
    }

    /// <summary>To a hundredth of a millimetre; adding nought turns minus nought into nought.</summary>
    private static string Number(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
}
