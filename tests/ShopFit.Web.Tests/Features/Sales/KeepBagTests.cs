using Microsoft.EntityFrameworkCore;

namespace ShopFit.Web.Features.Sales;

public sealed class KeepBagTests : IAsyncLifetime
{
    private readonly Guid _draft = Guid.CreateVersion7();
    private SellingShop _selling = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _selling = await SellingShop.OpenAsync();

    public ValueTask DisposeAsync() => _selling.DisposeAsync();

    [Fact]
    public async Task The_newest_bag_holds_and_the_older_ones_stay_on_record()
    {
        await KeepAsync(BagWish.Empty.With(_selling.Ribbon.Id, 1));
        _selling.Shop.Clock.Advance(TimeSpan.FromSeconds(1));
        await KeepAsync(BagWish.Empty.With(_selling.Ribbon.Id, 3) with { Discount = AskedDiscount.Percent(500) });

        var seen = await SeeAsync();

        Assert.Equal((3, AskedDiscount.Percent(500), null), (seen!.Wish.CountOf(_selling.Ribbon.Id), seen.Wish.Discount, seen.SaleId));
        await using var db = _selling.Shop.CreateDbContext();
        Assert.Equal((1, 2), (await db.SaleDrafts.CountAsync(Stop), await db.SaleDraftBags.CountAsync(Stop)));
    }

    [Fact]
    public async Task Nothing_that_cannot_be_sold_is_kept()
    {
        await using var db = _selling.Shop.CreateDbContext();
        var shoes = await db.Items.Where(item => item.Code == "W-38").Select(item => item.Id).SingleAsync(Stop);

        Assert.Equal(new KeepBagOutcome.Invalid(SellProblem.Quantity), await KeepAsync(BagWish.Empty.With(_selling.Ribbon.Id, SellFittingRequest.MostPieces + 1)));
        Assert.Equal(new KeepBagOutcome.Invalid(SellProblem.Quantity), await KeepAsync(new BagWish([new(_selling.Ribbon.Id, -1)], null)));
        Assert.Equal(new KeepBagOutcome.Invalid(SellProblem.ItemMissing), await KeepAsync(BagWish.Empty.With(Guid.CreateVersion7(), 1)));
        Assert.Equal(new KeepBagOutcome.Invalid(SellProblem.ItemMissing), await KeepAsync(BagWish.Empty.With(shoes, 1)));
        Assert.Equal(new KeepBagOutcome.Invalid(SellProblem.DiscountOutOfRange), await KeepAsync(BagWish.Empty with { Discount = AskedDiscount.Voucher(new string('A', 41)) }));
        Assert.Equal(new KeepBagOutcome.Invalid(SellProblem.DancerMissing), await KeepAsync(BagWish.Empty, Guid.CreateVersion7()));
        Assert.Null(await SeeAsync());
    }

    [Fact]
    public async Task A_bag_is_sold_once_whoever_sells_it_and_takes_nothing_more()
    {
        await KeepAsync(BagWish.Empty.With(_selling.Ribbon.Id, 2));
        var request = new SellGoodsRequest([new(_selling.Ribbon.Id, 2)], DraftId: _draft);
        Task<SellGoodsOutcome> Sell(People.Actor actor) => _selling.SellGoods.RunAsync(actor, Guid.CreateVersion7(), request, Stop);

        var outcomes = SellingShop.AtOnce(() => Sell(_selling.Shop.Fitter), () => Sell(_selling.Shop.Manager), () => Sell(_selling.Shop.Fitter));

        var sold = Assert.Single(outcomes.OfType<SellGoodsOutcome.Sold>());
        Assert.Equal([new(sold.SaleId), new(sold.SaleId)], outcomes.OfType<SellGoodsOutcome.AlreadySold>());
        Assert.Equal(3, await _selling.OnHandAsync("R-1"));
        Assert.Equal(new KeepBagOutcome.Sold(sold.SaleId), await KeepAsync(BagWish.Empty.With(_selling.Ribbon.Id, 3)));
        Assert.Equal((2, sold.SaleId), ((await SeeAsync())!.Wish.CountOf(_selling.Ribbon.Id), (await SeeAsync())!.SaleId));
    }

    [Fact]
    public async Task A_bag_that_could_not_be_sold_waits_for_its_day_and_an_empty_one_does_not()
    {
        await KeepAsync(BagWish.Empty.With(_selling.Ribbon.Id, 9));
        Assert.IsType<SellGoodsOutcome.Gone>(await _selling.SellGoods.RunAsync(_selling.Shop.Fitter, Guid.CreateVersion7(), new SellGoodsRequest([new(_selling.Ribbon.Id, 9)], DraftId: _draft), Stop));

        var bags = new BagQueries(_selling.Shop.Reads, null!, null!, _selling.Shop.Clock);
        Assert.Equal([(_draft, 9)], (await bags.WaitingAsync(_selling.Shop.Clock.GetUtcNow(), Stop)).Select(bag => (bag.DraftId, bag.Pieces)));
        Assert.Empty(await bags.WaitingAsync(_selling.Shop.Clock.GetUtcNow().AddDays(1), Stop));
        _selling.Shop.Clock.Advance(TimeSpan.FromSeconds(1));
        await KeepAsync(BagWish.Empty);
        Assert.Empty(await bags.WaitingAsync(_selling.Shop.Clock.GetUtcNow(), Stop));
    }

    private Task<KeepBagOutcome> KeepAsync(BagWish wish, Guid? dancer = null) =>
        new KeepBag(_selling.Shop.Writes, _selling.Shop.Clock).RunAsync(_selling.Shop.Fitter, Guid.CreateVersion7(), new KeptBag(_draft, wish, dancer), Stop);

    private Task<SeenBag?> SeeAsync() => new BagQueries(_selling.Shop.Reads, null!, null!, _selling.Shop.Clock).SeeAsync(_draft, Stop);
}
