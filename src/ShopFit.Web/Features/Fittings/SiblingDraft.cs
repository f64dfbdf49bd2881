namespace ShopFit.Web.Features.Fittings;

/// <summary>An open fitting of another dancer for whom the same person answers.</summary>
public sealed record SiblingDraft(Guid FittingId, string Called);
