using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Learning;

/// <summary>How far a model really is from its form on file, as far as the shop has learnt.</summary>
/// <param name="Means">Best guess for each part, in the order of <see cref="FormPart"/>: mm, the shank in points; above zero: it runs large there.</param>
/// <param name="Sds">How far off that may be: standard deviations, likewise. The scatter of single pairs is no part of it.</param>
/// <param name="Fittings">In how many fittings it was tried on.</param>
/// <param name="Frozen">Whether it stays as it is, whatever fittings say.</param>
public sealed record ModelOffset(IReadOnlyList<double> Means, IReadOnlyList<double> Sds, int Fittings, bool Frozen)
{
    /// <summary>Best guess for one part.</summary>
    public double Mean(FormPart part) => Means[(int)part];

    /// <summary>How far off that may be.</summary>
    public double Sd(FormPart part) => Sds[(int)part];
}
