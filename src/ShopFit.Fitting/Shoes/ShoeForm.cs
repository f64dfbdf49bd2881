using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Measures;

namespace ShopFit.Fitting.Shoes;

/// <summary>A part of the inside of a shoe. The order is the order inside a form.</summary>
public enum FormPart
{
    /// <summary>Inner length, mm.</summary>
    Length = 0,

    /// <summary>Breadth of the box over the toes, mm.</summary>
    BoxBreadth = 1,

    /// <summary>Girth at the joints, mm.</summary>
    BallGirth = 2,

    /// <summary>Breadth of the heel, mm.</summary>
    HeelBreadth = 3,

    /// <summary>Height of the box, mm.</summary>
    CrownDepth = 4,

    /// <summary>How far the box falls back from the platform to the fourth toe, mm.</summary>
    ToeSlope = 5,

    /// <summary>Platform edge to throat, mm.</summary>
    Vamp = 6,

    /// <summary>Shank, 0 soft to 10 stiff, points.</summary>
    Shank = 7,
}

/// <summary>How the form of a shoe is known, best first.</summary>
public enum FormSource
{
    /// <summary>The shop measured one and graded it over the sizes.</summary>
    Measured = 0,

    /// <summary>The maker's own data.</summary>
    Maker = 1,

    /// <summary>The size label alone.</summary>
    Label = 2,
}

/// <summary>What a label says: its size and the maker's options, mapped to steps.</summary>
/// <param name="System">The size system of the label.</param>
/// <param name="Size">The size.</param>
/// <param name="WidthStep">−1 slim, 0 standard, +1 broad, further steps alike.</param>
/// <param name="BoxStep">−1 tapered, 0 plain, +1 square.</param>
/// <param name="VampStep">−1 short, 0, +1 long.</param>
/// <param name="ShankPoints">Shank where known, 0 to 10.</param>
public sealed record SizeLabel(SizeSystem System, double Size, double WidthStep = 0, double BoxStep = 0, double VampStep = 0, double? ShankPoints = null);

/// <summary>The inside of one size of one model: eight numbers and how they are known.</summary>
public sealed class ShoeForm
{
    /// <summary>How many parts a form has.</summary>
    public const int Parts = 8;

    /// <summary>How the form is known.</summary>
    public FormSource Source => throw new NotSupportedException("Not written yet.");

    /// <summary>A part, in mm (the shank in points).</summary>
    public double this[FormPart part] => throw new NotSupportedException("Not written yet.");

    /// <summary>The form that a label alone implies.</summary>
    public static ShoeForm FromLabel(SizeLabel label, FitDefaults defaults) => throw new NotSupportedException("Not written yet.");

    /// <summary>A form with what is known of it; what is missing follows from the label.</summary>
    /// <param name="known">Eight values in the order of <see cref="FormPart"/>; null where missing.</param>
    /// <param name="source">How the known values are known.</param>
    /// <param name="label">The label.</param>
    /// <param name="defaults">The numbers of the shop.</param>
    public static ShoeForm Of(IReadOnlyList<double?> known, FormSource source, SizeLabel label, FitDefaults defaults) => throw new NotSupportedException("Not written yet.");
}
