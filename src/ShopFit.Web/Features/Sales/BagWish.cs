namespace ShopFit.Web.Features.Sales;

/// <summary>What is wanted in the bag beside the shoes, and the discount that is asked for.</summary>
public sealed record BagWish(IReadOnlyList<SaleExtra> Extras, AskedDiscount? Discount)
{
    /// <summary>Nothing yet.</summary>
    public static BagWish Empty { get; } = new([], null);

    /// <summary>How many of a thing are wanted.</summary>
    public int CountOf(Guid itemId) => Extras.Where(extra => extra.ItemId == itemId).Sum(extra => extra.Quantity);

    /// <summary>The same with so many of a thing.</summary>
    public BagWish With(Guid itemId, int count) => this with
    {
        Extras = [.. Extras.Where(extra => extra.ItemId != itemId), .. count > 0 ? new[] { new SaleExtra(itemId, count) } : []],
    };
}
