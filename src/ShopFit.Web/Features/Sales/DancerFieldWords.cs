namespace ShopFit.Web.Features.Sales;

/// <summary>Names the words of the field for whom something is sold: <c>DancerFieldWords.resx</c>.</summary>
public sealed class DancerFieldWords;
