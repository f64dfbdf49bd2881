namespace ShopFit.Web.Features.Sales;

/// <summary>Names the words of a sale without a fitting: <c>NewSaleWords.resx</c>.</summary>
public sealed class NewSaleWords;
