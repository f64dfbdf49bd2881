using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Outlines;

/// <summary>A foot seen from above as a closed path.</summary>
public static class FootOutline
{
    /// <summary>The outline of a foot.</summary>
    public static Outline Of(FootShape shape) => throw new NotSupportedException("Not written yet.");
}

/// <summary>The inside of a pointe shoe seen from above as a closed path.</summary>
public static class ShoeOutline
{
    /// <summary>The outline of the inside of a shoe.</summary>
    public static Outline Of(Shoes.ShoeForm form) => throw new NotSupportedException("Not written yet.");
}

/// <summary>Writes outlines as path data of SVG.</summary>
public static class SvgPath
{
    /// <summary>Path data in mm: x to the right, y down; a right foot with its toes up keeps its across, a left foot mirrors it.</summary>
    public static string Of(Outline outline, Side foot, double originX = 0, double originY = 0) => throw new NotSupportedException("Not written yet.");
}
