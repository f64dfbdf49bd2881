namespace ShopFit.Web.Features.Dancers;

/// <summary>Names the words of the dancers' pages: <c>DancerWords.resx</c>.</summary>
public sealed class DancerWords;
