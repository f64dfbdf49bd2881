using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ShopFit.Sheets.Receipts;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

public sealed class DiscountedSaleTests : IAsyncLifetime
{
    private SellingShop _selling = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _selling = await SellingShop.OpenAsync();

    public ValueTask DisposeAsync() => _selling.DisposeAsync();

    [Fact]
    public async Task A_percentage_is_spread_over_the_lines_and_stands_on_the_receipt()
    {
        var request = (await _selling.RequestAsync("W-38", extras: [new(_selling.Ribbon.Id, 1)])) with { Discount = AskedDiscount.Percent(1_000) };

        var sold = Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(request));

        await using var db = _selling.Shop.CreateDbContext();
        var sale = await db.Sales.SingleAsync(Stop);
        var lines = await db.SaleLines.OrderByDescending(line => line.TotalMinor).ToListAsync(Stop);

        // 89.50 and 4.80 come to 94.30; a tenth is 9.43, of which 8.95 and 0.48.
        Assert.Equal((8_487L, 895L, 48L), (sale.TotalMinor, lines[0].DiscountMinor, lines[1].DiscountMinor));
        Assert.Equal(sale.TotalMinor, lines.Sum(line => line.TotalMinor));
        var receipt = JsonSerializer.Deserialize<Receipt>((await db.Papers.SingleAsync(row => row.Id == sold.ReceiptPaperId, Stop)).FactsJson)!;
        Assert.Equal(("2026-000001", "€94.30", "10%", "-€9.43", "€84.87"), (receipt.Number, receipt.BeforeDiscount, receipt.DiscountName, receipt.Discount, receipt.Total));
        Assert.Equal((new DateOnly(2026, 3, 14), new DateOnly(2026, 3, 28), true, false), (receipt.Date, receipt.ReturnUntil, receipt.WithShoes, receipt.WithPads));
    }

    [Fact]
    public async Task A_fitter_takes_off_up_to_the_limit_and_a_manager_more()
    {
        AskedDiscount tooMuch = AskedDiscount.Percent(1_001);
        SaleExtra[] ribbon = [new(_selling.Ribbon.Id, 5)];

        Assert.Equal(new SellGoodsOutcome.Invalid(SellProblem.DiscountOverLimit, Bound: new Money(240, "EUR")), await _selling.SellGoodsAsync(ribbon, AskedDiscount.Amount(241)));
        Assert.IsType<SellGoodsOutcome.Invalid>(await _selling.SellGoodsAsync(ribbon, AskedDiscount.Percent(5_000)));
        Assert.IsType<SellGoodsOutcome.Sold>(await _selling.SellGoods.RunAsync(_selling.Shop.Manager, Guid.CreateVersion7(), new([new(_selling.Ribbon.Id, 1)], tooMuch), Stop));

        await new LimitFitterDiscount(_selling.Shop.Writes).RunAsync(_selling.Shop.Manager, Guid.CreateVersion7(), 5_000, Stop);
        Assert.IsType<SellGoodsOutcome.Sold>(await _selling.SellGoodsAsync([new(_selling.Ribbon.Id, 1)], AskedDiscount.Percent(5_000)));
    }

    [Fact]
    public async Task Only_a_manager_sets_the_limit_and_makes_or_ends_a_voucher()
    {
        var fitter = _selling.Shop.Fitter;
        var voucher = await _selling.HasVoucherAsync("SPRING");

        await Assert.ThrowsAsync<NotPermittedException>(() => new LimitFitterDiscount(_selling.Shop.Writes).RunAsync(fitter, Guid.CreateVersion7(), 5_000, Stop));
        await Assert.ThrowsAsync<NotPermittedException>(() => new EndVoucher(_selling.Shop.Writes, _selling.Shop.Clock).RunAsync(fitter, Guid.CreateVersion7(), voucher, Stop));
        await Assert.ThrowsAsync<NotPermittedException>(() => _selling.MakeVoucher.RunAsync(fitter, Guid.CreateVersion7(), new("X", 100, null, null, null, null, 0, []), Stop));
    }

    [Theory]
    [InlineData("", 1_000, null, null, null, VoucherProblem.Code)]
    [InlineData("a b/c", 1_000, null, null, null, VoucherProblem.Code)]
    [InlineData("spring ", 1_000, null, null, null, VoucherProblem.CodeTaken)]
    [InlineData("NEW", null, null, null, null, VoucherProblem.Value)]
    [InlineData("NEW", 1_000, 100L, null, null, VoucherProblem.Value)]
    [InlineData("NEW", 10_001, null, null, null, VoucherProblem.Value)]
    [InlineData("NEW", null, 0L, null, null, VoucherProblem.Value)]
    [InlineData("NEW", 1_000, null, 0, null, VoucherProblem.Uses)]
    [InlineData("NEW", 1_000, null, null, -1L, VoucherProblem.LeastTotal)]
    public async Task Terms_that_cannot_be_are_named(string code, int? percent, long? amount, int? uses, long? least, VoucherProblem problem)
    {
        await _selling.HasVoucherAsync("SPRING");

        Assert.Equal(
            new MakeVoucherOutcome.Invalid(problem),
            await _selling.MakeVoucher.RunAsync(_selling.Shop.Manager, Guid.CreateVersion7(), new(code, percent, amount, null, null, uses, least ?? 0, []), Stop));
    }

    [Fact]
    public async Task A_voucher_is_given_on_its_own_goods_and_what_they_do_not_use_of_it_is_lost()
    {
        await _selling.HasVoucherAsync("Ribbon-5", amount: 500, categories: [ItemCategories.Ribbon]);

        var sold = Assert.IsType<SellGoodsOutcome.Sold>(await _selling.SellGoodsAsync([new(_selling.Ribbon.Id, 1), new(_selling.Sewing.Id, 1)], AskedDiscount.Voucher(" ribbon-5")));

        Assert.Equal((480L, 0L), ((await _selling.LineAsync(sold.SaleId, "R-1")).DiscountMinor, (await _selling.LineAsync(sold.SaleId, "S-1")).DiscountMinor));
        await using var db = _selling.Shop.CreateDbContext();
        Assert.Equal((1_500L, 1), ((await db.Sales.SingleAsync(Stop)).TotalMinor, (await db.Vouchers.SingleAsync(Stop)).Used));
        var receipt = JsonSerializer.Deserialize<Receipt>((await db.Papers.SingleAsync(row => row.Kind == PaperKinds.Receipt, Stop)).FactsJson)!;
        Assert.Equal("voucher RIBBON-5", receipt.DiscountName);
    }

    [Fact]
    public async Task A_refused_voucher_says_why_and_is_not_used_up()
    {
        // The clock stands at 14 March 2026.
        DateOnly before = new(2026, 3, 13), after = new(2026, 3, 15);
        await _selling.HasVoucherAsync("LATER", from: after);
        await _selling.HasVoucherAsync("OVER", to: before);
        await _selling.HasVoucherAsync("LARGE", least: 481);
        await _selling.HasVoucherAsync("SHOES", categories: ItemCategories.Shoes);
        await _selling.HasVoucherAsync("ONCE", uses: 1);
        var ended = await _selling.HasVoucherAsync("ENDED");
        await new EndVoucher(_selling.Shop.Writes, _selling.Shop.Clock).RunAsync(_selling.Shop.Manager, Guid.CreateVersion7(), ended, Stop);
        await _selling.SellGoodsAsync([new(_selling.Sewing.Id, 1)], AskedDiscount.Voucher("ONCE"));
        var rows = await _selling.RowsAsync();
        (string Code, SellGoodsOutcome.Invalid Why)[] cases =
        [
            ("NEVER", new(SellProblem.VoucherUnknown, "NEVER")),
            (new string('x', 5_000), new(SellProblem.VoucherUnknown, new string('x', 5_000))),
            ("LATER", new(SellProblem.VoucherNotYet, "LATER", after)),
            ("OVER", new(SellProblem.VoucherOver, "OVER", before)),
            ("LARGE", new(SellProblem.VoucherLeastTotal, "LARGE", Bound: new Money(481, "EUR"))),
            ("SHOES", new(SellProblem.VoucherOtherGoods, "SHOES")),
            ("ONCE", new(SellProblem.VoucherUsedUp, "ONCE")),
            ("ENDED", new(SellProblem.VoucherEnded, "ENDED")),
        ];

        foreach (var (code, why) in cases)
        {
            Assert.Equal(why, await _selling.SellGoodsAsync([new(_selling.Ribbon.Id, 1)], AskedDiscount.Voucher(code)));
        }

        Assert.Equal(rows, await _selling.RowsAsync());
    }

    [Fact]
    public async Task The_days_of_a_voucher_are_the_shops_own()
    {
        // 15 March 2026, 00:30 UTC is still the evening of the 14th in Chicago.
        await using (var db = _selling.Shop.CreateDbContext())
        {
            (await db.Shops.SingleAsync(Stop)).Count("America/Chicago", "EUR", "A4", "mm", "eu", pricesIncludeTax: true, returnDays: 14);
            await db.SaveChangesAsync(Stop);
        }

        await _selling.HasVoucherAsync("TODAY", from: new DateOnly(2026, 3, 14), to: new DateOnly(2026, 3, 14));
        _selling.Shop.Clock.SetUtcNow(new DateTimeOffset(2026, 3, 15, 0, 30, 0, TimeSpan.Zero));

        Assert.IsType<SellGoodsOutcome.Sold>(await _selling.SellGoodsAsync([new(_selling.Ribbon.Id, 1)], AskedDiscount.Voucher("TODAY")));

        _selling.Shop.Clock.SetUtcNow(new DateTimeOffset(2026, 3, 15, 5, 30, 0, TimeSpan.Zero));
        Assert.IsType<SellGoodsOutcome.Invalid>(await _selling.SellGoodsAsync([new(_selling.Ribbon.Id, 1)], AskedDiscount.Voucher("TODAY")));
    }

    [Fact]
    public async Task Two_tablets_cannot_use_the_last_use_of_a_voucher_twice()
    {
        await _selling.HasVoucherAsync("LAST", uses: 1);
        Task<SellGoodsOutcome> UseAsync() => _selling.SellGoodsAsync([new(_selling.Sewing.Id, 1)], AskedDiscount.Voucher("LAST"));

        var outcomes = SellingShop.AtOnce(UseAsync, UseAsync, UseAsync, UseAsync);

        Assert.Single(outcomes.OfType<SellGoodsOutcome.Sold>());
        Assert.All(outcomes.OfType<SellGoodsOutcome.Invalid>(), refused => Assert.Equal(SellProblem.VoucherUsedUp, refused.Problem));
        await using var db = _selling.Shop.CreateDbContext();
        Assert.Equal((1, 1), ((await db.Vouchers.SingleAsync(Stop)).Used, await db.Sales.CountAsync(Stop)));
    }

    [Fact]
    public async Task A_sale_that_is_refused_gives_its_use_of_a_voucher_back()
    {
        await _selling.HasVoucherAsync("ONE", uses: 1);

        Assert.IsType<SellGoodsOutcome.Gone>(await _selling.SellGoodsAsync([new(_selling.Ribbon.Id, 6)], AskedDiscount.Voucher("ONE")));

        await using var db = _selling.Shop.CreateDbContext();
        Assert.Equal((0, 0), ((await db.Vouchers.SingleAsync(Stop)).Used, await db.SaleReceipts.CountAsync(Stop)));
    }
}
