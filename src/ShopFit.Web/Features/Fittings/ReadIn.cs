using System.Globalization;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What a number on the page of the feet is given in: millimetres, inches, a size of a system, degrees or points.</summary>
public sealed record ReadIn(ReadingUnit Unit, SizeSystem? System = null)
{
    public static ReadIn Millimetres { get; } = new(ReadingUnit.Millimetres);

    public static ReadIn Inches { get; } = new(ReadingUnit.Inches);

    /// <summary>Stable key: "mm", "in" or the id of a size system.</summary>
    public string Key => System?.Id ?? (Unit is ReadingUnit.Inches ? "in" : "mm");

    /// <summary>The choice with that key; millimetres where there is none.</summary>
    public static ReadIn Of(string? key) =>
        key is "in" ? Inches
        : key is not null && SizeSystem.Find(key) is { } system ? new(ReadingUnit.Size, system)
        : Millimetres;

    /// <summary>What a trait is given in when lengths are given in this: only the length of a foot can be a size, angles and points stay.</summary>
    public ReadIn For(Trait trait) => (Traits.Of(trait).Unit, Unit) switch
    {
        (TraitUnit.Degrees, _) => new(ReadingUnit.Degrees),
        (TraitUnit.Points, _) => new(ReadingUnit.Points),
        (_, ReadingUnit.Size) when trait is not Trait.Length => Millimetres,
        _ => this,
    };

    /// <summary>A value of the trait's own unit as it is shown; null where this cannot say it, as a foot outside of a size system.</summary>
    public string? Show(double value) => Unit switch
    {
        ReadingUnit.Inches => Text(value / Fitting.Measures.Millimetres.PerInch, "0.##"),
        ReadingUnit.Size => Size(value) is { } size ? Text(size, "0.#") : null,
        _ => Text(value, "0.#"),
    };

    /// <summary>A distance of the trait's own unit as it is shown behind a plus and minus.</summary>
    public string? ShowGive(double distance) => Unit switch
    {
        ReadingUnit.Inches => Text(Math.Max(0.01, distance / Fitting.Measures.Millimetres.PerInch), "0.##"),
        ReadingUnit.Size => null,
        _ => Text(Math.Max(1, Math.Round(distance, MidpointRounding.AwayFromZero)), "0"),
    };

    private double? Size(double mm)
    {
        try
        {
            return System!.SizeOfFoot(Fitting.Measures.Millimetres.From(mm));
        }
        catch (ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.CurrentCulture);
}
