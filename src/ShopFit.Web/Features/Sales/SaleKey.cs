using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Sales;

/// <summary>Key of the one sale that a fitter makes at a fitting: a reload, a second tap and a second tablet are the same sale.</summary>
/// <remarks>
/// Another fitter has another key, since a command answers only whoever gave it; that fitter finds the fitting closed. When a
/// sale was taken back the fitting is open again, and its next sale is another one.
/// </remarks>
public static class SaleKey
{
    /// <param name="fittingId">At which fitting.</param>
    /// <param name="personId">Who sells.</param>
    /// <param name="timesReopened">How often the fitting was opened again.</param>
    public static Guid Of(Guid fittingId, Guid personId, int timesReopened) => NamedKey.Of(fittingId, $"{nameof(SellFitting)} {personId:N} {timesReopened}");
}
