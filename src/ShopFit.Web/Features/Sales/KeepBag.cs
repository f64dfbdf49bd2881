using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

/// <summary>Keeps what is in a bag so far, so that a reload or another tablet goes on from there.</summary>
public sealed class KeepBag(ShopWrites writes, TimeProvider clock)
{
    /// <summary>Most different things in one bag; a receipt of so many lines still reads.</summary>
    public const int MostThings = 200;

    public Task<KeepBagOutcome> RunAsync(Actor actor, Guid commandId, KeptBag bag, CancellationToken cancellationToken) =>
        writes.RunAsync<KeepBagOutcome>(actor, commandId, nameof(KeepBag), async (db, stop) =>
        {
            if (bag.Wish.Discount is { Code.Length: > AskedDiscount.LongestCode } or { Value: < 0 or > SellFittingRequest.MostMinor })
            {
                return new KeepBagOutcome.Invalid(SellProblem.DiscountOutOfRange);
            }

            if (bag.Wish.Extras.Count > MostThings || bag.Wish.Extras.Any(thing => thing.Quantity is < 1 or > SellFittingRequest.MostPieces))
            {
                return new KeepBagOutcome.Invalid(SellProblem.Quantity);
            }

            var ids = bag.Wish.Extras.Select(thing => thing.ItemId).Distinct().ToList();
            if (await db.Items.CountAsync(item => ids.Contains(item.Id) && item.Category != ItemCategories.Shoes, stop) < ids.Count)
            {
                return new KeepBagOutcome.Invalid(SellProblem.ItemMissing);
            }

            if (bag.DancerId is { } dancerId && !await db.Dancers.AnyAsync(dancer => dancer.Id == dancerId, stop))
            {
                return new KeepBagOutcome.Invalid(SellProblem.DancerMissing);
            }

            var now = clock.GetUtcNow();
            var draft = await db.SaleDrafts.AsNoTracking().SingleOrDefaultAsync(row => row.Id == bag.DraftId, stop);
            if (draft?.SaleId is { } saleId)
            {
                return new KeepBagOutcome.Sold(saleId);
            }

            if (draft is null)
            {
                db.SaleDrafts.Add(SaleDraft.Of(bag.DraftId, actor, now));
            }

            db.SaleDraftBags.Add(SaleDraftBag.Of(commandId, actor, now, bag));
            return new KeepBagOutcome.Kept();
        }, cancellationToken);
}

/// <summary>What a bag holds, and for whom.</summary>
/// <param name="DraftId">Key of the bag; it stands in the address of its page.</param>
/// <param name="Wish">What is in it, and the discount.</param>
/// <param name="DancerId">For whom; null where it matters to nobody.</param>
public sealed record KeptBag(Guid DraftId, BagWish Wish, Guid? DancerId = null);

/// <summary>How keeping a bag ended.</summary>
[JsonDerivedType(typeof(Kept), "kept")]
[JsonDerivedType(typeof(Sold), "sold")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record KeepBagOutcome
{
    private KeepBagOutcome()
    {
    }

    /// <summary>It is kept.</summary>
    public sealed record Kept : KeepBagOutcome;

    /// <summary>It was sold before, perhaps on another tablet.</summary>
    public sealed record Sold(Guid SaleId) : KeepBagOutcome, IRefusal;

    /// <summary>Something in it cannot be sold like this.</summary>
    public sealed record Invalid(SellProblem Problem) : KeepBagOutcome, IRefusal;
}
