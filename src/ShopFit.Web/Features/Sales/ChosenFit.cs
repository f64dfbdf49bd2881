using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Features.Sales;

/// <summary>A fit with the pads that the fitter chose in place of those that were proposed.</summary>
internal static class ChosenFit
{
    /// <summary>Moves each ease by what the chosen pads do more, or less, than the proposed ones; the spread stays as it was.</summary>
    public static PairFit Of(PairFit fit, IReadOnlyList<PadUnderFoot> pads, FitDefaults numbers) => pads.ToHashSet().SetEquals(fit.Pads)
        ? fit
        : fit with
        {
            Pads = pads,
            Criteria = [.. fit.Criteria.Select(place =>
            {
                var more = Shift(pads, place.Foot, place.Criterion.Id, numbers) - Shift(fit.Pads, place.Foot, place.Criterion.Id, numbers);
                return more == 0
                    ? place
                    : place with { Ease = place.Ease + more, Low = place.Low + more, High = place.High + more, Desirability = place.Criterion.Desirability(place.Ease + more) };
            })],
        };

    private static double Shift(IReadOnlyList<PadUnderFoot> pads, Side foot, string criterion, FitDefaults numbers) =>
        pads.Where(pad => pad.Foot == foot).Sum(pad => numbers.FindPad(pad.Pad)?.Effects.GetValueOrDefault(criterion) ?? 0);
}
