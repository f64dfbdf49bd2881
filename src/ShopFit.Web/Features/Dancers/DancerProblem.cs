namespace ShopFit.Web.Features.Dancers;

/// <summary>What is wrong with what was written down of a dancer.</summary>
public enum DancerProblem
{
    NameMissing,
    TooLong,

    /// <summary>What was typed as the day of birth is no day.</summary>
    BornUnclear,
    BornInFuture,
    BornTooLongAgo,

    /// <summary>Neither a day of birth nor "under age" or "grown".</summary>
    AgeNotSaid,
    GuardianMissing,
    ConsentMissing,
}
