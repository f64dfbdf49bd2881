namespace ShopFit.Web.App;

/// <summary>Names the words of the frame around every page: <c>ShopWords.resx</c>.</summary>
public sealed class ShopWords;
