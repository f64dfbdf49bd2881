using ShopFit.Fitting.Outlines;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Shared;

/// <summary>A place of a foot that is out of its band and can be seen from above.</summary>
/// <param name="Fit">What is said of it.</param>
/// <param name="Gap">Where it is marked.</param>
/// <param name="Tight">Tight, and hatched; otherwise loose, and dotted.</param>
internal sealed record MarkedPlace(CriterionFit Fit, GapPlace Gap, bool Tight)
{
    // A place that is out of its band by less than this is not worth a mark, mm.
    private const double WorthAMark = 0.5;

    // Where the words stand inside the foot, share of the length forward from the heel; by eye, so that none covers another.
    private static readonly Dictionary<string, double> WordsAt = new(StringComparer.Ordinal)
    {
        ["length"] = 0.855,
        ["box"] = 0.785,
        ["taper"] = 0.715,
        ["ball"] = 0.625,
        ["heel"] = 0.22,
    };

    /// <summary>How far it is outside its band, whole mm: the same that the sentences say.</summary>
    public double Millimetres => Math.Round(Math.Max(Fit.Criterion.IdealFrom - Fit.Ease, Fit.Ease - Fit.Criterion.IdealTo), MidpointRounding.AwayFromZero);

    /// <summary>Where its words stand, share of the length forward from the heel.</summary>
    public double WordsForward => WordsAt[Gap.Criterion];

    /// <summary>The marked places of a foot.</summary>
    public static IReadOnlyList<MarkedPlace> In(IReadOnlyList<CriterionFit> fits) =>
    [
        .. from fit in fits
           let gap = GapPlace.Find(fit.Criterion.Id)
           where gap is not null
           where fit.Ease < fit.Criterion.IdealFrom - WorthAMark || fit.Ease > fit.Criterion.IdealTo + WorthAMark
           select new MarkedPlace(fit, gap, StripPlace.IsTight(fit)),
    ];
}
