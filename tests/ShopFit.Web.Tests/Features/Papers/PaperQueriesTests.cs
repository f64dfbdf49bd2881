using System.Text;
using ShopFit.Web.Features.Sales;

namespace ShopFit.Web.Features.Papers;

public sealed class PaperQueriesTests
{
    [Fact]
    public async Task A_sheet_is_drawn_for_people_of_its_shop_and_nobody_else()
    {
        var stop = TestContext.Current.CancellationToken;
        await using var selling = await SellingShop.OpenAsync();
        var sold = Assert.IsType<SellFittingOutcome.Sold>(await selling.SellAsync(await selling.RequestAsync("W-38")));
        var elsewhere = selling.Shop.Fitter with { ShopId = Guid.CreateVersion7() };

        var pdf = await new PaperQueries(selling.Shop.Reads).DrawAsync(sold.PaperId, stop);

        Assert.NotNull(pdf);
        Assert.StartsWith("%PDF-", Encoding.ASCII.GetString(pdf.Pdf, 0, 8), StringComparison.Ordinal);
        Assert.Null(await new PaperQueries(selling.Shop.ReadsOf(elsewhere)).DrawAsync(sold.PaperId, stop));
        Assert.Null(await new PaperQueries(selling.Shop.Reads).DrawAsync(Guid.CreateVersion7(), stop));
    }
}
