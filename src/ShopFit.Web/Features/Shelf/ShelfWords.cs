namespace ShopFit.Web.Features.Shelf;

/// <summary>Names the words of the shelf's pages: <c>ShelfWords.resx</c>.</summary>
public sealed class ShelfWords;
