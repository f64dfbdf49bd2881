using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

/// <summary>Sells what needs no fitting: ribbon, elastic, thread, pads, sewing.</summary>
/// <remarks>All of it is one transaction: the shelf goes down and the sale stands, or neither happens.</remarks>
public sealed class SellGoods(ShopWrites writes, TimeProvider clock)
{
    public Task<SellGoodsOutcome> RunAsync(Actor actor, Guid commandId, SellGoodsRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<SellGoodsOutcome>(actor, commandId, nameof(SellGoods), async (db, stop) =>
        {
            if (request.Things.Count == 0)
            {
                return new SellGoodsOutcome.Invalid(SellProblem.BagEmpty);
            }

            if (request.DraftId is { } draftId && await db.SaleDrafts.Where(row => row.Id == draftId).Select(row => row.SaleId).SingleOrDefaultAsync(stop) is { } soldBefore)
            {
                return new SellGoodsOutcome.AlreadySold(soldBefore);
            }

            var dancer = request.DancerId is null ? null : await db.Dancers.AsNoTracking().SingleOrDefaultAsync(row => row.Id == request.DancerId, stop);
            if (request.DancerId is not null && dancer is null)
            {
                return new SellGoodsOutcome.Invalid(SellProblem.DancerMissing);
            }

            var now = clock.GetUtcNow();
            var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == actor.ShopId, stop);
            var bag = await SaleBag.PackAsync(db, actor, shop, now, request.Things, request.Discount, stop);
            if (bag.Refused is not null)
            {
                return Invalid(bag.Refused);
            }

            if (bag.Lines.FirstOrDefault(line => line.Item.Category == ItemCategories.Shoes) is { } shoes)
            {
                return new SellGoodsOutcome.Invalid(SellProblem.ShoesNeedFitting, shoes.Item.Code);
            }

            var entry = await SaleBook.EnterAsync(db, new SaleMoment(actor, commandId, shop, now, dancer), bag, request.Discount, stop);
            switch (entry)
            {
                case { Refused: { } refused }:
                    return Invalid(refused);
                case { Gone.Item: { } gone }:
                    return new SellGoodsOutcome.Gone(gone.Code, gone.Name);
            }

            // The row of the sale must stand before the draft can point to it.
            await db.SaveChangesAsync(stop);
            await db.SaleDrafts.Where(row => row.Id == request.DraftId).ExecuteUpdateAsync(row => row.SetProperty(draft => draft.SaleId, entry.SaleId), stop);
            return new SellGoodsOutcome.Sold(entry.SaleId, entry.ReceiptPaperId);
        }, cancellationToken);

    private static SellGoodsOutcome.Invalid Invalid(BagRefusal refusal) => new(refusal.Problem, refusal.About, refusal.Day, refusal.Bound);
}

/// <summary>What is sold without a fitting.</summary>
/// <param name="Things">What, and how many.</param>
/// <param name="Discount">The discount that is asked for; null for none.</param>
/// <param name="DancerId">For whom; null where it matters to nobody.</param>
/// <param name="DraftId">The bag that they were kept in, which is sold once; null where there was none.</param>
public sealed record SellGoodsRequest(IReadOnlyList<SaleExtra> Things, AskedDiscount? Discount = null, Guid? DancerId = null, Guid? DraftId = null);

/// <summary>How selling without a fitting ended.</summary>
[JsonDerivedType(typeof(Sold), "sold")]
[JsonDerivedType(typeof(Gone), "gone")]
[JsonDerivedType(typeof(AlreadySold), "already-sold")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record SellGoodsOutcome
{
    private SellGoodsOutcome()
    {
    }

    /// <summary>Sold and taken off the shelf.</summary>
    public sealed record Sold(Guid SaleId, Guid ReceiptPaperId) : SellGoodsOutcome;

    /// <summary>There is not enough of something: somebody else took it. Nothing was changed.</summary>
    public sealed record Gone(string Code, string Name) : SellGoodsOutcome, IRefusal;

    /// <summary>This bag was sold before, perhaps on another tablet. Nothing was changed.</summary>
    public sealed record AlreadySold(Guid SaleId) : SellGoodsOutcome, IRefusal;

    /// <summary>Something about the request cannot be.</summary>
    /// <param name="Problem">What.</param>
    /// <param name="About">Code of what it is about.</param>
    /// <param name="Day">The day on which a voucher begins, or on which it ended.</param>
    /// <param name="Bound">The amount that would have to be reached, or not gone over.</param>
    public sealed record Invalid(SellProblem Problem, string About = "", DateOnly? Day = null, Money? Bound = null) : SellGoodsOutcome, IRefusal;
}
