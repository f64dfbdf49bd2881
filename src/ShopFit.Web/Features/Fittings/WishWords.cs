namespace ShopFit.Web.Features.Fittings;

/// <summary>The words of days to come back on, and until which a pair is wished for.</summary>
public sealed class WishWords;
