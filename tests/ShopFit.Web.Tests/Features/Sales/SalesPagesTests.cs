using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.People;
using ShopFit.Web.Shared;

namespace ShopFit.Web.Features.Sales;

public sealed class SalesPagesTests : BunitContext, IAsyncLifetime
{
    private SellingShop _selling = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        DefaultWaitTimeout = TimeSpan.FromSeconds(20);
        _selling = await SellingShop.OpenAsync();
        Services.AddLocalization().AddScoped<UndoOffer>().AddCatalogue().AddSales().AddDancers();
        AddAuthorization().SetAuthorized("Orla").SetRoles(Roles.Fitter);
        _selling.Shop.AddTo(Services);
    }

    public new async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        await _selling.DisposeAsync();
    }

    [Fact]
    public async Task A_day_stands_over_its_sales_with_a_total_that_equals_them()
    {
        var whole = await SellAsync();
        await _selling.VoidAsync(whole);
        var kept = Assert.IsType<SellGoodsOutcome.Sold>(await _selling.SellGoodsAsync([new(_selling.Ribbon.Id, 2), new(_selling.Sewing.Id, 1)])).SaleId;
        await _selling.ReturnAsync(kept, [new((await _selling.LineAsync(kept, "R-1")).Id, 1, AsNew: true)]);

        var page = Render<SalesPage>();

        // 24.60 were paid and 4.80 given back; the sale that was taken back counts nothing.
        page.WaitForAssertion(() => Assert.Equal("€19.80", page.Find(".day b").TextContent));
        Assert.Contains("after €4.80 given back for returns", page.Find(".day").TextContent, StringComparison.Ordinal);
        Assert.Equal(["part returned", "taken back"], page.FindAll(".rows .word").Select(word => word.TextContent.Trim()).Order(StringComparer.Ordinal));
        Assert.Contains(page.FindAll(".rows a"), row => row.GetAttribute("href") == $"/sales/{kept}");
    }

    [Theory]
    [InlineData("fernsby", 1)]
    [InlineData("2026-000001", 1)]
    [InlineData("1", 1)]
    [InlineData("2025-1", 0)]
    [InlineData("%", 0)]
    [InlineData("99999999999999999999", 0)]
    public async Task Sales_are_found_by_dancer_and_by_number(string search, int found)
    {
        await SellAsync();
        await _selling.SellGoodsAsync([new(_selling.Ribbon.Id, 1)]);
        var page = Render<SalesPage>();
        page.WaitForElement(".rows");

        page.Find("#search").Input(search);

        page.WaitForAssertion(() => Assert.Equal(found, page.FindAll(".rows li").Count));
        Assert.Equal(found == 0, page.Markup.Contains("No sale goes with", StringComparison.Ordinal));
    }

    [Fact]
    public void An_empty_shop_says_so() => Waits(Render<SalesPage>(), "Nothing was sold yet");

    [Fact]
    public async Task A_sale_is_taken_back_with_a_reason_in_two_steps()
    {
        var sale = await SellAsync();
        var page = RenderSale(sale);
        page.WaitForElement("#void");

        await page.InvokeAsync(() => Key(page, "Take the whole sale back").Click());
        await page.InvokeAsync(() => page.Find("[aria-labelledby=void] .key.main").Click());
        page.WaitForAssertion(() => Assert.Contains("What went wrong: write it", page.Find(".problem").TextContent, StringComparison.Ordinal));
        page.Find("[aria-labelledby=void] input").Input("The wrong size");
        await page.InvokeAsync(() => page.Find("[aria-labelledby=void] .key.main").Click());

        page.WaitForAssertion(() => Assert.Contains("The wrong size", page.Find(".caution").TextContent, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("#void"));
        Assert.Contains("2026-000002, taken back", page.Find(".papers").TextContent, StringComparison.Ordinal);
        Assert.Equal(1, await _selling.OnHandAsync("W-38"));
    }

    [Fact]
    public async Task Shoes_come_back_once_the_fitter_has_looked()
    {
        var sale = await SellAsync();
        var page = RenderSale(sale);
        page.WaitForElement("#return");

        await page.InvokeAsync(() => page.Find("button[aria-label='One more of Aldergate Wren 38']").Click());
        await page.InvokeAsync(() => page.Find("[aria-labelledby=return] .key.main").Click());
        page.WaitForAssertion(() => Assert.Contains("unworn and unsewn", page.Find(".problem").TextContent, StringComparison.Ordinal));
        Assert.Equal(0, await _selling.OnHandAsync("W-38"));
        await page.InvokeAsync(() => page.Find("input[type=checkbox]").Change(true));
        await page.InvokeAsync(() => page.Find("[aria-labelledby=return] .key.main").Click());

        page.WaitForAssertion(() => Assert.Contains("Give €89.50 back", page.Markup, StringComparison.Ordinal));
        Assert.Equal(1, await _selling.OnHandAsync("W-38"));
        Assert.Empty(page.FindAll("#void"));
    }

    [Fact]
    public async Task Taking_a_sale_back_can_be_undone_and_the_page_shows_it_standing()
    {
        var sale = await SellAsync();
        var page = RenderSale(sale);
        page.WaitForElement("#void");
        await page.InvokeAsync(() => Key(page, "Take the whole sale back").Click());
        page.Find("[aria-labelledby=void] input").Input("The wrong size");
        await page.InvokeAsync(() => page.Find("[aria-labelledby=void] .key.main").Click());
        page.WaitForElement(".caution");

        await page.InvokeAsync(Services.GetRequiredService<UndoOffer>().TakeAsync);

        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".caution")));
        Assert.Contains("It stays sold. Keep the money", page.Markup, StringComparison.Ordinal);
        Assert.Contains("2026-000003, it stays sold", page.Find(".papers").TextContent, StringComparison.Ordinal);
        Assert.Equal(0, await _selling.OnHandAsync("W-38"));

        // A second void is another one, with its own key and its own reason.
        await page.InvokeAsync(() => Key(page, "Take the whole sale back").Click());
        Assert.Equal("", page.Find("[aria-labelledby=void] input").GetAttribute("value") ?? "");
        page.Find("[aria-labelledby=void] input").Input("Rung up twice");
        await page.InvokeAsync(() => page.Find("[aria-labelledby=void] .key.main").Click());
        page.WaitForAssertion(() => Assert.Contains("Rung up twice", page.Find(".caution").TextContent, StringComparison.Ordinal));
        Assert.Equal(1, await _selling.OnHandAsync("W-38"));
    }

    [Fact]
    public async Task A_return_can_be_undone_and_an_undo_that_comes_too_late_says_so()
    {
        var sale = await SellAsync();
        var page = RenderSale(sale);
        page.WaitForElement("#return");
        await ReturnShoesAsync(page);

        await page.InvokeAsync(Services.GetRequiredService<UndoOffer>().TakeAsync);
        page.WaitForAssertion(() => Assert.DoesNotContain("Given back for what was returned", page.Markup, StringComparison.Ordinal));
        Assert.Equal(0, await _selling.OnHandAsync("W-38"));

        await ReturnShoesAsync(page);
        Services.GetRequiredService<UndoOffer>().Hold();
        _selling.Shop.Clock.Advance(VoidSale.UndoneWithin + TimeSpan.FromSeconds(1));
        await page.InvokeAsync(Services.GetRequiredService<UndoOffer>().TakeAsync);

        Assert.IsType<LastingDeed>(Services.GetRequiredService<UndoOffer>().Said);
        Assert.Equal(1, await _selling.OnHandAsync("W-38"));
    }

    [Fact]
    public void A_sale_that_is_not_there_says_so() => Waits(RenderSale(Guid.CreateVersion7()), "There is no sale at this address");

    [Fact]
    public async Task Haberdashery_is_sold_by_taps_and_codes_and_leads_to_its_sale()
    {
        var page = RenderBag(Guid.CreateVersion7());
        page.WaitForElement("button[aria-label='One more of Satin ribbon']");

        page.Find("#code").Input("nothing");
        await page.InvokeAsync(() => page.Find("form.scan").Submit());
        page.WaitForAssertion(() => Assert.Contains("nothing with the code “nothing”", page.Find(".problem").TextContent, StringComparison.Ordinal));
        page.Find("#code").Input("W-38");
        await page.InvokeAsync(() => page.Find("form.scan").Submit());
        page.WaitForAssertion(() => Assert.Contains("sold at a fitting", page.Find(".problem").TextContent, StringComparison.Ordinal));
        page.Find("#code").Input(" r-1 ");
        await page.InvokeAsync(() => page.Find("form.scan").Submit());
        await page.InvokeAsync(() => page.Find("button[aria-label='One more of Satin ribbon']").Click());
        page.WaitForAssertion(() => Assert.Contains("Sell for €9.60", page.Find(".foot .key.main").TextContent, StringComparison.Ordinal));
        await page.InvokeAsync(() => page.Find(".foot .key.main").Click());

        await using var db = _selling.Shop.CreateDbContext();
        var sale = await db.Sales.SingleAsync(Stop);
        page.WaitForAssertion(() => Assert.EndsWith($"/sales/{sale.Id}", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_discount_over_the_limit_says_so_where_it_was_typed_and_one_below_it_comes_off()
    {
        await _selling.HasVoucherAsync("OVER", to: new DateOnly(2026, 3, 13));
        var page = RenderBag(Guid.CreateVersion7());
        await page.InvokeAsync(() => page.WaitForElement("button[aria-label='One more of Sewing']").Click());
        await page.InvokeAsync(() => Key(page, "Give a discount").Click());

        await page.InvokeAsync(() => Key(page, "20%").Click());
        page.WaitForAssertion(() => Assert.Contains("at most €1.50 of this bag", page.Find(".discount .problem").TextContent, StringComparison.Ordinal));
        await page.InvokeAsync(() => Key(page, "Voucher").Click());
        page.Find(".discount input").Change("over");
        await page.InvokeAsync(() => Key(page, "Take it off").Click());
        page.WaitForAssertion(() => Assert.Contains("voucher OVER was good until 13 March 2026", page.Find(".discount .problem").TextContent, StringComparison.Ordinal));
        Assert.Equal("over", page.Find(".discount input").GetAttribute("value"));
        await page.InvokeAsync(() => Key(page, "Amount").Click());
        page.Find(".discount input").Change("1,25");
        await page.InvokeAsync(() => Key(page, "Take it off").Click());

        page.WaitForAssertion(() => Assert.Contains("Sell for €13.75", page.Find(".foot .key.main").TextContent, StringComparison.Ordinal));
        await page.InvokeAsync(() => Key(page, "No discount").Click());
        page.WaitForAssertion(() => Assert.Contains("Sell for €15.00", page.Find(".foot .key.main").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public void A_sale_without_a_fitting_gets_an_address_of_its_own()
    {
        Render<NewSalePage>();

        Assert.Matches("/sales/new/[0-9a-f-]{36}$", Services.GetRequiredService<NavigationManager>().Uri);
    }

    [Fact]
    public async Task A_bag_is_kept_as_it_is_filled_and_goes_on_after_a_reload_with_its_dancer()
    {
        var draft = Guid.CreateVersion7();
        var page = RenderBag(draft);
        await page.InvokeAsync(() => page.WaitForElement("button[aria-label='One more of Satin ribbon']").Click());
        await page.InvokeAsync(() => page.Find("button[aria-label='One more of Satin ribbon']").Click());
        page.Find("input[type=search]").Input("tily");
        await FindsAsync(page);
        await page.InvokeAsync(() => page.Find(".found .key").Click());
        page.WaitForAssertion(() => Assert.Equal("Tilly Fernsby-Quoin", page.Find(".chosen b").TextContent));

        var again = RenderBag(draft);
        again.WaitForAssertion(() => Assert.Contains("Sell for €9.60", again.Find(".foot .key.main").TextContent, StringComparison.Ordinal));
        Assert.Equal("Tilly Fernsby-Quoin", again.Find(".chosen b").TextContent);
        var list = Render<SalesPage>();
        list.WaitForAssertion(() => Assert.Equal($"/sales/new/{draft}", list.Find(".rows a").GetAttribute("href")));
        Assert.Contains("2 things, kept at", list.Find(".rows a").TextContent, StringComparison.Ordinal);
        await again.InvokeAsync(() => again.Find(".foot .key.main").Click());

        await using var db = _selling.Shop.CreateDbContext();
        var sale = await db.Sales.SingleAsync(Stop);
        Assert.Equal(await db.Dancers.Select(dancer => (Guid?)dancer.Id).SingleAsync(Stop), sale.DancerId);
        Assert.Equal(sale.Id, (await db.SaleDrafts.SingleAsync(Stop)).SaleId);

        // The first tablet still shows the bag: it neither sells it again nor puts anything in.
        await page.InvokeAsync(() => page.Find(".foot .key.main").Click());
        page.WaitForAssertion(() => Assert.Contains("This bag is sold.", page.Markup, StringComparison.Ordinal));
        Assert.Equal(1, await db.Sales.CountAsync(Stop));
        Assert.Empty(Render<SalesPage>().FindAll("a[href^='/sales/new/']"));
    }

    [Fact]
    public async Task A_name_is_taken_off_a_bag_again()
    {
        var draft = Guid.CreateVersion7();
        await using var db = _selling.Shop.CreateDbContext();
        var tilly = await db.Dancers.Select(dancer => dancer.Id).SingleAsync(Stop);
        await new KeepBag(_selling.Shop.Writes, _selling.Shop.Clock).RunAsync(_selling.Shop.Fitter, Guid.CreateVersion7(), new KeptBag(draft, BagWish.Empty, tilly), Stop);
        var page = RenderBag(draft);
        page.WaitForElement(".chosen");

        await page.InvokeAsync(() => Key(page, "Take the name off").Click());

        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".chosen")));
        _selling.Shop.Clock.Advance(TimeSpan.FromSeconds(1));
        Assert.Null((await new BagQueries(_selling.Shop.Reads, null!, null!, _selling.Shop.Clock).SeeAsync(draft, Stop))!.DancerId);
    }

    [Fact]
    public async Task A_name_that_nobody_has_says_so()
    {
        var page = RenderBag(Guid.CreateVersion7());
        page.WaitForElement("input[type=search]").Input("Zzyx");
        await FindsAsync(page);

        page.WaitForAssertion(() => Assert.Contains("No dancer like “Zzyx”.", page.Markup, StringComparison.Ordinal));
    }

    // What is typed is looked up after a pause, on the shop's clock.
    private async Task FindsAsync(IRenderedComponent<NewSalePage> page) => await page.InvokeAsync(() => _selling.Shop.Clock.Advance(TimeSpan.FromSeconds(1)));

    private static void Waits<TPage>(IRenderedComponent<TPage> page, string words)
        where TPage : IComponent => page.WaitForAssertion(() => Assert.Contains(words, page.Markup, StringComparison.Ordinal));

    private static AngleSharp.Dom.IElement Key<TPage>(IRenderedComponent<TPage> page, string text)
        where TPage : IComponent => page.FindAll("button").Single(key => key.TextContent.Trim() == text);

    private IRenderedComponent<NewSalePage> RenderBag(Guid id) => Render<NewSalePage>(parameters => parameters.Add(page => page.Id, id));

    private IRenderedComponent<SalePage> RenderSale(Guid sale) => Render<SalePage>(parameters => parameters.Add(page => page.Id, sale));

    private static async Task ReturnShoesAsync(IRenderedComponent<SalePage> page)
    {
        await page.InvokeAsync(() => page.Find("button[aria-label='One more of Aldergate Wren 38']").Click());
        await page.InvokeAsync(() => page.Find("input[type=checkbox]").Change(true));
        await page.InvokeAsync(() => page.Find("[aria-labelledby=return] .key.main").Click());
        page.WaitForAssertion(() => Assert.Contains("Given back for what was returned", page.Markup, StringComparison.Ordinal));
    }

    private async Task<Guid> SellAsync() =>
        Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(await _selling.RequestAsync("W-38", [new(Side.Left, "heel-cushion")], [new(_selling.Sewing.Id, 1)]))).SaleId;
}
