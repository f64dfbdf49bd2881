namespace ShopFit.Web.Features.Sales;

/// <summary>A bag with its price.</summary>
public sealed record PricedBag(IReadOnlyList<PricedLine> Lines, Money Total);

/// <summary>One line of a bag.</summary>
public sealed record PricedLine(string Name, int Quantity, Money Total);
