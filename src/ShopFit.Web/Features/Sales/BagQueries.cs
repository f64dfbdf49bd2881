using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Sales;

/// <summary>What can go into a bag, and what a bag comes to. Reads only.</summary>
public sealed class BagQueries(ShopContexts contexts, CurrentActor currentActor, CatalogueQueries catalogue, TimeProvider clock)
{
    /// <summary>What may be put in beside the shoes, by kind and name.</summary>
    /// <param name="withPads">Whether pads are among it; at a fitting they go with the pair.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<BagOffer> OfferAsync(bool withPads, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var currency = await db.Shops.Where(row => row.Id == db.ShopId).Select(row => row.Currency).SingleAsync(cancellationToken);
        var items = await db.Items.AsNoTracking()
            .Where(item => item.Category != ItemCategories.Shoes && (withPads || item.PadId == null) && item.PriceMinor != null)
            .OrderBy(item => item.Category).ThenBy(item => item.Name)
            .ToListAsync(cancellationToken);
        return new BagOffer(currency, [.. items.Select(item => new ExtraRow(item.Id, item.Code, item.Gtin, item.Name, new Money(item.PriceMinor!.Value, currency)))]);
    }

    /// <summary>The sale of a fitting that was taken back last; null where none was.</summary>
    public async Task<TakenBack?> TakenBackAsync(Guid fittingId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var sale = await db.Sales.AsNoTracking().Where(row => row.FittingId == fittingId && row.VoidedAt != null).OrderByDescending(row => row.VoidedAt).FirstOrDefaultAsync(cancellationToken);
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        return sale is null ? null : new TakenBack(sale.Id, ShopTime.Of(shop).Clock(sale.SoldAt), ShopTime.Of(shop).Clock(sale.VoidedAt!.Value), sale.VoidReason);
    }

    /// <summary>A bag as it was kept last; null where nothing was put in yet.</summary>
    public async Task<SeenBag?> SeeAsync(Guid draftId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        if (await db.SaleDrafts.AsNoTracking().SingleOrDefaultAsync(row => row.Id == draftId, cancellationToken) is not { } draft)
        {
            return null;
        }

        var kept = (await db.SaleDraftBags.AsNoTracking().Where(row => row.DraftId == draftId)
            .OrderByDescending(row => row.KeptAt).ThenByDescending(row => row.Id).FirstAsync(cancellationToken)).Kept();
        return new SeenBag(kept.Wish, kept.DancerId, kept.DancerId is null ? "" : await db.Dancers.Where(row => row.Id == kept.DancerId).Select(row => row.Name).SingleAsync(cancellationToken), draft.SaleId);
    }

    /// <summary>Bags with something in them that were begun on the shop's day of that moment and are not sold yet, the latest first.</summary>
    public async Task<IReadOnlyList<WaitingBag>> WaitingAsync(DateTimeOffset moment, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var time = ShopTime.Of(await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken));
        var (morning, night) = (time.Start(time.Day(moment)), time.Start(time.Day(moment).AddDays(1)));
        var bags = await (
            from draft in db.SaleDrafts
            from bag in db.SaleDraftBags.Where(row => row.DraftId == draft.Id).OrderByDescending(row => row.KeptAt).ThenByDescending(row => row.Id).Take(1)
            where draft.SaleId == null && draft.OpenedAt >= morning && draft.OpenedAt < night && bag.ThingsJson != "[]"
            orderby draft.OpenedAt descending
            select new { Bag = bag, Dancer = db.Dancers.Where(dancer => dancer.Id == bag.DancerId).Select(dancer => dancer.Name).FirstOrDefault() }).AsNoTracking().ToListAsync(cancellationToken);
        return [.. bags.Select(row => new WaitingBag(row.Bag.DraftId, time.Clock(row.Bag.KeptAt), row.Dancer ?? "", row.Bag.Kept().Wish.Extras.Sum(thing => thing.Quantity)))];
    }

    /// <summary>What a code that was scanned or typed stands for: the shop's own, or a GTIN; null where nothing has it.</summary>
    public async Task<FoundThing?> FindAsync(string code, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var typed = code.Trim();
        var pattern = typed.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("%", "\\%", StringComparison.Ordinal).Replace("_", "\\_", StringComparison.Ordinal);
        var item = await db.Items.AsNoTracking().Where(row => row.Code == typed || row.Gtin == typed || EF.Functions.Like(row.Code, pattern, "\\"))
            .OrderByDescending(row => row.Code == typed).FirstOrDefaultAsync(cancellationToken);
        return item switch
        {
            null => null,
            { Category: ItemCategories.Shoes } => new FoundThing.Shoes(),
            { PriceMinor: null } => new FoundThing.WithoutPrice(),
            _ => new FoundThing.Thing(item.Id),
        };
    }

    /// <summary>What the bag of a fitting comes to, tax and all, just as selling it would count.</summary>
    public async Task<BagPrice> PriceAsync(SellFittingRequest request, CancellationToken cancellationToken)
    {
        var actor = await currentActor.GetAsync();
        var pair = (await catalogue.ShoesOnFileAsync(cancellationToken)).Find(request.SizeId);
        await using var db = await contexts.OpenAsync(cancellationToken);
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        return pair is null
            ? new BagPrice(null, new SellFittingOutcome.Invalid(SellProblem.PairMissing))
            : PriceOf(await SaleBag.PackAsync(db, actor, shop, clock.GetUtcNow(), pair, request, cancellationToken), shop.Currency);
    }

    /// <summary>What any things come to.</summary>
    public async Task<BagPrice> PriceAsync(IReadOnlyList<SaleExtra> things, AskedDiscount? discount, CancellationToken cancellationToken)
    {
        var actor = await currentActor.GetAsync();
        await using var db = await contexts.OpenAsync(cancellationToken);
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        return PriceOf(await SaleBag.PackAsync(db, actor, shop, clock.GetUtcNow(), things, discount, cancellationToken), shop.Currency);
    }

    private static BagPrice PriceOf(SaleBag bag, string currency) => bag.Refused is { } refused
        ? new BagPrice(null, new SellFittingOutcome.Invalid(refused.Problem, refused.About, refused.Day, refused.Bound))
        : new BagPrice(
            new PricedBag(
                [.. bag.Lines.Select(line => new PricedLine(line.Item.Name, line.Quantity, new Money(line.Amount.TotalMinor, currency)))],
                new Money(bag.DiscountMinor, currency),
                new Money(bag.TotalMinor, currency)),
            null);
}
