using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Outlines;

namespace ShopFit.Web.Features.Fittings;

/// <summary>A belief as feet that can be drawn.</summary>
internal static class BelievedShape
{
    /// <summary>The foot as it most likely is.</summary>
    public static FootShape Of(FeetBelief belief, Side foot) => Shape(trait => belief.Mean(foot, trait));

    /// <summary>How far off each of its measures may be: standard deviations.</summary>
    public static FootShape Deviations(FeetBelief belief, Side foot) => Shape(trait => belief.Sd(foot, trait));

    /// <summary>The foot as a shoe gathers it.</summary>
    public static FootShape Gathered(FeetBelief belief, Side foot) =>
        Of(belief, foot).Gathered(belief.Mean(foot, Trait.BallGirth), belief.Mean(foot, Trait.Squeeze));

    private static FootShape Shape(Func<Trait, double> value) => new(value(Trait.Length))
    {
        BallBreadth = value(Trait.BallBreadth),
        ToeBreadth = value(Trait.ToeBreadth),
        HeelBreadth = value(Trait.HeelBreadth),
        HeelToBall = value(Trait.HeelToBall),
        SecondToeLead = value(Trait.SecondToeLead),
        ToeSlope = value(Trait.ToeSlope),
    };
}
