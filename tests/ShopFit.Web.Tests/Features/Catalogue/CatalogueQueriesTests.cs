using System.Text;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Catalogue;

public sealed class CatalogueQueriesTests : IAsyncLifetime
{
    private TestShop _shop = null!;
    private CatalogueQueries _queries = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        _queries = new CatalogueQueries(_shop.Reads, new ShoesInMemory());
        await ImportAsync("""
            sku,maker,model,kind,sizeSystem,size,width,formSource,lengthMm,onHand,priceMinor,currency,gtin
            A-1,Aldergate,Wrén,pointe,eu,38,broad,,,2,8950,EUR,6291041500213
            A-2,Aldergate,Wrén,pointe,eu,38.5,broad,measured,243,0,,,
            B_1,Brackwater,Robin,jazz,eu,38,,,,1,,,
            """);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Theory]
    [InlineData("", "A-1 A-2 B_1")]
    [InlineData("wren", "A-1 A-2")]
    [InlineData("aldergate 38.5", "A-2")]
    [InlineData("WREN 38½", "A-2")]
    [InlineData("wrèn 38,5", "A-2")]
    [InlineData("a-1", "A-1")]
    [InlineData("1041500213", "A-1")]
    [InlineData("jazz", "B_1")]
    [InlineData("_", "B_1")]
    [InlineData("%", "")]
    [InlineData("robin broad", "")]
    public async Task Find_wants_every_word(string search, string codes)
    {
        var found = await _queries.FindAsync(new CatalogueSearch(search), page: 0, pageRows: 50, Stop);

        Assert.Equal(codes, string.Join(' ', found.Rows.Select(row => row.Sku)));
    }

    [Fact]
    public async Task Find_goes_page_by_page_and_counts_all()
    {
        var second = await _queries.FindAsync(new CatalogueSearch(), page: 1, pageRows: 2, Stop);

        Assert.Equal(3, second.Count);
        Assert.Equal(("B_1", "Brackwater", "Robin", "38", 1, "label"), Assert.Single(second.Rows) is var row ? (row.Sku, row.Maker, row.Model, row.Label, row.OnHand, row.FormSource) : default);
    }

    [Fact]
    public async Task Find_narrows_by_kind_maker_source_and_by_what_is_missing()
    {
        var makers = (await _queries.ChoicesAsync(Stop)).Makers;
        Assert.Equal(["Aldergate", "Brackwater"], makers.Select(maker => maker.Name));

        Assert.Equal("B_1", await CodesAsync(new CatalogueSearch(Kind: "jazz")));
        Assert.Equal("A-1 A-2", await CodesAsync(new CatalogueSearch(MakerId: makers[0].Id)));
        Assert.Equal("A-2", await CodesAsync(new CatalogueSearch(Source: "measured")));
        Assert.Equal("A-2 B_1", await CodesAsync(new CatalogueSearch(Missing: CatalogueGap.Price)));
        Assert.Equal("A-1 B_1", await CodesAsync(new CatalogueSearch(Missing: CatalogueGap.Form)));
        Assert.Equal("A-2 B_1", await CodesAsync(new CatalogueSearch(Missing: CatalogueGap.Gtin)));
        Assert.Equal("", await CodesAsync(new CatalogueSearch("wren", Kind: "jazz")));
    }

    private async Task<string> CodesAsync(CatalogueSearch search) =>
        string.Join(' ', (await _queries.FindAsync(search, page: 0, pageRows: 50, Stop)).Rows.Select(row => row.Sku));

    private async Task ImportAsync(string text)
    {
        var file = CatalogueFileReader.Read(Encoding.UTF8.GetBytes(text), new CatalogueRules("EUR", ["pointe", "jazz"]));
        Assert.IsType<ImportOutcome.Imported>(await new ImportCatalogue(_shop.Writes, _shop.Clock).RunAsync(_shop.Manager, Guid.CreateVersion7(), file, skipBad: false, Stop));
    }
}
