namespace ShopFit.Web.Features.Sales;

/// <summary>Why a bag cannot be sold as it is asked for.</summary>
/// <param name="Problem">What.</param>
/// <param name="About">Code of what it is about; empty where the problem says it all.</param>
/// <param name="Day">The day on which it would be otherwise.</param>
/// <param name="Bound">The amount that would have to be reached, or not gone over.</param>
internal sealed record BagRefusal(SellProblem Problem, string About = "", DateOnly? Day = null, Money? Bound = null);
