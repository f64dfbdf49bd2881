using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;

namespace ShopFit.Fitting.Beliefs;

/// <summary>The unit in which a reading was given.</summary>
public enum ReadingUnit
{
    /// <summary>Millimetres.</summary>
    Millimetres,

    /// <summary>Inches.</summary>
    Inches,

    /// <summary>Degrees.</summary>
    Degrees,

    /// <summary>Points from 0 to 10.</summary>
    Points,

    /// <summary>A size of a <see cref="SizeSystem"/>, as read off a gauge.</summary>
    Size,

    /// <summary>One of three ordered words: 0, 1 or 2.</summary>
    Word,
}

/// <summary>One reading of one trait of one foot, just as it was given.</summary>
/// <param name="Foot">Which foot.</param>
/// <param name="Trait">What was read.</param>
/// <param name="Value">The number, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit it was given in.</param>
/// <param name="System">The size system; only with <see cref="ReadingUnit.Size"/>.</param>
public sealed record Reading(Side Foot, Trait Trait, double Value, ReadingUnit Unit, SizeSystem? System = null)
{
    /// <summary>The usual reading: a number in the trait's own unit.</summary>
    public static Reading Of(Side foot, Trait trait, double value) => new(
        foot,
        trait,
        value,
        Traits.Of(trait).Unit switch
        {
            TraitUnit.Degrees => ReadingUnit.Degrees,
            TraitUnit.Points => ReadingUnit.Points,
            _ => ReadingUnit.Millimetres,
        });

    /// <summary>A reading in words: 0, 1 or 2, in the order of the trait.</summary>
    public static Reading InWords(Side foot, Trait trait, int word) => new(foot, trait, word, ReadingUnit.Word);

    /// <summary>What is wrong with the reading, or null where it can be used.</summary>
    /// <remarks>
    /// Inches and sizes go with traits kept in millimetres only, a size with the length only, a word where the
    /// trait takes words. The range is that of <see cref="TraitRow"/>, told in the unit of the reading and
    /// rounded inwards, so that what is told is always accepted.
    /// </remarks>
    public ReadingProblem? Check()
    {
        var row = Traits.Of(Trait);
        if (!Takes(row, Unit))
        {
            return new ReadingProblem(ReadingProblemCode.WrongUnit);
        }

        if (Unit == ReadingUnit.Size && System is null)
        {
            return new ReadingProblem(ReadingProblemCode.SizeSystemMissing);
        }

        if (Unit != ReadingUnit.Size && System is not null)
        {
            return new ReadingProblem(ReadingProblemCode.SizeSystemUnexpected);
        }

        if (Unit == ReadingUnit.Word)
        {
            return Value is 0 or 1 or 2 ? null : new ReadingProblem(ReadingProblemCode.NotAWord, 0, 2);
        }

        return Converted() is { } value && value >= row.Lowest && value <= row.Highest ? null : OutOfRange(row);
    }

    /// <summary>The reading in the trait's own unit (mm, degrees, points); a word has none and answers null.</summary>
    /// <exception cref="InvalidOperationException"><see cref="Check"/> finds a problem.</exception>
    public double? InTraitUnit() => Check() is { } problem
        ? throw new InvalidOperationException($"A reading with a problem ({problem.Code}) has no value.")
        : Unit == ReadingUnit.Word ? null : Converted();

    private static bool Takes(TraitRow row, ReadingUnit unit) => unit switch
    {
        ReadingUnit.Millimetres or ReadingUnit.Inches => row.Unit == TraitUnit.Millimetres,
        ReadingUnit.Degrees => row.Unit == TraitUnit.Degrees,
        ReadingUnit.Points => row.Unit == TraitUnit.Points,
        ReadingUnit.Size => row.Trait == Trait.Length,
        ReadingUnit.Word => row.TakesWords,
        _ => false,
    };

    /// <summary>The number in the trait's unit; null where there is none, because it is not finite or not a size of its system.</summary>
    private double? Converted() => Unit switch
    {
        _ when !double.IsFinite(Value) => null,
        ReadingUnit.Inches => Value * Millimetres.PerInch,
        ReadingUnit.Size => System is { } system && system.Covers(Value) ? system.FootLengthOf(Value).Value : null,
        _ => Value,
    };

    private ReadingProblem OutOfRange(TraitRow row)
    {
        var (lowest, highest, step) = Unit switch
        {
            ReadingUnit.Inches => (row.Lowest / Millimetres.PerInch, row.Highest / Millimetres.PerInch, 0.01),
            ReadingUnit.Size when System is { } system => (
                Math.Max(system.Smallest, system.SizeOfFoot(Millimetres.From(row.Lowest))),
                Math.Min(system.Largest, system.SizeOfFoot(Millimetres.From(row.Highest))),
                system.LabelStep),
            _ => (row.Lowest, row.Highest, 1),
        };
        return new ReadingProblem(ReadingProblemCode.OutOfRange, InSteps(Math.Ceiling(lowest / step), step), InSteps(Math.Floor(highest / step), step));
    }

    /// <summary>So many steps, without the dust that a product of binary fractions leaves behind the second decimal.</summary>
    private static double InSteps(double count, double step) => Math.Round(count * step, 2);
}

/// <summary>Why a reading cannot be used.</summary>
/// <param name="Code">Which rule it breaks.</param>
/// <param name="Lowest">Smallest value allowed, in the unit of the reading, where there is a range.</param>
/// <param name="Highest">Largest value allowed, likewise.</param>
public sealed record ReadingProblem(ReadingProblemCode Code, double? Lowest = null, double? Highest = null);

/// <summary>The rules that a reading can break.</summary>
public enum ReadingProblemCode
{
    /// <summary>The number lies outside what a foot can be, or outside the size system.</summary>
    OutOfRange,

    /// <summary>The trait is not read in that unit.</summary>
    WrongUnit,

    /// <summary>A size came without its size system.</summary>
    SizeSystemMissing,

    /// <summary>A size system came with something that is not a size.</summary>
    SizeSystemUnexpected,

    /// <summary>A word is 0, 1 or 2.</summary>
    NotAWord,
}
