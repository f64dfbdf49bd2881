using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Scoring;

/// <summary>How one pair fits both feet, as far as is known.</summary>
/// <param name="Shoe">Which pair.</param>
/// <param name="ChanceOfFit">Chance that some allowed set of pads makes it fit on both feet, 0 to 1.</param>
/// <param name="Score">Expected score of the worse foot with <paramref name="Pads"/>, 0 to 1.</param>
/// <param name="Pads">The best set for each foot.</param>
/// <param name="Criteria">Each criterion of each foot, pads counted: left foot first, in the order of the kind.</param>
public sealed record PairFit(ShoeOnFile Shoe, double ChanceOfFit, double Score, IReadOnlyList<PadUnderFoot> Pads, IReadOnlyList<CriterionFit> Criteria)
{
    /// <summary>The criterion that is furthest from right: lowest desirability, then heaviest.</summary>
    public IEnumerable<CriterionFit> WorstFirst() =>
        Criteria.OrderBy(fit => fit.Desirability).ThenByDescending(fit => fit.Criterion.Weight);
}

/// <summary>A pad and the foot it goes under.</summary>
/// <param name="Foot">Which foot.</param>
/// <param name="Pad">Id of the pad, such as <c>heel-cushion</c>.</param>
public sealed record PadUnderFoot(Side Foot, string Pad);

/// <summary>How one place of one foot sits in a shoe, pads counted.</summary>
/// <param name="Foot">Which foot.</param>
/// <param name="Criterion">Which criterion, with its band.</param>
/// <param name="Ease">Expected ease: shoe minus foot, mm (shank: points).</param>
/// <param name="Low">Lower end of the 90 % interval.</param>
/// <param name="High">Upper end of the 90 % interval.</param>
/// <param name="Desirability">Expected desirability, 0 to 1.</param>
public sealed record CriterionFit(Side Foot, Criterion Criterion, double Ease, double Low, double High, double Desirability);
