using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Measures;

/// <summary>The ball girths that JIS S 5037 gives its letters, for women and men.</summary>
/// <remarks>
/// A rule that gives back every row of the standard that we could read: at E, women have 231 mm at a foot of
/// 235 mm and 3 mm more every 5 mm; men have 3 mm more than women; a letter is 6 mm. The standard's girths for
/// children were not read and are not answered here.
/// </remarks>
public static class JisGirth
{
    private const double LengthStep = 5;
    private const double LetterStep = 6;
    private const double GirthPerLengthStep = 3;
    private const double MenAboveWomen = 3;
    private const double ReferenceLength = 235;
    private const double WomensGirthAtReference = 231;

    /// <summary>The girth in the table at a letter.</summary>
    /// <param name="sex">Women's or men's table.</param>
    /// <param name="foot">Length of the foot; women 195 to 270 mm, men 200 to 300 mm. Between two rows the nearer holds.</param>
    /// <param name="letter">The letter.</param>
    /// <exception cref="ArgumentOutOfRangeException">The foot lies outside the table.</exception>
    public static Millimetres Of(Sex sex, Millimetres foot, JisGirthLetter letter)
    {
        var average = WomensGirthAtReference
            + (GirthPerLengthStep * (RowOf(sex, foot) - ReferenceLength) / LengthStep)
            + (sex == Sex.Male ? MenAboveWomen : 0);
        return Millimetres.From(average + (LetterStep * (letter - JisGirthLetter.E)));
    }

    /// <summary>The letter of a foot by its length and its girth, or null where the girth is slimmer than A or fuller than G.</summary>
    /// <remarks>A letter takes girths from 3 mm below its own to 2 mm above, in whole millimetres.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The foot lies outside the table.</exception>
    public static JisGirthLetter? LetterOf(Sex sex, Millimetres foot, Millimetres girth)
    {
        var above = girth.Value - Of(sex, foot, JisGirthLetter.A).Value;
        var letter = (JisGirthLetter)Math.Floor((above / LetterStep) + 0.5);
        return Enum.IsDefined(letter) ? letter : null;
    }

    /// <summary>The row of the table: the length in steps of 5 mm, each taking 2 mm below and 2 above.</summary>
    private static double RowOf(Sex sex, Millimetres foot)
    {
        var (shortest, longest) = sex == Sex.Male ? (200.0, 300.0) : (195.0, 270.0);
        var row = Math.Floor((foot.Value / LengthStep) + 0.5) * LengthStep;
        return row >= shortest && row <= longest
            ? row
            : throw new ArgumentOutOfRangeException(nameof(foot), foot.Value, $"The table goes from {shortest} to {longest} mm.");
    }
}
