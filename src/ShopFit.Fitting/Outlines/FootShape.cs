namespace ShopFit.Fitting.Outlines;

/// <summary>What is needed to draw a foot from above, in mm; what is null is filled in from the rest.</summary>
/// <param name="Length">Heel to the tip of the longest toe.</param>
public sealed record FootShape(double Length)
{
    /// <summary>Ball girth over ball breadth: 2.461 in women, 2.475 in men (ANSUR II, Gordon and others 2014, from the public rows).</summary>
    public const double GirthPerBreadth = 2.46;

    /// <summary>Straight across the joints.</summary>
    public double? BallBreadth { get; init; }

    /// <summary>Across the toes at the nail bases.</summary>
    public double? ToeBreadth { get; init; }

    /// <summary>Widest part of the heel.</summary>
    public double? HeelBreadth { get; init; }

    /// <summary>Heel to the joint of the big toe.</summary>
    public double? HeelToBall { get; init; }

    /// <summary>Second toe tip ahead of the big toe tip.</summary>
    public double? SecondToeLead { get; init; }

    /// <summary>From the longest toe tip back to the fourth.</summary>
    public double? ToeSlope { get; init; }

    /// <summary>The foot as a shoe gathers it, to be drawn under the shoe: then the gap at the joints is the ease of the ball over <see cref="GirthPerBreadth"/>.</summary>
    /// <param name="ballGirth">Girth of the joints, mm.</param>
    /// <param name="squeeze">How much of it the forefoot gives, mm.</param>
    public FootShape Gathered(double ballGirth, double squeeze) => this with { BallBreadth = (ballGirth - squeeze) / GirthPerBreadth };

    /// <summary>Each value that is there moved by so many of its standard deviations; what is missing goes on following the length.</summary>
    internal FootShape Moved(FootShape deviations, double times) => new(Length + (times * deviations.Length))
    {
        BallBreadth = BallBreadth + (times * (deviations.BallBreadth ?? 0)),
        ToeBreadth = ToeBreadth + (times * (deviations.ToeBreadth ?? 0)),
        HeelBreadth = HeelBreadth + (times * (deviations.HeelBreadth ?? 0)),
        HeelToBall = HeelToBall + (times * (deviations.HeelToBall ?? 0)),
        SecondToeLead = SecondToeLead + (times * (deviations.SecondToeLead ?? 0)),
        ToeSlope = ToeSlope + (times * (deviations.ToeSlope ?? 0)),
    };
}
