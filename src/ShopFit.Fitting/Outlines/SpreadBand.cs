namespace ShopFit.Fitting.Outlines;

/// <summary>How far a foot may differ from the one drawn: filled between the two outlines by the even-odd rule.</summary>
/// <param name="Larger">Every trait at the upper end of its 90 % interval.</param>
/// <param name="Smaller">Every trait at the lower end.</param>
/// <remarks>The heel stays where it is, so the doubt shows at the toes and the sides, as it does on the mat.</remarks>
public sealed record SpreadBand(Outline Larger, Outline Smaller)
{
    /// <summary>Standard deviations to either end of a 90 % interval of a Gaussian.</summary>
    private const double ToEndOf90Percent = 1.645;

    /// <summary>The band of a foot.</summary>
    /// <param name="mean">The foot as drawn.</param>
    /// <param name="deviations">The standard deviation of each trait, mm; null where a trait is missing or certain.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
    public static SpreadBand Of(FootShape mean, FootShape deviations)
    {
        ArgumentNullException.ThrowIfNull(mean);
        ArgumentNullException.ThrowIfNull(deviations);
        return new(
            FootOutline.Of(mean.Moved(deviations, ToEndOf90Percent)),
            FootOutline.Of(mean.Moved(deviations, -ToEndOf90Percent)));
    }
}
