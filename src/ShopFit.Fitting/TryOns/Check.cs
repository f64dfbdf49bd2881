namespace ShopFit.Fitting.TryOns;

/// <summary>How much of one criterion's ease a check sees.</summary>
/// <param name="Criterion">Id of the criterion.</param>
/// <param name="Factor">Factor of its ease.</param>
public sealed record EaseTerm(string Criterion, double Factor);

/// <summary>An ordered question asked at a try-on: its answer tells where a combination of eases lies.</summary>
/// <remarks>
/// Answer k of 0, 1, 2 to a combination z has probability Φ((t₍k+1₎ − z)/ν) − Φ((t₍k₎ − z)/ν), with t₀ = −∞ and
/// t₃ = +∞. A check that sees nothing is written down and spoken about, and does not change the belief.
/// </remarks>
/// <param name="Id">Stable id, such as <c>toes-flat</c>.</param>
/// <param name="Position">Where it is seen.</param>
/// <param name="Sees">The combination of eases.</param>
/// <param name="Lower">t₁, mm (points for the shank).</param>
/// <param name="Upper">t₂, likewise.</param>
/// <param name="Noise">ν, likewise.</param>
/// <param name="AlwaysByDancer">Whether only the dancer can say it, so that <paramref name="Noise"/> counts that already.</param>
public sealed record Check(string Id, TryOnPosition Position, IReadOnlyList<EaseTerm> Sees, double Lower, double Upper, double Noise, bool AlwaysByDancer = false)
{
    /// <summary>Whether it is written down only and changes no belief.</summary>
    public bool OnlyRecorded => Sees.Count == 0;
}

/// <summary>How the dancer stands while a check is made.</summary>
public enum TryOnPosition
{
    /// <summary>Flat, knees straight.</summary>
    Flat = 0,

    /// <summary>Knees bent, heels down.</summary>
    DemiPlie = 1,

    /// <summary>On half toe.</summary>
    DemiPointe = 2,

    /// <summary>En pointe.</summary>
    EnPointe = 3,
}
