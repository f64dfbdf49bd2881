using System.Globalization;
using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Catalogue;

[Collection(Alone.Name)]
public sealed class ImportCatalogueTests : IAsyncLifetime
{
    private const string Header = "sku,maker,model,kind,sizeSystem,size,lengthMm,formSource,priceMinor,currency,gtin,onHand";
    private const string Wren38 = "A1,Aldergate,Wren,pointe,eu,38,241.5,measured,8950,EUR,6291041500213,3";
    private const string Wren39 = "A2,Aldergate,Wren,pointe,eu,39,,,8950,EUR,,0";
    private const string Robin = "B1,Brackwater,Robin,jazz,eu,38,,,5000,EUR,,2";

    private TestShop _shop = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task New_codes_come_on_file_with_their_opening_stock()
    {
        var outcome = await ImportAsync($"{Header}\n{Wren38}\n{Wren39}\n{Robin}\n");

        Assert.Equal(new ImportOutcome.Imported(New: 3, Changed: 0, Unchanged: 0, Skipped: 0), outcome);
        await using var db = _shop.CreateDbContext();
        var item = await db.Items.SingleAsync(row => row.Code == "A1", Stop);
        var size = await db.ShoeSizes.SingleAsync(row => row.Id == item.Id, Stop);
        Assert.Equal(("Aldergate Wren 38", "shoes", 8950L, "6291041500213"), (item.Name, item.Category, item.PriceMinor, item.Gtin));
        Assert.Equal((241.5, "measured"), (size.Form.LengthMm, size.Form.Source));
        Assert.Equal((2, 2), (await db.Makers.CountAsync(Stop), await db.ShoeModels.CountAsync(Stop)));
        var line = await db.LedgerLines.SingleAsync(row => row.ItemId == item.Id, Stop);
        Assert.Equal((3, LedgerReasons.Opening, _shop.Manager.PersonId), (line.Change, line.Reason, line.PersonId));
        Assert.Equal(5, await db.StockLevels.SumAsync(level => level.OnHand, Stop));
        Assert.Equal(2, await db.LedgerLines.CountAsync(Stop));
    }

    [Fact]
    public async Task The_same_file_again_changes_nothing()
    {
        var text = $"{Header}\n{Wren38}\n{Wren39}\n{Robin}\n";
        await ImportAsync(text);
        await SellOneAsync("A1");

        var outcome = await ImportAsync(text);

        Assert.Equal(new ImportOutcome.Imported(New: 0, Changed: 0, Unchanged: 3, Skipped: 0), outcome);
        Assert.Equal(2, await OnHandAsync("A1"));
    }

    [Fact]
    public async Task A_code_that_differs_from_one_on_file_only_in_its_capitals_is_refused()
    {
        await ImportAsync($"{Header}\n{Wren38}\n");

        var refused = Assert.IsType<ImportOutcome.Refused>(await ImportAsync($"{Header}\n{Wren38.Replace("A1", "a1", StringComparison.Ordinal)}\n"));

        Assert.Contains("The code “a1” is “A1” on file but for its capitals.", Assert.Single(refused.Report.Problems).Sentence, StringComparison.Ordinal);
        await using var db = _shop.CreateDbContext();
        Assert.Equal(1, await db.Items.CountAsync(Stop));
    }

    [Fact]
    public async Task A_price_set_by_hand_stays_until_a_file_gives_a_new_one()
    {
        await ImportAsync($"{Header}\n{Wren38}\n");
        await using (var db = _shop.CreateDbContext())
        {
            var id = (await db.Items.SingleAsync(Stop)).Id;
            Assert.Equal(new SetPriceOutcome.Priced(1), await new SetPrice(_shop.Writes, _shop.Clock).RunAsync(_shop.Manager, Guid.CreateVersion7(), id, 9900, Stop));
        }

        Assert.Equal(new ImportOutcome.Imported(0, 0, Unchanged: 1, 0), await ImportAsync($"{Header}\n{Wren38}\n"));
        Assert.Equal(9900, await PriceAsync());

        Assert.Equal(new ImportOutcome.Imported(0, Changed: 1, 0, 0), await ImportAsync($"{Header}\n{Wren38.Replace("8950", "9250", StringComparison.Ordinal)}\n"));
        Assert.Equal(9250, await PriceAsync());

        async Task<long?> PriceAsync()
        {
            await using var db = _shop.CreateDbContext();
            return (await db.Items.SingleAsync(Stop)).PriceMinor;
        }
    }

