using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Seed;

/// <summary>The true feet of somebody who does not exist, at any age: drawn from the population once, then grown.</summary>
internal sealed class DemoFeet
{
    /// <summary>How much faster or slower than the mean somebody grows, standard deviation *(cp)*.</summary>
    private const double GrowthSpread = 0.3;

    /// <summary>Dancers' feet are nearer to each other than everybody's: whose foot is far off does not stay with it *(cp)*.</summary>
    private const double Spread = 0.85;

    /// <summary>Points of strength gained in a year of class *(cp)*.</summary>
    private const double StrongerAYear = 0.7;

    private readonly Sex _sex;
    private readonly double _firstAge;
    private readonly double[] _first;
    private readonly double[] _slopes;
    private readonly double _pace;

    private DemoFeet(Sex sex, double firstAge, double[] first, double[] slopes, double pace)
    {
        _sex = sex;
        _firstAge = firstAge;
        _first = first;
        _slopes = slopes;
        _pace = pace;
    }

    /// <summary>Draws both feet at the age of the first visit.</summary>
    internal static DemoFeet Of(Sex sex, double age, DemoRandom random)
    {
        var everybody = Population.Of(sex, age, FitDefaults.Standard);
        var lower = Vectors.Cholesky(everybody.Covariance, everybody.Size);
        double[] normals = [.. Enumerable.Range(0, everybody.Size).Select(_ => random.Normal())];
        double[] feet = [.. everybody.Mean];
        for (var row = 0; row < feet.Length; row++)
        {
            feet[row] += Spread * Vectors.Dot(lower.AsSpan(row * feet.Length, feet.Length), normals);
        }

        return new DemoFeet(sex, age, feet, Population.SlopesOnLength(everybody), Math.Max(0.3, 1 + (GrowthSpread * random.Normal())));
    }

    /// <summary>The 12 traits of the left and then of the right foot, in the traits' own units.</summary>
    internal double[] At(double age)
    {
        var grown = _pace * GrowthCurve.MeanStep(_sex, _firstAge, Math.Max(_firstAge, age), FitDefaults.Standard);
        double[] feet = [.. _first.Select((value, index) => value + (grown * _slopes[index % Traits.Count]))];
        for (var foot = 0; foot < 2; foot++)
        {
            var strength = (foot * Traits.Count) + (int)Trait.Strength;
            feet[strength] = Math.Clamp(feet[strength] + (StrongerAYear * (age - _firstAge)), 0, 10);
        }

        return feet;
    }
}
