namespace ShopFit.Web.Features.Fittings;

/// <summary>Names the words beside the readings of feet: <c>FeetWords.resx</c>.</summary>
public sealed class FeetWords;
