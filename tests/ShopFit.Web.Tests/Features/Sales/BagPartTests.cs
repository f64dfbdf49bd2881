using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Fittings;

namespace ShopFit.Web.Features.Sales;

public sealed class BagPartTests : BunitContext, IAsyncLifetime
{
    private SellingShop _selling = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        DefaultWaitTimeout = TimeSpan.FromSeconds(20);
        _selling = await SellingShop.OpenAsync();
        _selling.Shop.AddTo(Services).AddLocalization().AddCatalogue().AddSales();
    }

    public new async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        await _selling.DisposeAsync();
    }

    [Theory]
    [InlineData(DiscountKind.Percent, 750, "")]
    [InlineData(DiscountKind.Amount, 125, "")]
    [InlineData(DiscountKind.Voucher, 0, "larch-10")]
    public async Task The_discount_of_a_draft_is_there_again_after_a_reload(DiscountKind kind, long value, string code)
    {
        var pair = await _selling.RequestAsync("W-38");
        var discount = new AskedDiscount(kind, value, code);
        var choose = new ChooseInFitting(_selling.Shop.Writes, _selling.Shoes, _selling.Shop.Clock);

        Assert.IsType<ChooseInFittingOutcome.Kept>(await choose.RunAsync(
            _selling.Shop.Fitter, Guid.CreateVersion7(), new(_selling.FittingId, pair.SizeId, Pads: null, [new(_selling.Ribbon.Id, 1)], Discount: discount), Stop));

        var seen = await new FittingQueries(_selling.Shop.Reads).SeeAsync(_selling.FittingId, Stop);
        Assert.Equal(discount, seen!.Choice!.Chosen.Discount);
    }

    [Fact]
    public async Task A_fitting_whose_sale_was_taken_back_says_so_beside_the_bag()
    {
        var sold = Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(await _selling.RequestAsync("W-38")));
        _selling.Shop.Clock.Advance(TimeSpan.FromMinutes(11));
        await _selling.VoidAsync(sold.SaleId, reason: "The wrong size.");

        var part = Render<BagPart>(parameters => parameters.Add(bag => bag.Wish, BagWish.Empty).Add(bag => bag.ReopenedFittingId, _selling.FittingId));

        part.WaitForAssertion(() => Assert.Matches("was taken back at .*20.*: The wrong size\\. It can be decided again", part.Find(".caution").TextContent));
    }

    [Fact]
    public async Task After_a_sale_its_receipt_is_one_tap_away()
    {
        var sold = Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(await _selling.RequestAsync("W-38")));

        var key = Render<ReceiptKey>(parameters => parameters.Add(one => one.FittingId, _selling.FittingId).Add(one => one.ClosedAt, _selling.Shop.Clock.GetUtcNow()));

        key.WaitForAssertion(() => Assert.Equal([$"/sales/{sold.SaleId}", $"/papers/{sold.ReceiptPaperId}.pdf"], key.FindAll("a").Select(link => link.GetAttribute("href"))));
    }

    [Fact]
    public async Task What_is_put_in_and_taken_out_is_told_at_once()
    {
        BagWish? told = null;
        var part = Render<BagPart>(parameters => parameters
            .Add(bag => bag.Wish, BagWish.Empty.With(_selling.Ribbon.Id, 1))
            .Add(bag => bag.Put, wish =>
            {
                told = wish;
                return Task.FromResult<string?>(null);
            }));

        await part.InvokeAsync(() => part.WaitForElement("button[aria-label='One more of Satin ribbon']").Click());
        Assert.Equal(2, told!.CountOf(_selling.Ribbon.Id));
        await part.InvokeAsync(() => part.Find("button[aria-label='One less of Satin ribbon']").Click());
        Assert.Empty(told.Extras);
        Assert.True(part.Find("button[aria-label='One less of Sewing']").HasAttribute("disabled"));
    }
}
