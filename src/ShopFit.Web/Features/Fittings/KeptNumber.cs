using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Features.Fittings;

/// <summary>A number that was just kept.</summary>
public sealed record KeptNumber(Side Foot, Trait Trait, Guid ReadingId);
