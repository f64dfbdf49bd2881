namespace ShopFit.Web.Features.Fittings;

/// <summary>Names the words of the try-ons: <c>TryOnWords.resx</c>.</summary>
public sealed class TryOnWords;
