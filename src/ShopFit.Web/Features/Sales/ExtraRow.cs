namespace ShopFit.Web.Features.Sales;

/// <summary>Something that may go into the bag.</summary>
public sealed record ExtraRow(Guid ItemId, string Code, string? Gtin, string Name, Money Price);

/// <summary>All that may go into the bag.</summary>
/// <param name="Currency">ISO 4217 code of the prices.</param>
/// <param name="Things">What.</param>
public sealed record BagOffer(string Currency, IReadOnlyList<ExtraRow> Things);
