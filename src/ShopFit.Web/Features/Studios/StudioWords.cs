namespace ShopFit.Web.Features.Studios;

/// <summary>Names the words of the studios' pages: <c>StudioWords.resx</c>.</summary>
public sealed class StudioWords;
