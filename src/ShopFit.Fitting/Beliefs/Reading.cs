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
    public ReadingProblem? Check() => throw new NotSupportedException("Not written yet.");

    /// <summary>The reading in the trait's own unit (mm, degrees, points); a word has none and answers null.</summary>
    /// <exception cref="InvalidOperationException"><see cref="Check"/> finds a problem.</exception>
    public double? InTraitUnit() => throw new NotSupportedException("Not written yet.");
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