    [Fact]
    public async Task What_a_newer_file_says_is_taken_over_and_stock_is_left_alone()
    {
        await ImportAsync($"{Header}\n{Wren38}\n{Wren39}\n");

        var outcome = await ImportAsync($"{Header}\n{Wren38.Replace("8950", "9250", StringComparison.Ordinal).Replace("3,3", "3,30", StringComparison.Ordinal)}\n{Wren39}\n");

        Assert.Equal(new ImportOutcome.Imported(New: 0, Changed: 1, Unchanged: 1, Skipped: 0), outcome);
        await using var db = _shop.CreateDbContext();
        Assert.Equal(9250, (await db.Items.SingleAsync(row => row.Code == "A1", Stop)).PriceMinor);
        Assert.Equal(3, await OnHandAsync("A1"));
    }

    [Fact]
    public async Task A_column_that_a_file_lacks_leaves_what_was_there_and_an_empty_cell_empties_it()
    {
        await ImportAsync($"{Header}\n{Wren38}\n");

        var without = await ImportAsync("sku,maker,model,kind,sizeSystem,size\nA1,Aldergate,Wren,pointe,eu,38\n");
        var emptied = await ImportAsync($"{Header}\nA1,Aldergate,Wren,pointe,eu,38,,,,,,\n");

        Assert.Equal(new ImportOutcome.Imported(0, 0, Unchanged: 1, 0), without);
        Assert.Equal(new ImportOutcome.Imported(0, Changed: 1, 0, 0), emptied);
        await using var db = _shop.CreateDbContext();
        var item = await db.Items.SingleAsync(Stop);
        Assert.Equal((null, null), (item.PriceMinor, item.Gtin));
        Assert.Equal((null, "label"), ((await db.ShoeSizes.SingleAsync(Stop)).Form.LengthMm, (await db.ShoeSizes.SingleAsync(Stop)).Form.Source));
    }

    [Fact]
    public async Task One_bad_row_and_nothing_is_taken()
    {
        var outcome = await ImportAsync($"{Header}\n{Wren38}\nA2,Aldergate,Wren,pointe,eu,99,,,,,,\n");

        var refused = Assert.IsType<ImportOutcome.Refused>(outcome);
        Assert.Equal((1, 1), (refused.Report.Good, refused.Report.Skipped));
        Assert.Equal((3, "size"), (refused.Report.Problems[0].Line, refused.Report.Problems[0].Column));
        await using var db = _shop.CreateDbContext();
        Assert.False(await db.Items.AnyAsync(Stop));
        Assert.False(await db.Makers.AnyAsync(Stop));
        Assert.False(await db.ShelfPlaces.AnyAsync(Stop));
    }

    [Fact]
    public async Task Asked_to_skip_bad_rows_the_good_ones_are_taken()
    {
        var outcome = await ImportAsync($"{Header}\n{Wren38}\nA2,Aldergate,Wren,pointe,eu,99,,,,,,\n", skipBad: true);

        Assert.Equal(new ImportOutcome.Imported(New: 1, 0, 0, Skipped: 1), outcome);
    }

    [Fact]
    public async Task A_file_that_is_no_table_is_never_taken() =>
        Assert.IsType<ImportOutcome.Refused>(await ImportAsync($"{Header},colour\n{Wren38},red\n", skipBad: true));

    [Fact]
    public async Task What_contradicts_the_shop_is_named()
    {
        await ImportAsync($"{Header}\n{Wren38}\n");
        await _shop.HasAsync(Item.Of(Guid.CreateVersion7(), _shop.ShopId, "P1", "Heel cushion", ItemCategories.Pads));

        var outcome = await ImportAsync(string.Join('\n',
            Header,
            "A5,Aldergate,Wren,jazz,eu,38,,,,,,",
            "P1,Aldergate,Robin,pointe,eu,38,,,,,,",
            "A6,Aldergate,Finch,pointe,eu,38,,,,,6291041500213,"));

        var problems = Assert.IsType<ImportOutcome.Refused>(outcome).Report.Problems;
        Assert.Equal(
            [
                (2, "kind", "Aldergate Wren is on file as “pointe”, not “jazz”. A model has one kind."),
                (3, "sku", "The code “P1” belongs to Heel cushion, which is not a shoe. Give the shoe another code."),
                (4, "gtin", "The barcode number 6291041500213 belongs to A1 already."),
            ],
            problems.Select(problem => (problem.Line, problem.Column!, problem.Sentence)));
    }

