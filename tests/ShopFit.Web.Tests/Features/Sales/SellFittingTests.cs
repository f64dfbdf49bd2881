using System.Text.Json;
using CsCheck;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Sheets.TakeHome;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

public sealed class SellFittingTests : IAsyncLifetime
{
    private static readonly PadUnderFoot[] BothHeels = [new(Side.Left, "heel-cushion"), new(Side.Right, "heel-cushion")];

    private SellingShop _selling = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _selling = await SellingShop.OpenAsync();

    public ValueTask DisposeAsync() => _selling.DisposeAsync();

    [Fact]
    public async Task Selling_takes_everything_off_the_shelf_and_closes_the_fitting_with_its_sheet()
    {
        var request = await _selling.RequestAsync("W-38", BothHeels, [new(_selling.Ribbon.Id, 1), new(_selling.Sewing.Id, 1)]);

        var sold = Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(request with { OverruleReason = "She stood best in these." }));

        Assert.Equal((0, 4, 4), (await _selling.OnHandAsync("W-38"), await _selling.OnHandAsync("P-1"), await _selling.OnHandAsync("R-1")));
        await using var db = _selling.Shop.CreateDbContext();
        var sale = await db.Sales.SingleAsync(Stop);
        var lines = await db.SaleLines.ToListAsync(Stop);

        // 89.50 + 6.50 + 4.80 + 15.00, taxes inside: 89.50/6 rounded, 6.50/21 rounded, the rest untaxed.
        Assert.Equal((sold.SaleId, 11_580L, 1_492L + 31L, "EUR"), (sale.Id, sale.TotalMinor, sale.TaxMinor, sale.Currency));
        Assert.Equal(4, lines.Count);
        Assert.All(await db.LedgerLines.Where(line => line.SaleId == sale.Id).ToListAsync(Stop), line => Assert.Equal("sold", line.Reason));

        var fitting = await db.Fittings.SingleAsync(row => row.Id == _selling.FittingId, Stop);
        var decision = await db.FittingDecisions.SingleAsync(Stop);
        var snapshot = await db.FittingSnapshots.SingleAsync(Stop);
        Assert.Equal(_selling.Shop.Clock.GetUtcNow(), fitting.ClosedAt);
        Assert.Equal(("sold", request.SizeId, "She stood best in these."), (decision.Kind, decision.SizeId!.Value, decision.OverruleReason));
        Assert.Equal(BothHeels, PadsAsJson.Read(decision.PadsJson));
        Assert.Equal(FitDefaults.Standard.Fingerprint(), snapshot.DefaultsFingerprint);
        Assert.InRange(snapshot.ChanceOfFit!.Value, 0, 1);
        Assert.Equal(18, JsonDocument.Parse(snapshot.CriteriaJson).RootElement.GetArrayLength());

        var paper = await db.Papers.SingleAsync(row => row.Kind == PaperKinds.TakeHomeSheet, Stop);
        var sheet = JsonSerializer.Deserialize<TakeHomeSheet>(paper.FactsJson)!;
        Assert.Equal((sold.PaperId, sale.Id, TakeHomeSheet.CurrentFormatVersion), (paper.Id, paper.SaleId!.Value, paper.FormatVersion));
        Assert.Equal(("Tilly", "Wren", "38", SheetSewing.ByShop), (sheet.Dancer.FirstName, sheet.Pair.Model, sheet.Pair.Size, sheet.Sewing));
        Assert.Equal("She stood best in these.", sheet.FitterDecided);
        Assert.Equal(("en-GB", PaperSize.A4, new DateOnly(2026, 3, 14), new DateOnly(2026, 3, 28)), (sheet.Language, sheet.Paper, sheet.Date, sheet.ReturnUntil!.Value));
        Assert.Equal((new DateOnly(2026, 3, 24), new DateOnly(2026, 4, 4), new DateOnly(2026, 6, 14)), (sheet.TeacherLookBy!.Value, sheet.LookOn!.Value, sheet.MeasureAgainOn!.Value));
        Assert.Equal(5, sheet.Criteria.Count);
        Assert.StartsWith("We chose them because", sheet.Because, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sheet_on_letter_paper_speaks_as_the_paper_suggests()
    {
        await using (var db = _selling.Shop.CreateDbContext())
        {
            (await db.Shops.SingleAsync(Stop)).Count("America/Chicago", "USD", "Letter", "in", "us", pricesIncludeTax: false, returnDays: 14);
            await db.SaveChangesAsync(Stop);
        }

        Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(await _selling.RequestAsync("W-38")));

        await using var after = _selling.Shop.CreateDbContext();
        var sheet = JsonSerializer.Deserialize<TakeHomeSheet>((await after.Papers.SingleAsync(row => row.Kind == PaperKinds.TakeHomeSheet, Stop)).FactsJson)!;
        Assert.Equal(("en-US", PaperSize.Letter, ShownUnit.Inches, 0), (sheet.Language, sheet.Paper, sheet.Units, sheet.PairsTried));
    }

