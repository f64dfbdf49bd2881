using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Fitting.TryOns;

/// <summary>What was seen when a pair was tried on.</summary>
/// <param name="Sku">Which pair.</param>
/// <param name="Fits">Whether it fits with the stated pads; false means with no allowed set.</param>
/// <param name="Answers">Answers to the checks.</param>
/// <param name="Pads">Pads that were under the feet.</param>
public sealed record TryOn(string Sku, bool? Fits, IReadOnlyList<CheckAnswer> Answers, IReadOnlyList<PadUnderFoot> Pads);

/// <summary>One answer to one check.</summary>
/// <param name="Foot">Which foot.</param>
/// <param name="Check">Id of the check, such as <c>toes-flat</c>.</param>
/// <param name="Answer">0, 1 or 2.</param>
/// <param name="ByDancer">Whether it is the dancer's word rather than what the fitter saw.</param>
public sealed record CheckAnswer(Side Foot, string Check, int Answer, bool ByDancer = false);
