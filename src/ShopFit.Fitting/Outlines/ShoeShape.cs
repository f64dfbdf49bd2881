using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Outlines;

/// <summary>What is needed to draw the inside of a pointe shoe from above, in mm.</summary>
/// <param name="Length">Inner length.</param>
/// <param name="BallGirth">Girth at the joints.</param>
/// <param name="BoxBreadth">Breadth of the box over the toes.</param>
/// <param name="HeelBreadth">Breadth of the heel.</param>
/// <param name="ToeSlope">How far the box falls back from the platform to the fourth toe.</param>
public sealed record ShoeShape(double Length, double BallGirth, double BoxBreadth, double HeelBreadth, double ToeSlope)
{
    /// <summary>The shape of a form.</summary>
    public static ShoeShape Of(ShoeForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return new(
            form[FormPart.Length],
            form[FormPart.BallGirth],
            form[FormPart.BoxBreadth],
            form[FormPart.HeelBreadth],
            form[FormPart.ToeSlope]);
    }
}
