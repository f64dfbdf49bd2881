namespace ShopFit.Web.Features.Sales;

/// <summary>Names the words of the page of one sale: <c>SalePageWords.resx</c>.</summary>
public sealed class SalePageWords;
