using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Sales;

/// <summary>Key of the one sale that a fitter makes at a fitting: a reload, a second tap and a second tablet are the same sale.</summary>
/// <remarks>Another fitter has another key, since a command answers only whoever gave it; that fitter finds the fitting closed.</remarks>
public static class SaleKey
{
    public static Guid Of(Guid fittingId, Guid personId) => NamedKey.Of(fittingId, $"{nameof(SellFitting)} {personId:N}");
}
