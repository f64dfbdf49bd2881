namespace ShopFit.Fitting.Scoring;

/// <summary>One question asked of a shoe on a foot: an ease, the band in which it is right, and how much it counts.</summary>
/// <param name="Id">Stable id, such as <c>length</c>.</param>
/// <param name="NoFitBelow">At and below this ease: no fit, tight.</param>
/// <param name="IdealFrom">From this ease on it is right.</param>
/// <param name="IdealTo">Up to this ease it is right; may be infinite.</param>
/// <param name="NoFitAbove">At and above this ease: no fit, loose; may be infinite.</param>
/// <param name="Weight">How much it counts in the score.</param>
public sealed record Criterion(string Id, double NoFitBelow, double IdealFrom, double IdealTo, double NoFitAbove, double Weight)
{
    /// <summary>Where an ease lies on a strip whose ideal part fills the middle third: 0 no fit tight, 1 no fit loose; held within 0 to 1.</summary>
    public double OnStrip(double ease) => throw new NotSupportedException("Not written yet.");
}
