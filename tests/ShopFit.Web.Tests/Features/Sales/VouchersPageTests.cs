using Bunit;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Shared;

namespace ShopFit.Web.Features.Sales;

public sealed class VouchersPageTests : BunitContext, IAsyncLifetime
{
    private SellingShop _selling = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        DefaultWaitTimeout = TimeSpan.FromSeconds(20);
        _selling = await SellingShop.OpenAsync();
        _selling.Shop.AddTo(Services, _selling.Shop.Manager).AddLocalization().AddScoped<UndoOffer>().AddCatalogue().AddSales();
    }

    public new async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        await _selling.DisposeAsync();
    }

    [Fact]
    public async Task A_voucher_is_made_on_its_terms_and_ended()
    {
        var page = Render<VouchersPage>();
        page.WaitForElement(".form");
        Assert.Contains("There is none yet", page.Markup, StringComparison.Ordinal);

        Type(page, "Code", "larch 10");
        Type(page, "Per cent off", "10");
        Type(page, "Last day", "2026-03-31");
        Type(page, "How often in all", "2");
        Type(page, "From a bag of", "12,50");
        await page.InvokeAsync(() => page.FindAll("input[type=checkbox]")[0].Change(true));
        await page.InvokeAsync(() => page.Find(".key.main").Click());

        page.WaitForAssertion(() => Assert.Equal("LARCH10", page.Find(".voucher b").TextContent));
        Assert.Contains("used 0 of 2 times · until 31 March 2026 · from a bag of €12.50 · for pads", page.Find(".voucher").TextContent, StringComparison.Ordinal);
        await page.InvokeAsync(() => page.Find(".voucher button").Click());
        page.WaitForAssertion(() => Assert.Equal("ended", page.Find(".voucher .word").TextContent));

        await using var db = _selling.Shop.CreateDbContext();
        var voucher = await db.Vouchers.SingleAsync(Stop);
        Assert.Equal((1_000, 1_250L, "pads"), (voucher.PercentBasisPoints!.Value, voucher.LeastTotalMinor, voucher.Categories));
    }

    [Fact]
    public async Task Ending_a_voucher_is_one_tap_and_can_be_undone()
    {
        await _selling.HasVoucherAsync("LARCH");
        var page = Render<VouchersPage>();
        await page.InvokeAsync(() => page.WaitForElement(".voucher button").Click());
        page.WaitForAssertion(() => Assert.Equal("ended", page.Find(".voucher .word").TextContent));

        await page.InvokeAsync(Services.GetRequiredService<UndoOffer>().TakeAsync);

        page.WaitForAssertion(() => Assert.Equal("can be used", page.Find(".voucher .word").TextContent));
        Assert.IsType<UndoneDeed>(Services.GetRequiredService<UndoOffer>().Said);
    }

    [Theory]
    [InlineData("", "10", "", "Code: letters")]
    [InlineData("A", "lots", "", "“lots” cannot be")]
    [InlineData("A", "0", "", "above nothing")]
    [InlineData("A", "10", "often", "no whole number")]
    [InlineData("A", "10", "0", "From 1 to")]
    public async Task What_cannot_be_is_said_where_it_stands_and_kept_as_it_was_typed(string code, string value, string uses, string says)
    {
        var page = Render<VouchersPage>();
        page.WaitForElement(".form");
        Type(page, "Code", code);
        Type(page, "Per cent off", value);
        Type(page, "How often in all", uses);

        await page.InvokeAsync(() => page.Find(".key.main").Click());

        page.WaitForAssertion(() => Assert.Contains(says, page.Find(".form .problem").TextContent, StringComparison.Ordinal));
        Assert.Equal(value, Field(page, "Per cent off").GetAttribute("value"));
        await using var db = _selling.Shop.CreateDbContext();
        Assert.False(await db.Vouchers.AnyAsync(Stop));
    }

    [Fact]
    public async Task The_limit_of_fitters_is_kept()
    {
        var page = Render<VouchersPage>();
        page.WaitForElement(".line input");
        Assert.Equal("10", page.Find(".line input").GetAttribute("value"));

        page.Find(".line input").Input("12,5");
        await page.InvokeAsync(() => page.Find(".line button").Click());

        page.WaitForAssertion(() => Assert.Contains("It holds from now on", page.Markup, StringComparison.Ordinal));
        await using var db = _selling.Shop.CreateDbContext();
        Assert.Equal(1_250, (await db.Shops.SingleAsync(Stop)).FitterDiscountLimitBasisPoints);
    }

    [Fact]
    public void Only_managers_open_it() =>
        Assert.Equal(Roles.Manager, typeof(VouchersPage).GetCustomAttributes(typeof(Microsoft.AspNetCore.Authorization.AuthorizeAttribute), inherit: true).Cast<Microsoft.AspNetCore.Authorization.AuthorizeAttribute>().Single().Roles);

    private static AngleSharp.Dom.IElement Field(IRenderedComponent<VouchersPage> page, string label) =>
        page.Find("#" + page.FindAll(".form label").Single(one => one.TextContent.StartsWith(label, StringComparison.Ordinal)).GetAttribute("for"));

    private static void Type(IRenderedComponent<VouchersPage> page, string label, string text) => Field(page, label).Input(text);
}
