namespace ShopFit.Web.Features.Sales;

/// <summary>Names the words of the bag and of selling it: <c>BagWords.resx</c>.</summary>
public sealed class BagWords;
