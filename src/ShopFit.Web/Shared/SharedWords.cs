namespace ShopFit.Web.Shared;

/// <summary>Names the words of the shared components: <c>SharedWords.resx</c>.</summary>
public sealed class SharedWords;
