using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Defaults;

/// <summary>Mean, spread and correlations of the traits that a public survey measured on adults.</summary>
/// <remarks>
/// Source: ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007), computed from the public file: footlength,
/// balloffootlength, footbreadthhorizontal, balloffootcircumference, heelbreadth; standing, weight on both
/// feet, 1,986 women and 4,082 men aged 17 to 58.
/// </remarks>
/// <param name="Means">mm, in the order of <see cref="SurveyTraits"/>.</param>
/// <param name="Sds">Standard deviations, mm, likewise.</param>
/// <param name="Correlations">Row-major, symmetric, likewise.</param>
public sealed record SurveyedFeet(IReadOnlyList<double> Means, IReadOnlyList<double> Sds, IReadOnlyList<double> Correlations)
{
    /// <summary>The surveyed traits, in the order of the numbers.</summary>
    public static IReadOnlyList<Trait> SurveyTraits { get; } =
        [Trait.Length, Trait.HeelToBall, Trait.BallBreadth, Trait.BallGirth, Trait.HeelBreadth];

    /// <summary>Women, n = 1,986.</summary>
    public static SurveyedFeet Women { get; } = new(
        [246.29, 182.05, 92.71, 228.11, 67.16],
        [12.44, 9.64, 4.78, 11.77, 5.17],
        [
            1.0000, 0.9397, 0.5551, 0.6055, 0.5138,
            0.9397, 1.0000, 0.5217, 0.5684, 0.5181,
            0.5551, 0.5217, 1.0000, 0.8590, 0.5421,
            0.6055, 0.5684, 0.8590, 1.0000, 0.5576,
            0.5138, 0.5181, 0.5421, 0.5576, 1.0000,
        ]);

    /// <summary>Men, n = 4,082.</summary>
    public static SurveyedFeet Men { get; } = new(
        [271.18, 200.94, 101.86, 252.02, 72.51],
        [13.10, 10.47, 5.23, 12.94, 5.47],
        [
            1.0000, 0.9251, 0.5887, 0.5971, 0.4834,
            0.9251, 1.0000, 0.5375, 0.5411, 0.4969,
            0.5887, 0.5375, 1.0000, 0.8679, 0.5206,
            0.5971, 0.5411, 0.8679, 1.0000, 0.5068,
            0.4834, 0.4969, 0.5206, 0.5068, 1.0000,
        ]);
}
