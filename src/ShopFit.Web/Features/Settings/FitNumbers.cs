using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Settings;

/// <summary>The fit numbers of the shop: the standard ones, and over them what the shop has changed.</summary>
public sealed class FitNumbers(ShopContexts contexts)
{
    /// <summary>The numbers in force now.</summary>
    public async Task<FitDefaults> SeeAsync(CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        return Over(await db.Shops.Where(shop => shop.Id == db.ShopId).Select(shop => shop.FitOverridesJson).SingleAsync(cancellationToken)).Numbers;
    }

    /// <summary>The standard numbers with the kept ones over them. A kept one that makes no sense stays at its default, and is told.</summary>
    internal static AdjustedNumbers Over(string? overridesJson)
    {
        var own = OwnFitNumbers.Read(overridesJson);
        var adjusted = AdjustableNumbers.Over(own.Values);
        return own.Problems.Count == 0 ? adjusted : adjusted with { Problems = [.. own.Problems, .. adjusted.Problems] };
    }
}
