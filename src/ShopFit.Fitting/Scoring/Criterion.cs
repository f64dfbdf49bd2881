namespace ShopFit.Fitting.Scoring;

/// <summary>One question asked of a shoe on a foot: an ease, the band in which it is right, and how much it counts.</summary>
/// <param name="Id">Stable id, such as <c>length</c>.</param>
/// <param name="NoFitBelow">At and below this ease: no fit; minus infinity where no ease is too little.</param>
/// <param name="IdealFrom">From this ease on it is right; may be minus infinity if <paramref name="NoFitBelow"/> is.</param>
/// <param name="IdealTo">Up to this ease it is right; may be infinite if <paramref name="NoFitAbove"/> is.</param>
/// <param name="NoFitAbove">At and above this ease: no fit; infinite where no ease is too much.</param>
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
    /// On a side without a limit it stays 1.
    /// </summary>
    public double Desirability(double ease)
    {
        if (ease >= IdealFrom && ease <= IdealTo)
        {
            return 1;
        }

        return ease < IdealFrom
            ? Ramp(ease - NoFitBelow, IdealFrom - NoFitBelow, ExponentBelow)
            : Ramp(NoFitAbove - ease, NoFitAbove - IdealTo, ExponentAbove);
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
    /// <remarks>
    /// Straight lines between the four ends. Where the ideal band has no end on one side, ease draws near to the end of the middle
    /// third and never reaches it; where it has none at all, ease lies in the middle.
    /// </remarks>
    public double OnStrip(double ease)
    {
        const double Third = 1.0 / 3;
        if (ease < IdealFrom)
        {
            return Third * WayInto(ease - NoFitBelow, IdealFrom - NoFitBelow);
        }

        if (ease > IdealTo)
        {
            return 1 - (Third * WayInto(NoFitAbove - ease, NoFitAbove - IdealTo));
        }

        return (double.IsNegativeInfinity(IdealFrom), double.IsPositiveInfinity(IdealTo)) switch
        {
            (true, true) => 0.5,
            (false, true) => Third * (1 + Nearing(ease - IdealFrom, IdealFrom - NoFitBelow)),
            (true, false) => Third * (2 - Nearing(IdealTo - ease, NoFitAbove - IdealTo)),
            _ => IdealTo > IdealFrom ? Third + (Third * (ease - IdealFrom) / (IdealTo - IdealFrom)) : 0.5,
        };
    }

    // The share of a ramp that is behind an ease; a ramp without an end is never left.
    private static double WayInto(double fromLimit, double length) =>
        double.IsPositiveInfinity(length) ? 1 : Math.Clamp(fromLimit / length, 0, 1);

    // From 0 towards 1 as a distance grows; half of it at the length of the ramp on the other side, or at 1 where that has no end.
    private static double Nearing(double distance, double ramp) =>
        double.IsPositiveInfinity(distance) ? 1 : distance / (distance + (ramp > 0 && double.IsFinite(ramp) ? ramp : 1));

    private static double Ramp(double fromLimit, double length, double exponent) =>
        double.IsPositiveInfinity(length) ? 1
        : fromLimit <= 0 ? 0
        : exponent == 1 ? fromLimit / length
        : Math.Pow(fromLimit / length, exponent);
}
