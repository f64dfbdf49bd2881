namespace ShopFit.Web.Features.Sales;

/// <summary>A sale at a fitting that was taken back.</summary>
/// <param name="SaleId">The sale.</param>
/// <param name="SoldAt">When it was made, by the shop's clock.</param>
/// <param name="At">When it was taken back, by the shop's clock.</param>
/// <param name="Reason">Why.</param>
public sealed record TakenBack(Guid SaleId, string SoldAt, string At, string Reason);
