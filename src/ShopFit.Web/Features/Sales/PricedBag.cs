namespace ShopFit.Web.Features.Sales;

/// <summary>A bag with its price.</summary>
/// <param name="Lines">What is in it.</param>
/// <param name="Discount">Taken off; 0 where nothing is.</param>
/// <param name="Total">What is to be paid, tax included.</param>
public sealed record PricedBag(IReadOnlyList<PricedLine> Lines, Money Discount, Money Total);

/// <summary>One line of a bag.</summary>
public sealed record PricedLine(string Name, int Quantity, Money Total);

/// <summary>A bag with its price, or why it has none.</summary>
/// <param name="Bag">The priced bag; null where it cannot be sold like this.</param>
/// <param name="Refused">Why it cannot; null where it can.</param>
public sealed record BagPrice(PricedBag? Bag, SellFittingOutcome.Invalid? Refused);
