namespace ShopFit.Web.Features.Catalogue;

/// <summary>Names the words of the catalogue's pages: <c>CataloguePageWords.resx</c>.</summary>
public sealed class CataloguePageWords;