    [Fact]
    public async Task A_barcode_passes_from_one_code_to_another()
    {
        await ImportAsync($"{Header}\n{Wren38}\n{Wren39}\n");

        var outcome = await ImportAsync($"{Header}\n{Wren38.Replace("6291041500213", "", StringComparison.Ordinal)}\nA2,Aldergate,Wren,pointe,eu,39,,,8950,EUR,6291041500213,0\n");

        Assert.Equal(new ImportOutcome.Imported(0, Changed: 2, 0, 0), outcome);
    }

    [Fact]
    public async Task Checking_says_what_would_happen_and_changes_nothing()
    {
        await ImportAsync($"{Header}\n{Wren38}\n");
        var check = new CheckCatalogue(_shop);
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes($"{Header}\n{Wren38}\n{Wren39}\nA9,Aldergate,Wren,pointe,eu,99,,,,,,\n"));

        var file = await check.ReadAsync(_shop.ShopId, stream, Stop);
        var report = await check.CompareAsync(_shop.ShopId, file, Stop);

        Assert.Equal((1, 0, 1, 1), (report.New, report.Changed, report.Unchanged, report.Skipped));
        Assert.False(report.IsTaken(skipBad: false));
        Assert.True(report.IsTaken(skipBad: true));
        await using var db = _shop.CreateDbContext();
        Assert.Equal(1, await db.Items.CountAsync(Stop));
    }

    [Fact]
    public async Task Only_managers_import() =>
        await Assert.ThrowsAsync<NotPermittedException>(() =>
            new ImportCatalogue(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), Read(Header), skipBad: false, Stop));

    [Fact]
    public async Task Twenty_thousand_rows_are_taken_whole_and_once()
    {
        var text = new StringBuilder(Header).Append('\n');
        for (var row = 0; row < 20_000; row++)
        {
            text.Append(CultureInfo.InvariantCulture, $"S{row},Maker {row % 7},Model {row % 40},{(row % 2 == 0 ? "pointe" : "jazz")},eu,{30 + (row % 30 * 0.5)},{220 + (row % 60)},maker,8950,EUR,,{row % 3}\n");
        }

        // Kinds must agree within a model: even models are pointe, odd ones jazz, for every maker.
        var first = await ImportAsync(text.ToString());
        var second = await ImportAsync(text.ToString());

        Assert.Equal(new ImportOutcome.Imported(New: 20_000, 0, 0, 0), first);
        Assert.Equal(new ImportOutcome.Imported(0, 0, Unchanged: 20_000, 0), second);
    }

    private Task<ImportOutcome> ImportAsync(string text, bool skipBad = false) =>
        new ImportCatalogue(_shop.Writes, _shop.Clock).RunAsync(_shop.Manager, Guid.CreateVersion7(), Read(text), skipBad, Stop);

    private static CatalogueFile Read(string text) =>
        CatalogueFileReader.Read(Encoding.UTF8.GetBytes(text), new CatalogueRules("EUR", ["pointe", "jazz"]));

    private async Task SellOneAsync(string code)
    {
        await using var db = _shop.CreateDbContext();
        var itemId = await db.Items.Where(item => item.Code == code).Select(item => item.Id).SingleAsync(Stop);
        Assert.True(await StockMoves.TakeOneAsync(db, new StockMove(_shop.Fitter, Guid.CreateVersion7(), _shop.Clock.GetUtcNow(), LedgerReasons.Sold), itemId, Stop));
        await db.SaveChangesAsync(Stop);
    }

    private async Task<int> OnHandAsync(string code)
    {
        await using var db = _shop.CreateDbContext();
        return await (from level in db.StockLevels join item in db.Items on level.ItemId equals item.Id where item.Code == code select level.OnHand).SumAsync(Stop);
    }
}
