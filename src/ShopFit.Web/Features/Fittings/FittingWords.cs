namespace ShopFit.Web.Features.Fittings;

/// <summary>Names the words of a fitting's pages: <c>FittingWords.resx</c>.</summary>
public sealed class FittingWords;
