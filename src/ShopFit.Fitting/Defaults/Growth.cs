namespace ShopFit.Fitting.Defaults;

/// <summary>Length of feet at one age.</summary>
/// <param name="AgeYears">Age in years, the middle of a band of one year.</param>
/// <param name="Mean">mm.</param>
/// <param name="Sd">Standard deviation, mm.</param>
public sealed record LengthAtAge(double AgeYears, double Mean, double Sd);

/// <summary>Feet while they grow.</summary>
/// <remarks>
/// Means and spreads: Snyder et al. 1977, UM-HSRI-77-17, computed from the public rows, bands of a year.
/// The girls of that survey end 9 mm below the women of ANSUR II 2012, because they are other people
/// of another time, not because girls of eighteen grow. The prior therefore walks from the
/// table at <see cref="JoinFrom"/> to the adult block at <see cref="AdultFrom"/> in a straight line, so that no
/// birthday makes a foot jump; what a measured foot is expected to grow follows the table alone.
/// </remarks>
public sealed record Growth
{
    /// <summary>Girls, 4 to 18 years.</summary>
    public IReadOnlyList<LengthAtAge> Girls { get; init; } =
    [
        new(4, 160.9, 10.2), new(5, 169.1, 8.9), new(6, 177.6, 9.6), new(7, 188.5, 11.4), new(8, 196.2, 11.4),
        new(9, 207.1, 12.8), new(10, 215.0, 12.0), new(11, 223.3, 14.1), new(12, 230.2, 12.1), new(13, 234.4, 12.3),
        new(14, 235.9, 12.3), new(15, 238.0, 12.9), new(16, 237.6, 13.2), new(17, 236.0, 11.1), new(18, 237.3, 12.0),
    ];

    /// <summary>Boys, 4 to 18 years.</summary>
    public IReadOnlyList<LengthAtAge> Boys { get; init; } =
    [
        new(4, 160.8, 8.9), new(5, 171.3, 9.6), new(6, 181.4, 11.2), new(7, 190.6, 12.5), new(8, 200.0, 10.0),
        new(9, 210.2, 12.7), new(10, 217.7, 13.7), new(11, 225.1, 12.6), new(12, 234.0, 13.7), new(13, 243.9, 15.4),
        new(14, 254.1, 15.6), new(15, 258.2, 13.5), new(16, 265.1, 12.5), new(17, 266.0, 13.1), new(18, 268.5, 15.1),
    ];

    /// <summary>Youngest age told apart, years: below the table its first step is continued down to here, and a younger child counts as this old (cp).</summary>
    public double Youngest { get; init; } = 2;

    /// <summary>Age up to which the table holds, years (cp).</summary>
    public double JoinFrom { get; init; } = 16;

    /// <summary>Age from which the adult survey holds, years (cp; its youngest people were 17).</summary>
    public double AdultFrom { get; init; } = 18;

    /// <summary>Uncertainty of a step of growth, as a share of the step (cp).</summary>
    public double StepSdShare { get; init; } = 0.5;

    /// <summary>Further uncertainty of the length, mm a year (cp).</summary>
    public double SdAYear { get; init; } = 2;
}
