namespace ShopFit.Fitting.Scoring;

/// <summary>One question asked of a shoe on a foot: an ease, the band in which it is right, and how much it counts.</summary>
/// <param name="Id">Stable id, such as <c>length</c>.</param>
/// <param name="NoFitBelow">At and below this ease: no fit.</param>
/// <param name="IdealFrom">From this ease on it is right.</param>
/// <param name="IdealTo">Up to this ease it is right; may be infinite.</param>
/// <param name="NoFitAbove">At and above this ease: no fit; may be infinite.</param>
/// <param name="Weight">How much it counts in the score.</param>
public sealed record Criterion(string Id, double NoFitBelow, double IdealFrom, double IdealTo, double NoFitAbove, double Weight)
{
    /// <summary>Whether more ease is tighter: a box that slopes more than the toes presses them.</summary>
    public bool TightIsAbove { get; init; }

    /// <summary>Exponent of the ramp below the ideal band; 1 is a straight line.</summary>
    public double ExponentBelow { get; init; } = 1;

    /// <summary>Exponent of the ramp above the ideal band; 1 is a straight line.</summary>
    public double ExponentAbove { get; init; } = 1;

    /// <summary>
    /// How good an ease is: 1 in the ideal band, 0 at and past a limit, a power of the way between (Derringer and Suich 1980, two-sided).
    /// </summary>
    public double Desirability(double ease)
    {
        if (ease >= IdealFrom && ease <= IdealTo)
        {
            return 1;
        }

        return ease < IdealFrom
            ? Ramp((ease - NoFitBelow) / (IdealFrom - NoFitBelow), ExponentBelow)
            : Ramp((NoFitAbove - ease) / (NoFitAbove - IdealTo), ExponentAbove);
    }

    /// <summary>The eases at which the desirability is at least <paramref name="least"/>, both ends included.</summary>
    /// <param name="least">Above 0, at most 1.</param>
    public (double From, double To) EasesOf(double least) => (
        double.IsNegativeInfinity(NoFitBelow)
            ? double.NegativeInfinity
            : IdealFrom - ((IdealFrom - NoFitBelow) * (1 - Math.Pow(least, 1 / ExponentBelow))),
        double.IsPositiveInfinity(NoFitAbove)
            ? double.PositiveInfinity
            : IdealTo + ((NoFitAbove - IdealTo) * (1 - Math.Pow(least, 1 / ExponentAbove))));

    /// <summary>Where an ease lies on a strip whose ideal part fills the middle third: 0 no fit below, 1 no fit above; held within 0 to 1.</summary>
    /// <remarks>Straight lines between the four ends. Where the ideal band has no upper end, ease beyond its start draws near to two thirds and never reaches it.</remarks>
    public double OnStrip(double ease)
    {
        const double Third = 1.0 / 3;
        if (ease < IdealFrom)
        {
            return Third * Math.Clamp((ease - NoFitBelow) / (IdealFrom - NoFitBelow), 0, 1);
        }

        if (double.IsPositiveInfinity(IdealTo))
        {
            double scale = IdealFrom - NoFitBelow;
            return double.IsPositiveInfinity(ease) ? 2 * Third : Third + (Third * (ease - IdealFrom) / (ease - IdealFrom + scale));
        }

        if (ease <= IdealTo)
        {
            return IdealTo > IdealFrom ? Third + (Third * (ease - IdealFrom) / (IdealTo - IdealFrom)) : 0.5;
        }

        return (2 * Third) + (Third * Math.Clamp((ease - IdealTo) / (NoFitAbove - IdealTo), 0, 1));
    }

    private static double Ramp(double way, double exponent) => way <= 0 ? 0 : exponent == 1 ? way : Math.Pow(way, exponent);
}
