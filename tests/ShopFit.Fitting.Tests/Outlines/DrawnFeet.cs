using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace ShopFit.Fitting.Outlines;

/// <summary>Feet and shoes as they walk in, for the laws that every drawing keeps.</summary>
/// <remarks>
/// Length, ball length, ball breadth, ball girth and heel breadth follow means, standard deviations and correlations of
/// ANSUR II (Gordon and others 2014), women and men. One foot in four is scaled to a length drawn evenly from 180 to
/// 300 mm; toes follow the starting values of the fit model *(cp)*, one foot in five at two and a half times its spread.
/// </remarks>
internal static class DrawnFeet
{
    private static readonly double[] WomensMeans = [246.29, 182.05, 92.71, 228.11, 67.16];
    private static readonly double[] WomensDeviations = [12.44, 9.64, 4.78, 11.77, 5.17];

    private static readonly double[,] WomensCorrelations =
    {
        { 1.0000, 0.9397, 0.5551, 0.6055, 0.5138 },
        { 0.9397, 1.0000, 0.5217, 0.5684, 0.5181 },
        { 0.5551, 0.5217, 1.0000, 0.8590, 0.5421 },
        { 0.6055, 0.5684, 0.8590, 1.0000, 0.5576 },
        { 0.5138, 0.5181, 0.5421, 0.5576, 1.0000 },
    };

    private static readonly double[] MensMeans = [271.18, 200.94, 101.86, 252.02, 72.51];
    private static readonly double[] MensDeviations = [13.10, 10.47, 5.23, 12.94, 5.47];

    private static readonly double[,] MensCorrelations =
    {
        { 1.0000, 0.9251, 0.5887, 0.5971, 0.4834 },
        { 0.9251, 1.0000, 0.5375, 0.5411, 0.4969 },
        { 0.5887, 0.5375, 1.0000, 0.8679, 0.5206 },
        { 0.5971, 0.5411, 0.8679, 1.0000, 0.5068 },
        { 0.4834, 0.4969, 0.5206, 0.5068, 1.0000 },
    };

    private static readonly Matrix<double> WomensFactor = Matrix<double>.Build.DenseOfArray(WomensCorrelations).Cholesky().Factor;
    private static readonly Matrix<double> MensFactor = Matrix<double>.Build.DenseOfArray(MensCorrelations).Cholesky().Factor;

    // Cut at 4.3 standard deviations, beyond which nobody walks in: the generator likes to try the ends of its range.
    private static readonly Gen<double> GenNormal =
        Gen.Select(Gen.Double[1e-4, 1], Gen.Double[0, 1], (radius, turn) => Math.Sqrt(-2 * Math.Log(radius)) * Math.Cos(2 * Math.PI * turn));

    /// <summary>A foot, and its girth, which the drawing of a bare foot does not need.</summary>
    internal static Gen<(FootShape Foot, double Girth)> GenBare { get; } = Gen.Select(
        GenNormal.Array[8],
        Gen.Bool,
        Gen.OneOf(Gen.Const(0.0), Gen.Const(0.0), Gen.Const(0.0), Gen.Double[180, 300]),
        Gen.OneOf(1.0, 1.0, 1.0, 1.0, 2.5),
        Make);

    /// <summary>A shoe somewhere near a foot.</summary>
    internal static Gen<(FootShape Foot, ShoeShape Shoe)> GenShod { get; } = Gen.Select(GenBare, GenNormal.Array[5], (drawn, away) =>
    {
        var at = FootPlaces.Of(drawn.Foot);
        return (drawn.Foot, new ShoeShape(
            at.Length + (4 * away[0]),
            drawn.Girth - 10 + (8 * away[1]),
            at.ToeBreadth - 1 + (4 * away[2]),
            at.HeelBreadth - 2 + (4 * away[3]),
            drawn.Foot.ToeSlope!.Value + (6 * away[4])));
    });

    private static (FootShape Foot, double Girth) Make(double[] normal, bool woman, double scaledTo, double toeSpread)
    {
        var (means, deviations, factor) = woman
            ? (WomensMeans, WomensDeviations, WomensFactor)
            : (MensMeans, MensDeviations, MensFactor);
        var correlated = factor * Vector<double>.Build.Dense(normal[..5]);
        var traits = means.Select((mean, trait) => mean + (deviations[trait] * correlated[trait])).ToArray();
        var scale = scaledTo > 0 ? scaledTo / traits[0] : 1;
        var breadth = scale * traits[2];
        var foot = new FootShape(scale * traits[0])
        {
            HeelToBall = scale * traits[1],
            BallBreadth = breadth,
            HeelBreadth = scale * traits[4],
            ToeBreadth = (0.86 * breadth) + (3 * toeSpread * normal[5]),
            ToeSlope = 16 + (6 * toeSpread * normal[6]),
            SecondToeLead = -2 + (4 * toeSpread * normal[7]),
        };
        return (foot, scale * traits[3]);
    }
}
