using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Features.Fittings;

/// <summary>One check of one foot.</summary>
public sealed record CheckOfFoot(Side Foot, string Check);
