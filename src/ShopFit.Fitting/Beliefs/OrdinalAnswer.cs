namespace ShopFit.Fitting.Beliefs;

/// <summary>An ordered answer: h·x + e lay between two limits, e with a standard deviation of <paramref name="Noise"/>.</summary>
/// <param name="Direction">h.</param>
/// <param name="Lower">Lower limit of h·x + e; may be −∞.</param>
/// <param name="Upper">Upper limit; may be +∞.</param>
/// <param name="Noise">Standard deviation of e; may be 0.</param>
/// <param name="Weight">How far it counts: 1, or less where only a part of what it says is to be believed.</param>
internal sealed record OrdinalAnswer(double[] Direction, double Lower, double Upper, double Noise, double Weight = 1);
