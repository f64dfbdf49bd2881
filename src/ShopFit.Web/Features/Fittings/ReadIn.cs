using System.Globalization;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What a number on the page of the feet is given in: millimetres, inches, a size of a system, degrees or points.</summary>
public sealed record ReadIn(ReadingUnit Unit, SizeSystem? System = null)
{
    // The finest mark on most tapes.
    private const int SixteenthsInAnInch = 16;

    public static ReadIn Millimetres { get; } = new(ReadingUnit.Millimetres);

    public static ReadIn Inches { get; } = new(ReadingUnit.Inches);

    /// <summary>Stable key: "mm", "in" or the id of a size system.</summary>
    public string Key => System?.Id ?? (Unit is ReadingUnit.Inches ? "in" : "mm");

    /// <summary>Everything that lengths can be read in.</summary>
    public static IReadOnlyList<ReadIn> All { get; } = [Millimetres, Inches, .. SizeSystem.All.Select(system => new ReadIn(ReadingUnit.Size, system))];

    /// <summary>The choice with that key; null where there is none.</summary>
    public static ReadIn? Find(string? key) => All.FirstOrDefault(choice => choice.Key == key);

    /// <summary>The choice with that key; millimetres where there is none.</summary>
    public static ReadIn Of(string? key) => Find(key) ?? Millimetres;

    /// <summary>What a reading was given in.</summary>
    public static ReadIn Of(Reading reading) => new(reading.Unit, reading.System);

    /// <summary>What a trait is given in when lengths are given in this: only the length of a foot can be a size, angles and points stay.</summary>
    public ReadIn For(Trait trait) => (Traits.Of(trait).Unit, Unit) switch
    {
        (TraitUnit.Degrees, _) => new(ReadingUnit.Degrees),
        (TraitUnit.Points, _) => new(ReadingUnit.Points),
        (_, ReadingUnit.Size) when trait is not Trait.Length => Millimetres,
        _ => this,
    };

    /// <summary>A number of this unit just as it was typed: no digit more, and a fraction of an inch where a decimal would round it.</summary>
    public string ShowTyped(double number)
    {
        var sixteenths = number * SixteenthsInAnInch;
        return Unit is ReadingUnit.Inches && number > 0 && sixteenths == Math.Round(sixteenths) && number != Math.Round(number, 2)
            ? Fraction((int)sixteenths)
            : Text(number, "0.##");
    }

    /// <summary>A value of the trait's own unit as it is shown; null where this cannot say it, as a foot outside of a size system.</summary>
    /// <remarks>Millimetres are shown in halves: so a gauge is read.</remarks>
    public string? Show(double value) => Unit switch
    {
        ReadingUnit.Inches => Text(value / Fitting.Measures.Millimetres.PerInch, "0.##"),
        ReadingUnit.Size => Size(value) is { } size ? Text(size, "0.#") : null,
        _ => Text(InHalves(value), "0.#"),
    };

    /// <summary>How much a value of the trait's own unit differs from another, with its sign: "+2.5", "−1", "±0"; null where this cannot say it.</summary>
    public string? ShowChange(double from, double to)
    {
        double? change = Unit switch
        {
            ReadingUnit.Inches => Math.Round((to - from) / Fitting.Measures.Millimetres.PerInch, 2),
            ReadingUnit.Size => Math.Round(Size(to) - Size(from) ?? double.NaN, 1),
            _ => InHalves(to - from),
        };
        return change switch
        {
            null or double.NaN => null,
            0 => "±0",
            < 0 => $"−{Text(-change.Value, "0.##")}",
            _ => $"+{Text(change.Value, "0.##")}",
        };
    }

    /// <summary>A distance of the trait's own unit as it is shown behind a plus and minus.</summary>
    public string? ShowGive(double distance) => Unit switch
    {
        ReadingUnit.Inches => Text(Math.Max(0.01, distance / Fitting.Measures.Millimetres.PerInch), "0.##"),
        ReadingUnit.Size => null,
        ReadingUnit.Points => Text(Math.Max(0.5, InHalves(distance)), "0.#"),
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

    private static double InHalves(double value) => Math.Round(2 * value, MidpointRounding.AwayFromZero) / 2;

    private static string Fraction(int sixteenths)
    {
        var (above, below) = (sixteenths % SixteenthsInAnInch, SixteenthsInAnInch);
        while (above % 2 is 0)
        {
            (above, below) = (above / 2, below / 2);
        }

        var whole = sixteenths / SixteenthsInAnInch;
        return whole is 0 ? $"{above}/{below}" : $"{whole} {above}/{below}";
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.CurrentCulture);
}
