using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Sales;

public sealed class ShelfAndSalesPagesTests : BunitContext, IAsyncLifetime
{
    private SellingShop _selling = null!;

    public async ValueTask InitializeAsync()
    {
        _selling = await SellingShop.OpenAsync();
        _selling.Shop.AddTo(Services).AddLocalization().AddCatalogue().AddShelf().AddSales();
    }

    public new async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        await _selling.DisposeAsync();
    }

    [Fact]
    public void The_shelf_shows_what_is_on_hand_and_where()
    {
        var page = Render<ShelfPage>();

        page.WaitForAssertion(() => Assert.Contains("Aldergate Wren 38", page.Markup, StringComparison.Ordinal));
        Assert.DoesNotContain("Aldergate Wren 39", page.Markup, StringComparison.Ordinal);
        Assert.Contains($"{StockMoves.FirstPlaceCode} (1)", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_ledger_of_a_size_shows_what_came_and_went()
    {
        var request = await _selling.RequestAsync("W-38");
        await _selling.SellAsync(request);

        var page = Render<LedgerPage>(parameters => parameters.Add(ledger => ledger.ItemId, request.SizeId));

        page.WaitForAssertion(() => Assert.Equal(["−1", "+1"], page.FindAll("td.amount").Select(cell => cell.TextContent)));
        Assert.Contains("W-38, 0 on hand", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void The_ledger_of_nothing_says_so() =>
        Assert.Contains("Not on file", Render<LedgerPage>(parameters => parameters.Add(ledger => ledger.ItemId, Guid.CreateVersion7())).Markup, StringComparison.Ordinal);

    [Fact]
    public void The_catalogue_is_searched_as_one_types()
    {
        var page = Render<CataloguePage>();
        page.WaitForAssertion(() => Assert.Equal(4, page.FindAll("tbody tr").Count));

        Assert.Empty(page.FindAll(".key.main"));
        page.Find("#search").Input("finch");

        page.WaitForAssertion(() => Assert.Equal("F-38", page.Find("tbody a").TextContent));
    }
}
