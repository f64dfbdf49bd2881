using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Shared;

/// <summary>Where a fit lies on a strip: 0 no fit, tight; 1 no fit, loose; the ideal band is the middle third.</summary>
/// <param name="Low">Lower end of the whisker.</param>
/// <param name="At">The dot.</param>
/// <param name="High">Upper end of the whisker.</param>
public readonly record struct StripPlace(double Low, double At, double High)
{
    // A box that slopes more than the toes presses them, so more of this ease is tighter: its strip is turned round.
    private const string TighterWithMore = "taper";

    /// <summary>The place of one criterion of one foot.</summary>
    public static StripPlace Of(CriterionFit fit)
    {
        var (low, at, high) = (fit.Criterion.OnStrip(fit.Low), fit.Criterion.OnStrip(fit.Ease), fit.Criterion.OnStrip(fit.High));
        return fit.Criterion.Id is TighterWithMore ? new(1 - high, 1 - at, 1 - low) : new(low, at, high);
    }

    /// <summary>Whether a fit lies on the tight side of its ideal band.</summary>
    public static bool IsTight(CriterionFit fit) =>
        fit.Criterion.Id is TighterWithMore ? fit.Ease > fit.Criterion.IdealTo : fit.Ease < fit.Criterion.IdealFrom;

    /// <summary>Whether a fit lies on the loose side of its ideal band.</summary>
    public static bool IsLoose(CriterionFit fit) =>
        fit.Criterion.Id is TighterWithMore ? fit.Ease < fit.Criterion.IdealFrom : fit.Ease > fit.Criterion.IdealTo;
}