    [Fact]
    public async Task The_keys_of_one_fitter_sell_once_and_another_fitter_finds_the_fitting_closed()
    {
        var request = await _selling.RequestAsync("W-38");
        var (fitter, other) = (_selling.Shop.Fitter, _selling.Shop.Manager);
        Task<SellFittingOutcome> SellAsync(Actor actor) => _selling.Sell.RunAsync(actor, SaleKey.Of(_selling.FittingId, actor.PersonId, timesReopened: 0), request, Stop);

        var first = Assert.IsType<SellFittingOutcome.Sold>(await SellAsync(fitter));
        var rows = await _selling.RowsAsync();

        Assert.Equal(first, await SellAsync(fitter with { Tablet = "tablet 3" }));
        Assert.IsType<SellFittingOutcome.AlreadyClosed>(await SellAsync(other));
        Assert.Equal(rows, await _selling.RowsAsync());
    }

    [Fact]
    public async Task The_same_command_again_is_the_same_sale()
    {
        var request = await _selling.RequestAsync("W-38");
        var commandId = Guid.CreateVersion7();

        var first = await _selling.SellAsync(request, commandId);
        var rows = await _selling.RowsAsync();
        var second = await _selling.SellAsync(request, commandId);

        Assert.IsType<SellFittingOutcome.Sold>(first);
        Assert.Equal(first, second);
        Assert.Equal(rows, await _selling.RowsAsync());
    }

    [Fact]
    public async Task Another_command_finds_the_fitting_closed()
    {
        var request = await _selling.RequestAsync("W-38");
        await _selling.SellAsync(request);

        Assert.IsType<SellFittingOutcome.AlreadyClosed>(await _selling.SellAsync(request));
    }

    [Theory]
    [InlineData("W-39")]
    [InlineData("W-38")]
    public async Task A_pair_that_is_gone_says_so_and_changes_nothing(string sku)
    {
        var elsewhere = await _selling.OpenFittingAsync(ageYears: 15);
        await _selling.SellAsync(await _selling.RequestAsync("W-38", fittingId: elsewhere));
        var rows = await _selling.RowsAsync();

        var outcome = await _selling.SellAsync(await _selling.RequestAsync(sku, BothHeels));

        Assert.Equal(new SellFittingOutcome.Gone(sku, $"Aldergate Wren {sku[2..]}"), outcome);
        Assert.Equal(rows, await _selling.RowsAsync());
        Assert.Equal(5, await _selling.OnHandAsync("P-1"));
        await using var db = _selling.Shop.CreateDbContext();
        Assert.Null((await db.Fittings.SingleAsync(row => row.Id == _selling.FittingId, Stop)).ClosedAt);
    }

    [Fact]
    public async Task Twenty_sellers_of_the_last_pair_sell_it_once_and_the_ledger_tells_the_shelf()
    {
        const int Sellers = 20;
        var requests = new List<SellFittingRequest>();
        for (var seller = 0; seller < Sellers; seller++)
        {
            requests.Add(await _selling.RequestAsync("W-38", fittingId: await _selling.OpenFittingAsync(ageYears: 15)));
        }

        using var start = new Barrier(Sellers);
        var outcomes = new SellFittingOutcome[Sellers];
        var sellers = Enumerable.Range(0, Sellers).Select(seller => new Thread(() =>
        {
            start.SignalAndWait();
            outcomes[seller] = _selling.SellAsync(requests[seller]).GetAwaiter().GetResult();
        })).ToList();
        sellers.ForEach(seller => seller.Start());
        sellers.ForEach(seller => seller.Join());

        Assert.Single(outcomes.OfType<SellFittingOutcome.Sold>());
        Assert.Equal(Sellers - 1, outcomes.OfType<SellFittingOutcome.Gone>().Count());
        Assert.Equal((1, 1, 1, 1, 1, 1, 1), await _selling.RowsAsync());
        await using var db = _selling.Shop.CreateDbContext();
        var moved = await db.LedgerLines.Where(line => line.ItemId == requests[0].SizeId).SumAsync(line => line.Change, Stop);
        Assert.Equal((0, 0), (moved, await _selling.OnHandAsync("W-38")));
    }

    // Weiss, Rist and Grossman 2009: not before the age of 12.
    [Theory]
    [InlineData(11.99, false)]
    [InlineData(12.0, true)]
    [InlineData(null, true)]
    public async Task Pointe_shoes_are_not_sold_under_twelve(double? ageYears, bool sold)
    {
        var fittingId = await _selling.OpenFittingAsync(ageYears);

        var outcome = await _selling.SellAsync(await _selling.RequestAsync("W-38", fittingId: fittingId));

        Assert.Equal(sold, outcome is SellFittingOutcome.Sold);
        Assert.Equal(!sold, outcome is SellFittingOutcome.NotAllowed { Reason: SellRefusal.ForLater });
    }

