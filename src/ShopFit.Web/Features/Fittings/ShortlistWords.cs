namespace ShopFit.Web.Features.Fittings;

/// <summary>The words of the shortlist.</summary>
public sealed class ShortlistWords;
