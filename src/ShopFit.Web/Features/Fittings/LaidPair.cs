using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Web.Features.Fittings;

/// <summary>The pair that is laid over the feet in the drawing.</summary>
/// <param name="SizeId">Which size.</param>
/// <param name="Name">Its model and size, as it is called.</param>
/// <param name="Form">Its inside.</param>
/// <param name="Fit">How it sits.</param>
public sealed record LaidPair(Guid SizeId, string Name, ShoeForm Form, PairFit Fit)
{
    /// <summary>Another pair that lies over the feet beside it, to be compared; null: none.</summary>
    public LaidPair? Beside { get; init; }
}
