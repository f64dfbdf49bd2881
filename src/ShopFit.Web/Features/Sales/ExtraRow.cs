namespace ShopFit.Web.Features.Sales;

/// <summary>Something that may go into the bag.</summary>
public sealed record ExtraRow(Guid ItemId, string Name, Money Price);
