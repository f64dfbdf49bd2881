namespace ShopFit.Web.Features.Fittings;

/// <summary>Names the words of the checks at a try-on: <c>CheckWords.resx</c>.</summary>
public sealed class CheckWords;
