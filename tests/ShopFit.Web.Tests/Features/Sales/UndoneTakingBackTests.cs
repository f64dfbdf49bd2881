using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Feet;
using ShopFit.Sheets.Receipts;
using ShopFit.Web.Features.Fittings;

namespace ShopFit.Web.Features.Sales;

public sealed class UndoneTakingBackTests : IAsyncLifetime
{
    private SellingShop _selling = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _selling = await SellingShop.OpenAsync();

    public ValueTask DisposeAsync() => _selling.DisposeAsync();

    [Fact]
    public async Task An_undone_void_leaves_stock_voucher_fitting_and_money_as_they_were_sold()
    {
        await _selling.HasVoucherAsync("ONCE", uses: 1);
        var sale = await SellAsync(AskedDiscount.Voucher("ONCE"));
        _selling.Shop.Clock.Advance(TimeSpan.FromMinutes(3));
        await _selling.VoidAsync(sale);
        _selling.Shop.Clock.Advance(TimeSpan.FromSeconds(9));

        var restored = Assert.IsType<RestoreSaleOutcome.Restored>(await RestoreAsync(sale));

        Assert.Equal((0, 4, 3), (await _selling.OnHandAsync("W-38"), await _selling.OnHandAsync("P-1"), await _selling.OnHandAsync("R-1")));
        await using var db = _selling.Shop.CreateDbContext();
        var row = await db.Sales.SingleAsync(Stop);
        var fitting = await db.Fittings.SingleAsync(one => one.Id == _selling.FittingId, Stop);
        Assert.Equal((null, ""), (row.VoidedAt, row.VoidReason));
        Assert.Equal(1, (await db.Vouchers.SingleAsync(Stop)).Used);
        Assert.Equal(row.SoldAt, fitting.ClosedAt);
        Assert.Null((await db.FittingDecisions.SingleAsync(Stop)).WithdrawnAt);

        // The ledger keeps all three: sold, taken back, undone.
        var ledger = await db.LedgerLines.Where(line => line.SaleId == sale).ToListAsync(Stop);
        Assert.Equal([3, 3, 3], ledger.GroupBy(line => line.Reason).Select(reason => reason.Count()));
        var receipts = await ReceiptsAsync();
        Assert.Equal([ReceiptKind.Sale, ReceiptKind.Void, ReceiptKind.Undone], receipts.Select(receipt => receipt.Kind));
        Assert.Equal(("2026-000003", "2026-000002"), (receipts[2].Number, receipts[2].OfNumber));
        Assert.Equal(new Money(row.TotalMinor, "EUR").ToString(), receipts[2].Total);
        Assert.Equal(restored.ReceiptPaperId, (await db.SaleReceipts.SingleAsync(one => one.Kind == ReceiptKinds.Undone, Stop)).PaperId);
    }

    [Fact]
    public async Task An_undone_void_can_be_followed_by_another()
    {
        var sale = await SellAsync();
        await _selling.VoidAsync(sale);
        _selling.Shop.Clock.Advance(TimeSpan.FromSeconds(5));
        Assert.IsType<RestoreSaleOutcome.Restored>(await RestoreAsync(sale));
        _selling.Shop.Clock.Advance(TimeSpan.FromSeconds(5));
        Assert.IsType<VoidSaleOutcome.Voided>(await _selling.VoidAsync(sale));
        Assert.Equal(1, await _selling.OnHandAsync("W-38"));
        _selling.Shop.Clock.Advance(TimeSpan.FromSeconds(5));

        Assert.IsType<RestoreSaleOutcome.Restored>(await RestoreAsync(sale));

        Assert.Equal((0, 3), (await _selling.OnHandAsync("W-38"), await _selling.OnHandAsync("R-1")));
        await using var db = _selling.Shop.CreateDbContext();
        Assert.Equal(2, await db.SaleReceipts.CountAsync(receipt => receipt.Kind == ReceiptKinds.Undone, Stop));
    }

    [Fact]
    public async Task A_void_is_undone_once_and_a_replay_gets_its_answer()
    {
        var sale = await SellAsync();
        await _selling.VoidAsync(sale);
        var commandId = Guid.CreateVersion7();

        var first = await RestoreAsync(sale, commandId);

        Assert.Equal(first, await RestoreAsync(sale, commandId));
        Assert.IsType<RestoreSaleOutcome.TooLate>(await RestoreAsync(sale));
        Assert.Equal(0, await _selling.OnHandAsync("W-38"));
    }

