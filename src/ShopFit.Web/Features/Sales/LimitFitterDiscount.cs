using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

/// <summary>Sets how much of a bag a fitter may take off without a manager. Only managers do; vouchers have terms of their own.</summary>
public sealed class LimitFitterDiscount(ShopWrites writes)
{
    public Task<LimitFitterDiscountOutcome> RunAsync(Actor actor, Guid commandId, int basisPoints, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<LimitFitterDiscountOutcome>(actor, commandId, nameof(LimitFitterDiscount), async (db, stop) =>
        {
            if (basisPoints is < 0 or > LineAmount.WholeInBasisPoints)
            {
                return new LimitFitterDiscountOutcome.OutOfRange();
            }

            (await db.Shops.SingleAsync(row => row.Id == actor.ShopId, stop)).LimitFitterDiscount(basisPoints);
            return new LimitFitterDiscountOutcome.Limited();
        }, cancellationToken);
}

/// <summary>How setting the limit ended.</summary>
[JsonDerivedType(typeof(Limited), "limited")]
[JsonDerivedType(typeof(OutOfRange), "out-of-range")]
public abstract record LimitFitterDiscountOutcome
{
    private LimitFitterDiscountOutcome()
    {
    }

    /// <summary>It holds from now on.</summary>
    public sealed record Limited : LimitFitterDiscountOutcome;

    /// <summary>It is not between 0 and 100 %.</summary>
    public sealed record OutOfRange : LimitFitterDiscountOutcome, IRefusal;
}
