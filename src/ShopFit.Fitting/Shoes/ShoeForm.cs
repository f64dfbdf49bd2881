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
/// <param name="Allowance">mm that the maker's labels run ahead of the foot that fits; null: what the shop's numbers say of the size system.</param>
public sealed record SizeLabel(
    SizeSystem System,
    double Size,
    double WidthStep = 0,
    double BoxStep = 0,
    double VampStep = 0,
    double? ShankPoints = null,
    double? Allowance = null);

/// <summary>A part of a form that is known, and how.</summary>
/// <param name="Value">mm (points for the shank).</param>
/// <param name="Source">How it is known.</param>
public readonly record struct KnownPart(double Value, FormSource Source);

/// <summary>The inside of one size of one model: eight numbers and how they are known.</summary>
/// <remarks>Immutable. A part that nobody measured follows from the label, and is as uncertain as a label.</remarks>
public sealed class ShoeForm
{
    /// <summary>How many parts a form has.</summary>
    public const int Parts = 8;

    private readonly double[] _values;
    private readonly FormSource[] _sources;

    private ShoeForm(double[] values, FormSource[] sources)
    {
        _values = values;
        _sources = sources;
    }

    /// <summary>How the form is known, where it is known best.</summary>
    public FormSource Source => _sources.Min();

    /// <summary>A part, in mm (the shank in points).</summary>
    public double this[FormPart part] => _values[(int)part];

    /// <summary>How one part is known: parts that were missing come from the label.</summary>
    public FormSource SourceOf(FormPart part) => _sources[(int)part];

    /// <summary>The form that a label alone implies.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The size lies outside its system.</exception>
    public static ShoeForm FromLabel(SizeLabel label, FitDefaults defaults)
    {
        double length = label.System.FootLengthOf(label.Size).Value - (label.Allowance ?? defaults.Label.AllowanceOf(label.System.Id));
        double[] values = new double[Parts];
        foreach (var row in defaults.Label.Parts)
        {
            values[(int)row.Part] = row.Constant + (row.PerLength * length)
                + (row.PerWidthStep * label.WidthStep) + (row.PerBoxStep * label.BoxStep) + (row.PerVampStep * label.VampStep);
        }

        values[(int)FormPart.Shank] = label.ShankPoints ?? values[(int)FormPart.Shank];
        return new ShoeForm(values, [.. Enumerable.Repeat(FormSource.Label, Parts)]);
    }

    /// <summary>A form with what is known of it; what is missing follows from the label.</summary>
    /// <param name="known">Eight values in the order of <see cref="FormPart"/>; null where missing.</param>
    /// <param name="source">How the known values are known.</param>
    /// <param name="label">The label.</param>
    /// <param name="defaults">The numbers of the shop.</param>
    /// <exception cref="ArgumentException">There are not eight values, or one is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size lies outside its system.</exception>
    public static ShoeForm Of(IReadOnlyList<double?> known, FormSource source, SizeLabel label, FitDefaults defaults) =>
        Of([.. known.Select(value => value is { } number ? new KnownPart(number, source) : (KnownPart?)null)], label, defaults);

    /// <summary>A form whose parts are known in different ways; what is missing follows from the label.</summary>
    /// <param name="known">Eight parts in the order of <see cref="FormPart"/>; null where missing.</param>
    /// <param name="label">The label.</param>
    /// <param name="defaults">The numbers of the shop.</param>
    /// <exception cref="ArgumentException">There are not eight parts, or one is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size lies outside its system.</exception>
    public static ShoeForm Of(IReadOnlyList<KnownPart?> known, SizeLabel label, FitDefaults defaults)
    {
        if (known.Count != Parts || known.Any(part => part is { } there && !double.IsFinite(there.Value)))
        {
            throw new ArgumentException($"A form has {Parts} values, each finite or missing.", nameof(known));
        }

        var fromLabel = FromLabel(label, defaults);
        return new ShoeForm(
            [.. known.Select((there, part) => there?.Value ?? fromLabel._values[part])],
            [.. known.Select(there => there?.Source ?? FormSource.Label)]);
    }

    /// <summary>The same form with each part changed by so much.</summary>
    internal ShoeForm Changed(Func<FormPart, double> by) =>
        new([.. _values.Select((value, part) => value + by((FormPart)part))], _sources);
}