    [Fact]
    public async Task After_a_minute_a_void_lasts()
    {
        var sale = await SellAsync();
        await _selling.VoidAsync(sale);
        _selling.Shop.Clock.Advance(VoidSale.UndoneWithin + TimeSpan.FromSeconds(1));

        Assert.IsType<RestoreSaleOutcome.TooLate>(await RestoreAsync(sale));
        Assert.IsType<RestoreSaleOutcome.TooLate>(await RestoreAsync(Guid.CreateVersion7()));
        Assert.Equal(1, await _selling.OnHandAsync("W-38"));
    }

    [Fact]
    public async Task What_was_sold_to_somebody_else_meanwhile_is_not_sold_twice()
    {
        var sale = await SellAsync();
        await _selling.VoidAsync(sale);
        var other = await _selling.OpenFittingAsync(ageYears: 15);
        Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(await _selling.RequestAsync("W-38", fittingId: other)));
        var rows = await _selling.RowsAsync();

        Assert.IsType<RestoreSaleOutcome.TooLate>(await RestoreAsync(sale));

        Assert.Equal(rows, await _selling.RowsAsync());
        Assert.Equal((0, 5), (await _selling.OnHandAsync("W-38"), await _selling.OnHandAsync("R-1")));
    }

    [Fact]
    public async Task A_fitting_that_was_ended_otherwise_meanwhile_keeps_its_ending()
    {
        var sale = await SellAsync();
        await _selling.VoidAsync(sale);
        var decide = new DecideFitting(_selling.Shop.Writes, _selling.Shoes, _selling.Shop.Clock);
        Assert.IsType<DecideFittingOutcome.Decided>(await decide.RunAsync(
            _selling.Shop.Fitter, Guid.CreateVersion7(), new DecideFittingRequest(_selling.FittingId, DecisionKinds.NotToday, NotTodayReasons.Price, ""), Stop));

        Assert.IsType<RestoreSaleOutcome.TooLate>(await RestoreAsync(sale));
        Assert.Equal(1, await _selling.OnHandAsync("W-38"));
    }

    [Fact]
    public async Task Two_tablets_and_a_sale_of_the_same_pair_at_once_sell_it_once()
    {
        var sale = await SellAsync();
        await _selling.VoidAsync(sale);
        var other = await _selling.OpenFittingAsync(ageYears: 15);
        var request = await _selling.RequestAsync("W-38", fittingId: other);

        var outcomes = SellingShop.AtOnce<object>(async () => await RestoreAsync(sale), async () => await RestoreAsync(sale), async () => await _selling.SellAsync(request));

        Assert.Single(outcomes, outcome => outcome is RestoreSaleOutcome.Restored or SellFittingOutcome.Sold);
        Assert.Equal(0, await _selling.OnHandAsync("W-38"));
    }

    [Fact]
    public async Task An_undone_return_leaves_goods_and_money_as_they_were_sold()
    {
        var sale = await SellAsync();
        var ribbon = await _selling.LineAsync(sale, "R-1");
        var back = Assert.IsType<ReturnGoodsOutcome.Returned>(await _selling.ReturnAsync(sale, [new(ribbon.Id, 2, AsNew: true)]));
        _selling.Shop.Clock.Advance(TimeSpan.FromSeconds(9));

        Assert.IsType<WithdrawReturnOutcome.Withdrawn>(await WithdrawAsync(back.ReturnId));

        Assert.Equal(3, await _selling.OnHandAsync("R-1"));
        await using var db = _selling.Shop.CreateDbContext();
        Assert.Equal((0, _selling.Shop.Clock.GetUtcNow()), ((await db.SaleLines.SingleAsync(line => line.Id == ribbon.Id, Stop)).ReturnedQuantity, (await db.SaleReturns.SingleAsync(Stop)).WithdrawnAt));
        var receipts = await ReceiptsAsync();
        Assert.Equal((ReceiptKind.Undone, "2026-000002", "€9.60"), (receipts[^1].Kind, receipts[^1].OfNumber, receipts[^1].Total));
        var seen = await new SaleQueries(_selling.Shop.Reads, _selling.Shop.Clock).SeeAsync(sale, Stop);
        Assert.Equal((0L, true), (seen!.Row.GivenBack.Minor, seen.CanBeVoided));

        // A return that was undone does not stand in the way of a void.
        Assert.IsType<VoidSaleOutcome.Voided>(await _selling.VoidAsync(sale));
        Assert.Equal(5, await _selling.OnHandAsync("R-1"));
    }

    [Fact]
    public async Task Only_the_last_return_of_a_sale_can_be_undone_and_only_for_a_minute()
    {
        var sale = await SellAsync();
        var ribbon = (await _selling.LineAsync(sale, "R-1")).Id;
        var first = Assert.IsType<ReturnGoodsOutcome.Returned>(await _selling.ReturnAsync(sale, [new(ribbon, 1, AsNew: true)]));
        _selling.Shop.Clock.Advance(TimeSpan.FromSeconds(5));
        var second = Assert.IsType<ReturnGoodsOutcome.Returned>(await _selling.ReturnAsync(sale, [new(ribbon, 1, AsNew: true)]));

        Assert.IsType<WithdrawReturnOutcome.TooLate>(await WithdrawAsync(first.ReturnId));
        Assert.IsType<WithdrawReturnOutcome.Withdrawn>(await WithdrawAsync(second.ReturnId));
        Assert.IsType<WithdrawReturnOutcome.TooLate>(await WithdrawAsync(second.ReturnId));
        _selling.Shop.Clock.Advance(VoidSale.UndoneWithin);
        Assert.IsType<WithdrawReturnOutcome.TooLate>(await WithdrawAsync(first.ReturnId));
        Assert.Equal(4, await _selling.OnHandAsync("R-1"));
    }

    [Fact]
    public async Task Returned_goods_that_are_sold_already_stay_with_whoever_bought_them()
    {
        var sale = await SellAsync();
        var back = Assert.IsType<ReturnGoodsOutcome.Returned>(await _selling.ReturnAsync(sale, [new((await _selling.LineAsync(sale, "R-1")).Id, 2, AsNew: true)]));
        Assert.IsType<SellGoodsOutcome.Sold>(await _selling.SellGoodsAsync([new(_selling.Ribbon.Id, 4)]));

        Assert.IsType<WithdrawReturnOutcome.TooLate>(await WithdrawAsync(back.ReturnId));
        Assert.Equal(1, await _selling.OnHandAsync("R-1"));
    }

    [Fact]
    public async Task The_ending_of_a_voucher_is_undone_by_a_manager_within_minutes()
    {
        var voucher = await _selling.HasVoucherAsync("LARCH");
        var restore = new RestoreVoucher(_selling.Shop.Writes, _selling.Shop.Clock);
        var manager = _selling.Shop.Manager;
        await new EndVoucher(_selling.Shop.Writes, _selling.Shop.Clock).RunAsync(manager, Guid.CreateVersion7(), voucher, Stop);

        await Assert.ThrowsAsync<People.NotPermittedException>(() => restore.RunAsync(_selling.Shop.Fitter, Guid.CreateVersion7(), voucher, Stop));
        Assert.IsType<RestoreVoucherOutcome.Restored>(await restore.RunAsync(manager, Guid.CreateVersion7(), voucher, Stop));
        Assert.IsType<RestoreVoucherOutcome.TooLate>(await restore.RunAsync(manager, Guid.CreateVersion7(), voucher, Stop));
        await new EndVoucher(_selling.Shop.Writes, _selling.Shop.Clock).RunAsync(manager, Guid.CreateVersion7(), voucher, Stop);
        _selling.Shop.Clock.Advance(TimeSpan.FromMinutes(6));
        Assert.IsType<RestoreVoucherOutcome.TooLate>(await restore.RunAsync(manager, Guid.CreateVersion7(), voucher, Stop));
    }

    private Task<RestoreSaleOutcome> RestoreAsync(Guid sale, Guid? commandId = null) => _selling.RestoreSale.RunAsync(_selling.Shop.Fitter, commandId ?? Guid.CreateVersion7(), sale, Stop);

    private Task<WithdrawReturnOutcome> WithdrawAsync(Guid back) => _selling.WithdrawReturn.RunAsync(_selling.Shop.Fitter, Guid.CreateVersion7(), back, Stop);

    private async Task<IReadOnlyList<Receipt>> ReceiptsAsync()
    {
        await using var db = _selling.Shop.CreateDbContext();
        var papers = await (from receipt in db.SaleReceipts join paper in db.Papers on receipt.PaperId equals paper.Id orderby receipt.Number select paper.FactsJson).ToListAsync(Stop);
        return [.. papers.Select(facts => JsonSerializer.Deserialize<Receipt>(facts)!)];
    }

    private async Task<Guid> SellAsync(AskedDiscount? discount = null)
    {
        var request = await _selling.RequestAsync("W-38", [new(Side.Left, "heel-cushion"), new(Side.Right, "heel-cushion")], [new(_selling.Ribbon.Id, 2), new(_selling.Sewing.Id, 1)]);
        return Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(request with { Discount = discount })).SaleId;
    }
}
