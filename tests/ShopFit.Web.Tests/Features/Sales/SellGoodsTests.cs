using Microsoft.EntityFrameworkCore;

namespace ShopFit.Web.Features.Sales;

public sealed class SellGoodsTests : IAsyncLifetime
{
    private SellingShop _selling = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _selling = await SellingShop.OpenAsync();

    public ValueTask DisposeAsync() => _selling.DisposeAsync();

    [Fact]
    public async Task Ribbon_is_sold_without_a_fitting_once_for_each_command()
    {
        var commandId = Guid.CreateVersion7();

        var sold = Assert.IsType<SellGoodsOutcome.Sold>(await _selling.SellGoodsAsync([new(_selling.Ribbon.Id, 2), new(_selling.Sewing.Id, 1)], commandId: commandId));
        Assert.Equal(sold, await _selling.SellGoodsAsync([new(_selling.Ribbon.Id, 2), new(_selling.Sewing.Id, 1)], commandId: commandId));

        Assert.Equal(3, await _selling.OnHandAsync("R-1"));
        await using var db = _selling.Shop.CreateDbContext();
        var sale = await db.Sales.SingleAsync(Stop);
        Assert.Equal((sold.SaleId, 2_460L, (Guid?)null, (Guid?)null), (sale.Id, sale.TotalMinor, sale.FittingId, sale.DancerId));
    }

    [Fact]
    public async Task Shoes_want_a_fitting_and_nothing_is_no_sale()
    {
        var shoes = (await _selling.RequestAsync("J-38")).SizeId;

        Assert.Equal(new SellGoodsOutcome.Invalid(SellProblem.ShoesNeedFitting, "J-38"), await _selling.SellGoodsAsync([new(shoes, 1)]));
        Assert.Equal(new SellGoodsOutcome.Invalid(SellProblem.BagEmpty), await _selling.SellGoodsAsync([]));
        Assert.Equal(new SellGoodsOutcome.Invalid(SellProblem.Quantity), await _selling.SellGoodsAsync([new(_selling.Ribbon.Id, -1)]));
        Assert.Equal(new SellGoodsOutcome.Invalid(SellProblem.DancerMissing), await _selling.SellGoods.RunAsync(
            _selling.Shop.Fitter, Guid.CreateVersion7(), new([new(_selling.Ribbon.Id, 1)], DancerId: Guid.CreateVersion7()), Stop));
        Assert.Equal((0, 0, 0, 0, 0, 0, 0), await _selling.RowsAsync());
    }

    [Fact]
    public async Task Two_tablets_cannot_sell_the_last_pieces_twice()
    {
        Task<SellGoodsOutcome> SellAsync() => _selling.SellGoodsAsync([new(_selling.Ribbon.Id, 3)]);

        var outcomes = SellingShop.AtOnce(SellAsync, SellAsync, SellAsync);

        Assert.Single(outcomes.OfType<SellGoodsOutcome.Sold>());
        Assert.Equal(2, outcomes.OfType<SellGoodsOutcome.Gone>().Count());
        Assert.Equal(2, await _selling.OnHandAsync("R-1"));
    }

    [Fact]
    public async Task Receipts_are_numbered_without_a_gap_in_each_year_whatever_is_refused()
    {
        Task<SellGoodsOutcome> SellAsync(int pieces) => _selling.SellGoodsAsync([new(_selling.Ribbon.Id, pieces)]);
        SellingShop.AtOnce(() => SellAsync(1), () => SellAsync(9), () => SellAsync(1), () => SellAsync(0));
        _selling.Shop.Clock.SetUtcNow(new DateTimeOffset(2027, 1, 2, 10, 0, 0, TimeSpan.Zero));
        await SellAsync(1);

        await using var db = _selling.Shop.CreateDbContext();
        Assert.Equal([(2026, 1), (2026, 2), (2027, 1)], (await db.SaleReceipts.OrderBy(row => row.Year).ThenBy(row => row.Number).ToListAsync(Stop)).Select(row => (row.Year, row.Number)));
    }
}
