namespace ShopFit.Web.Features.Sales;

/// <summary>Names the words of the sales page: <c>SalesWords.resx</c>.</summary>
public sealed class SalesWords;
