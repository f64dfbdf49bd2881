using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Feet;
using ShopFit.Sheets.Receipts;
using ShopFit.Web.Features.Fittings;

namespace ShopFit.Web.Features.Sales;

public sealed class TakingBackTests : IAsyncLifetime
{
    private SellingShop _selling = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _selling = await SellingShop.OpenAsync();

    public ValueTask DisposeAsync() => _selling.DisposeAsync();

    [Fact]
    public async Task A_void_puts_stock_and_voucher_back_and_opens_the_fitting_again()
    {
        await _selling.HasVoucherAsync("ONCE", uses: 1);
        var sale = await SellAsync(AskedDiscount.Voucher("ONCE"));

        var voided = Assert.IsType<VoidSaleOutcome.Voided>(await _selling.VoidAsync(sale, reason: " The wrong size "));

        Assert.Equal((1, 5, 5), (await _selling.OnHandAsync("W-38"), await _selling.OnHandAsync("P-1"), await _selling.OnHandAsync("R-1")));
        await using var db = _selling.Shop.CreateDbContext();
        var row = await db.Sales.SingleAsync(Stop);
        var ledger = await db.LedgerLines.Where(line => line.SaleId == sale).ToListAsync(Stop);
        Assert.Equal(("The wrong size", _selling.Shop.Fitter.PersonId, _selling.Shop.Clock.GetUtcNow()), (row.VoidReason, row.VoidedBy, row.VoidedAt));
        Assert.All(ledger.GroupBy(line => (line.ItemId, line.PlaceId)), place => Assert.Equal(0, place.Sum(line => line.Change)));
        Assert.Equal(3, ledger.Count(line => line.Reason == "taken-back"));
        Assert.Equal(0, (await db.Vouchers.SingleAsync(Stop)).Used);
        var fitting = await db.Fittings.SingleAsync(one => one.Id == _selling.FittingId, Stop);
        Assert.Equal((true, 1), (fitting.IsDraft, fitting.TimesReopened));
        Assert.NotNull((await db.FittingDecisions.SingleAsync(Stop)).WithdrawnAt);
        var receipt = JsonSerializer.Deserialize<Receipt>((await db.Papers.SingleAsync(paper => paper.Id == voided.ReceiptPaperId, Stop)).FactsJson)!;
        Assert.Equal((ReceiptKind.Void, "2026-000002", "2026-000001", "The wrong size"), (receipt.Kind, receipt.Number, receipt.OfNumber, receipt.Reason));
        Assert.Equal("-" + new Money(row.TotalMinor, "EUR"), receipt.Total);
    }

    [Fact]
    public async Task After_a_void_the_fitting_can_be_sold_again_under_its_next_key()
    {
        var request = await _selling.RequestAsync("W-38");
        var person = _selling.Shop.Fitter.PersonId;
        var first = Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(request, SaleKey.Of(_selling.FittingId, person, 0)));
        await _selling.VoidAsync(first.SaleId);

