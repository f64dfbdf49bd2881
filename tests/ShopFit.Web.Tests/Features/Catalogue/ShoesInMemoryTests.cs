using System.Text;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Catalogue;

public sealed class ShoesInMemoryTests : IAsyncLifetime
{
    private const string Header = "sku,maker,model,kind,sizeSystem,size,lengthMm,formSource,onHand\n";

    private TestShop _shop = null!;
    private CatalogueQueries _queries = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        _queries = new CatalogueQueries(_shop.Reads, new ShoesInMemory());
        await ImportAsync(Header + "A1,Aldergate,Wren,pointe,eu,38,241,measured,1\nA2,Aldergate,Wren,pointe,eu,39,,,0\nJ1,Aldergate,Jay,jazz,eu,39,,,1\n");
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Sizes_come_by_kind_with_their_form_and_where_they_stand()
    {
        var shoes = await _queries.ShoesOnFileAsync(Stop);

        Assert.Equal([("A1", true), ("A2", false)], shoes.OfKind("pointe").Select(shoe => (shoe.Sku, shoe.OnShelf)));
        Assert.Equal((241.0, FormSource.Measured), (shoes.Find("A1")!.OnFile.Form[FormPart.Length], shoes.Find("A1")!.OnFile.Form.Source));
        Assert.Equal((StockMoves.FirstPlaceCode, 1), (Assert.Single(shoes.Find("A1")!.Places).Code, shoes.Find("A1")!.OnShelf));
        Assert.Empty(shoes.OfKind("tap"));
        Assert.Null(shoes.Find("none"));
    }

    [Fact]
    public async Task What_was_read_is_kept_until_something_changes()
    {
        var first = await _queries.ShoesOnFileAsync(Stop);
        Assert.Same(first, await _queries.ShoesOnFileAsync(Stop));

        await TakeAsync(first.Find("A1")!.SizeId);
        var second = await _queries.ShoesOnFileAsync(Stop);
        Assert.False(second.Find("A1")!.OnFile.OnShelf);

        await ImportAsync(Header + "A1,Aldergate,Wren,pointe,eu,38,243,measured,1\n");
        Assert.Equal(243, (await _queries.ShoesOnFileAsync(Stop)).Find("A1")!.OnFile.Form[FormPart.Length]);
    }

    [Fact]
    public async Task Where_only_stock_moved_the_forms_are_not_worked_out_again()
    {
        var before = await _queries.ShoesOnFileAsync(Stop);
        await TakeAsync(before.Find("A1")!.SizeId);
        var after = await _queries.ShoesOnFileAsync(Stop);

        Assert.Same(before.Find("A1")!.OnFile.Form, after.Find("A1")!.OnFile.Form);
        Assert.Same(before.Find("A2"), after.Find("A2"));
        Assert.Equal((1, 0), (before.Find("A1")!.OnShelf, after.Find("A1")!.OnShelf));
        Assert.Equal([("A1", false), ("A2", false)], after.OfKind("pointe").Select(shoe => (shoe.Sku, shoe.OnShelf)));
        Assert.Same(after.Find("A1"), after.Search(new CatalogueSearch("A1")).Single());
        Assert.Equal(["A1", "A2"], after.OfModel(after.Find("A1")!.ModelId).Select(shoe => shoe.Sku));
    }

    [Fact]
    public async Task A_price_that_was_set_is_seen_though_stock_moved_too()
    {
        var before = (await _queries.ShoesOnFileAsync(Stop)).Find("A1")!;
        await TakeAsync(before.SizeId);
        await new SetPrice(_shop.Writes, _shop.Clock).RunAsync(_shop.Manager, Guid.CreateVersion7(), before.SizeId, 4_300, Stop);
        await TakeAsync((await _queries.ShoesOnFileAsync(Stop)).Find("J1")!.SizeId);

        var after = await _queries.ShoesOnFileAsync(Stop);
        Assert.Equal((4_300, 0), (after.Find("A1")!.PriceMinor, after.Find("A1")!.OnShelf));
        Assert.Equal(0, after.Find("J1")!.OnShelf);
    }

    [Fact]
    public async Task What_an_action_sees_and_then_undoes_is_not_kept()
    {
        var shoes = new ShoesInMemory();
        var before = await new CatalogueQueries(_shop.Reads, shoes).ShoesOnFileAsync(Stop);
        var (sizeId, seenInside) = (before.Find("A1")!.SizeId, -1);
        await Assert.ThrowsAsync<InvalidOperationException>(() => TakeAsync(sizeId, async (db, stop) =>
        {
            seenInside = (await shoes.SeeAsync(db, stop)).Find("A1")!.OnShelf;
            throw new InvalidOperationException("The shop's computer lost its power.");
        }));

        Assert.Equal(0, seenInside);
        Assert.Same(before, await new CatalogueQueries(_shop.Reads, shoes).ShoesOnFileAsync(Stop));
    }

    private Task<string> TakeAsync(Guid itemId) => TakeAsync(itemId, (_, _) => Task.CompletedTask);

    private Task<string> TakeAsync(Guid itemId, Func<ShopDbContext, CancellationToken, Task> then)
    {
        var commandId = Guid.CreateVersion7();
        return _shop.Writes.RunAsync(
            _shop.Fitter,
            commandId,
            "Take",
            async (db, stop) =>
            {
                var taken = await StockMoves.TakeOneAsync(db, new StockMove(_shop.Fitter, commandId, _shop.Clock.GetUtcNow(), LedgerReasons.Sold), itemId, stop);
                await then(db, stop);
                return taken ? "taken" : "gone";
            },
            Stop);
    }

    private async Task ImportAsync(string text)
    {
        var file = CatalogueFileReader.Read(Encoding.UTF8.GetBytes(text), new CatalogueRules("EUR", ["pointe", "jazz"]));
        Assert.IsType<ImportOutcome.Imported>(await new ImportCatalogue(_shop.Writes, _shop.Clock).RunAsync(_shop.Manager, Guid.CreateVersion7(), file, skipBad: false, Stop));
    }
}
