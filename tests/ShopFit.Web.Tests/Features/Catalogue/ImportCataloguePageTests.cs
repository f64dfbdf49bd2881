using Bunit;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.People;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Catalogue;

public sealed class ImportCataloguePageTests : PageTest
{
    private const string Header = "sku,maker,model,kind,sizeSystem,size\n";
    private const string Good = "A1,Aldergate,Wren,pointe,eu,38\n";
    private const string Bad = "A2,Aldergate,Wren,pointe,eu,99\n";

    protected override Actor? SignedIn => Shop.Manager;

    [Fact]
    public async Task A_good_file_is_checked_first_and_taken_at_the_second_step()
    {
        var page = Open();

        Upload(page, Header + Good);

        page.WaitForAssertion(() => Assert.Contains("1 new, 0 changed", page.Markup, StringComparison.Ordinal));
        Assert.Equal(0, await ItemsAsync());

        page.FindAll("button").Single(key => key.TextContent.Contains("Take these rows: 1", StringComparison.Ordinal)).Click();

        page.WaitForAssertion(() => Assert.Contains("On file: 1 new", page.Find("[role=status]").TextContent, StringComparison.Ordinal));
        Assert.Equal(1, await ItemsAsync());
    }

    [Fact]
    public async Task A_bad_row_is_shown_by_line_and_column_and_skipped_only_when_asked()
    {
        var page = Open();

        Upload(page, Header + Good + Bad);

        page.WaitForAssertion(() => Assert.Contains("There is no size 99 in eu", page.Find("tbody").TextContent, StringComparison.Ordinal));
        Assert.Equal(["3", "size"], page.FindAll("tbody td").Take(2).Select(cell => cell.TextContent));

        page.FindAll("button").Single(key => key.TextContent.Contains("Take the good rows: 1, skip 1", StringComparison.Ordinal)).Click();

        page.WaitForAssertion(() => Assert.Contains("1 skipped", page.Find("[role=status]").TextContent, StringComparison.Ordinal));
        Assert.Equal(1, await ItemsAsync());
    }

    [Fact]
    public void A_file_that_is_no_table_offers_nothing_to_take()
    {
        var page = Open();

        Upload(page, "sku;maker\n");

        page.WaitForAssertion(() => Assert.Contains("this file seems to use", page.Markup, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("button.main"));
    }

    private IRenderedComponent<ImportCataloguePage> Open()
    {
        Services.AddLocalization();
        Services.AddCatalogue();
        return Render<ImportCataloguePage>();
    }

    private static void Upload(IRenderedComponent<ImportCataloguePage> page, string text) =>
        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(text, "catalogue.csv"));

    private async Task<int> ItemsAsync()
    {
        await using var db = Shop.CreateDbContext();
        return await db.Items.CountAsync(TestContext.Current.CancellationToken);
    }
}