        // A tablet that has not looked since gets the first sale's answer and sells nothing.
        Assert.Equal(first, await _selling.SellAsync(request, SaleKey.Of(_selling.FittingId, person, 0)));
        Assert.Equal(1, await _selling.OnHandAsync("W-38"));
        var second = Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(request, SaleKey.Of(_selling.FittingId, person, 1)));

        Assert.NotEqual(first.SaleId, second.SaleId);
        var seen = await new FittingQueries(_selling.Shop.Reads).SeeAsync(_selling.FittingId, Stop);
        Assert.Equal((second.PaperId, 1), (seen!.Decision!.PaperId!.Value, seen.TimesReopened));
    }

    [Fact]
    public async Task A_void_happens_once_and_a_replay_gets_its_answer()
    {
        var sale = await SellAsync();
        var commandId = Guid.CreateVersion7();

        var first = await _selling.VoidAsync(sale, commandId);

        Assert.Equal(first, await _selling.VoidAsync(sale, commandId));
        Assert.Equal(new VoidSaleOutcome.Refused(VoidProblem.Already), await _selling.VoidAsync(sale));
        Assert.Equal(1, await _selling.OnHandAsync("W-38"));
    }

    [Fact]
    public async Task Two_tablets_void_a_sale_once()
    {
        var sale = await SellAsync();

        var outcomes = SellingShop.AtOnce(() => _selling.VoidAsync(sale), () => _selling.VoidAsync(sale), () => _selling.VoidAsync(sale));

        Assert.Single(outcomes.OfType<VoidSaleOutcome.Voided>());
        Assert.Equal((1, 5), (await _selling.OnHandAsync("W-38"), await _selling.OnHandAsync("R-1")));
    }

    [Fact]
    public async Task Of_a_return_and_a_void_at_once_one_happens()
    {
        var sale = await SellAsync();
        var ribbon = (await _selling.LineAsync(sale, "R-1")).Id;

        var outcomes = SellingShop.AtOnce<object>(
            async () => await _selling.VoidAsync(sale),
            async () => await _selling.ReturnAsync(sale, [new(ribbon, 2, AsNew: true)]));

        Assert.Single(outcomes, outcome => outcome is VoidSaleOutcome.Voided or ReturnGoodsOutcome.Returned);
        Assert.Equal(5, await _selling.OnHandAsync("R-1"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public async Task A_void_wants_a_reason(string reason) =>
        Assert.Equal(new VoidSaleOutcome.Refused(VoidProblem.Reason), await _selling.VoidAsync(await SellAsync(), reason: reason));

    [Fact]
    public async Task A_void_is_for_the_day_and_a_return_for_the_shops_days()
    {
        var sale = await SellAsync();
        var ribbon = (await _selling.LineAsync(sale, "R-1")).Id;
        _selling.Shop.Clock.Advance(TimeSpan.FromDays(1));
        Assert.Equal(new VoidSaleOutcome.Refused(VoidProblem.AnotherDay), await _selling.VoidAsync(sale));

        // Sold on 14 March with 14 days: the 28th is the last, as the receipt says.
        _selling.Shop.Clock.SetUtcNow(new DateTimeOffset(2026, 3, 28, 23, 0, 0, TimeSpan.Zero));
        Assert.IsType<ReturnGoodsOutcome.Returned>(await _selling.ReturnAsync(sale, [new(ribbon, 1, AsNew: true)]));
        _selling.Shop.Clock.Advance(TimeSpan.FromHours(2));
        Assert.Equal(new ReturnGoodsOutcome.Refused(ReturnProblem.TooLate), await _selling.ReturnAsync(sale, [new(ribbon, 1, AsNew: true)]));
    }

    [Fact]
    public async Task Goods_come_back_piece_by_piece_and_never_more_than_were_sold()
    {
        var sale = await SellAsync();
        var ribbon = await _selling.LineAsync(sale, "R-1");
        var commandId = Guid.CreateVersion7();

        var first = Assert.IsType<ReturnGoodsOutcome.Returned>(await _selling.ReturnAsync(sale, [new(ribbon.Id, 1, AsNew: true)], commandId));
        Assert.Equal(first, await _selling.ReturnAsync(sale, [new(ribbon.Id, 1, AsNew: true)], commandId));
        Assert.Equal(4, await _selling.OnHandAsync("R-1"));
        Assert.Equal(new ReturnGoodsOutcome.Refused(ReturnProblem.MoreThanSold, "Satin ribbon"), await _selling.ReturnAsync(sale, [new(ribbon.Id, 2, AsNew: true)]));
        Assert.IsType<ReturnGoodsOutcome.Returned>(await _selling.ReturnAsync(sale, [new(ribbon.Id, 1, AsNew: true)]));
        Assert.Equal(new VoidSaleOutcome.Refused(VoidProblem.PartReturned), await _selling.VoidAsync(sale));

        Assert.Equal(5, await _selling.OnHandAsync("R-1"));
        await using var db = _selling.Shop.CreateDbContext();
        Assert.Equal((2, 960L), ((await db.SaleLines.SingleAsync(line => line.Id == ribbon.Id, Stop)).ReturnedQuantity, await db.SaleReturns.SumAsync(one => one.TotalMinor, Stop)));
        var receipt = JsonSerializer.Deserialize<Receipt>((await db.Papers.SingleAsync(paper => paper.Id == first.ReceiptPaperId, Stop)).FactsJson)!;
        Assert.Equal((ReceiptKind.Return, "2026-000001", "-€4.80"), (receipt.Kind, receipt.OfNumber, receipt.Total));
    }

    [Fact]
    public async Task Two_tablets_cannot_take_the_same_line_back_twice()
    {
        var sale = await SellAsync();
        var shoes = (await _selling.LineAsync(sale, "W-38")).Id;
        Task<ReturnGoodsOutcome> ReturnAsync() => _selling.ReturnAsync(sale, [new(shoes, 1, AsNew: true)]);

        var outcomes = SellingShop.AtOnce(ReturnAsync, ReturnAsync, ReturnAsync);

        Assert.Single(outcomes.OfType<ReturnGoodsOutcome.Returned>());
        Assert.Equal(1, await _selling.OnHandAsync("W-38"));
    }

    [Theory]
    [InlineData("S-1", true, ReturnProblem.Work)]
    [InlineData("P-1", false, ReturnProblem.Opened)]
    [InlineData("W-38", false, ReturnProblem.Worn)]
    [InlineData("R-1", false, ReturnProblem.Used)]
    public async Task What_cannot_be_sold_again_stays_with_the_dancer(string code, bool asNew, ReturnProblem problem)
    {
        var sale = await SellAsync();
        var line = await _selling.LineAsync(sale, code);
        var rows = await _selling.RowsAsync();

        Assert.Equal(new ReturnGoodsOutcome.Refused(problem, line.Text), await _selling.ReturnAsync(sale, [new(line.Id, 1, asNew)]));
        Assert.Equal(rows, await _selling.RowsAsync());
    }

    [Fact]
    public async Task Nothing_unknown_and_nothing_of_a_void_sale_comes_back()
    {
        var sale = await SellAsync();
        var ribbon = (await _selling.LineAsync(sale, "R-1")).Id;

        Assert.Equal(new ReturnGoodsOutcome.Refused(ReturnProblem.Nothing), await _selling.ReturnAsync(sale, []));
        Assert.Equal(new ReturnGoodsOutcome.Refused(ReturnProblem.LineMissing), await _selling.ReturnAsync(sale, [new(Guid.CreateVersion7(), 1, AsNew: true)]));
        Assert.Equal(new ReturnGoodsOutcome.Refused(ReturnProblem.Missing), await _selling.ReturnAsync(Guid.CreateVersion7(), [new(ribbon, 1, AsNew: true)]));
        Assert.Equal(new ReturnGoodsOutcome.Refused(ReturnProblem.MoreThanSold, "Satin ribbon"), await _selling.ReturnAsync(sale, [new(ribbon, int.MaxValue, AsNew: true)]));
        await _selling.VoidAsync(sale);
        Assert.Equal(new ReturnGoodsOutcome.Refused(ReturnProblem.SaleTakenBack), await _selling.ReturnAsync(sale, [new(ribbon, 1, AsNew: true)]));
    }

    private async Task<Guid> SellAsync(AskedDiscount? discount = null)
    {
        var request = await _selling.RequestAsync("W-38", [new(Side.Left, "heel-cushion"), new(Side.Right, "heel-cushion")], [new(_selling.Ribbon.Id, 2), new(_selling.Sewing.Id, 1)]);
        return Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(request with { Discount = discount })).SaleId;
    }
}