    [Fact]
    public async Task Nothing_is_sold_to_a_foot_with_broken_skin()
    {
        var fittingId = await _selling.OpenFittingAsync(ageYears: 14, skinBroken: true);

        Assert.Equal(new SellFittingOutcome.NotAllowed(SellRefusal.SkinBroken), await _selling.SellAsync(await _selling.RequestAsync("W-38", fittingId: fittingId)));
    }

    [Fact]
    public async Task What_cannot_be_is_named_and_changes_nothing()
    {
        var good = await _selling.RequestAsync("W-38");
        var unpriced = await _selling.RequestAsync("F-38");
        (SellFittingRequest Request, SellProblem Problem, string About)[] cases =
        [
            (good with { FittingId = Guid.CreateVersion7() }, SellProblem.FittingMissing, ""),
            (good with { SizeId = _selling.Ribbon.Id }, SellProblem.PairMissing, ""),
            (await _selling.RequestAsync("J-38"), SellProblem.OtherKind, "J-38"),
            (unpriced, SellProblem.PriceMissing, "F-38"),
            (good with { Pads = [new(Side.Left, "brick")] }, SellProblem.PadUnknown, "brick"),
            (good with { Pads = [BothHeels[0], BothHeels[0]] }, SellProblem.PadTwice, ""),
            (good with { Extras = [new(Guid.CreateVersion7(), 1)] }, SellProblem.ItemMissing, ""),
            (good with { Extras = [new(_selling.Ribbon.Id, 0)] }, SellProblem.Quantity, ""),
            (good with { Extras = [new(_selling.Ribbon.Id, 60), new(_selling.Ribbon.Id, 60)] }, SellProblem.Quantity, "R-1"),
            (good with { AdviceNote = new string('a', 1001) }, SellProblem.NoteTooLong, ""),
        ];

        foreach (var (request, problem, about) in cases)
        {
            Assert.Equal(new SellFittingOutcome.Invalid(problem, about), await _selling.SellAsync(request));
        }

        Assert.Equal((0, 0, 0, 0, 0, 0, 0), await _selling.RowsAsync());
    }

    [Fact]
    public async Task A_pad_that_the_shop_does_not_sell_goes_on_the_sheet_alone()
    {
        await _selling.SellAsync(await _selling.RequestAsync("W-38", [new(Side.Right, "loose-wool")]));

        await using var db = _selling.Shop.CreateDbContext();
        var sheet = JsonSerializer.Deserialize<TakeHomeSheet>((await db.Papers.SingleAsync(row => row.Kind == PaperKinds.TakeHomeSheet, Stop)).FactsJson)!;
        Assert.Single(await db.SaleLines.ToListAsync(Stop));
        Assert.Equal((1, Side.Right, "loose-wool"), Assert.Single(sheet.Pads) is var pad ? (pad.Number, pad.Foot, pad.Id) : default);
    }

    [Fact]
    public async Task A_total_is_the_sum_of_its_lines_and_taxes()
    {
        var place = await _selling.PlaceIdAsync();
        var sequence = 0;
        await Gen.Select(Gen.Long[0, 99_999], Gen.Int[0, 10_000], Gen.Int[1, 9], Gen.Int[1, 9], Gen.Bool).SampleAsync(
            async (price, rate, first, second, inside) =>
            {
                var number = ++sequence;
                var category = $"c{number}";
                await _selling.Shop.HasAsync(Settings.TaxRate.Of(Guid.CreateVersion7(), _selling.Shop.ShopId, category, rate));
                var item = await _selling.HasAsync($"X-{number}", "Thing", category, price, place, first + second);
                await using (var db = _selling.Shop.CreateDbContext())
                {
                    await db.Shops.ExecuteUpdateAsync(row => row.SetProperty(shop => shop.PricesIncludeTax, inside), Stop);
                }

                var request = await _selling.RequestAsync("W-38", BothHeels, [new(item.Id, first), new(_selling.Sewing.Id, 1), new(item.Id, second)], await _selling.OpenFittingAsync(20));
                await _selling.AddStockAsync(request.SizeId, 1);
                await _selling.AddStockAsync(_selling.HeelCushion.Id, 1);

                var sold = Assert.IsType<SellFittingOutcome.Sold>(await _selling.SellAsync(request));

                await using var after = _selling.Shop.CreateDbContext();
                var sale = await after.Sales.SingleAsync(row => row.Id == sold.SaleId, Stop);
                var lines = await after.SaleLines.Where(line => line.SaleId == sold.SaleId).ToListAsync(Stop);
                Assert.Equal(4, lines.Count);
                Assert.Equal((lines.Sum(line => line.TotalMinor), lines.Sum(line => line.TaxMinor)), (sale.TotalMinor, sale.TaxMinor));
                Assert.All(lines, line => Assert.Equal((line.Quantity * line.UnitPriceMinor) - line.DiscountMinor + (inside ? 0 : line.TaxMinor), line.TotalMinor));
            },
            iter: 12,
            threads: 1);
    }
}
