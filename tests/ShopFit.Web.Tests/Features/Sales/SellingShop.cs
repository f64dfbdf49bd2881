using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Sales;

/// <summary>A shop with two models, pads and ribbon on the shelf, and a dancer of thirteen with a fitting open.</summary>
internal sealed class SellingShop : IAsyncDisposable
{
    private SellingShop(TestShop shop)
    {
        Shop = shop;
        Sell = new SellFitting(shop.Writes, Shoes, shop.Clock);
        SellGoods = new SellGoods(shop.Writes, shop.Clock);
        VoidSale = new VoidSale(shop.Writes, shop.Clock);
        ReturnGoods = new ReturnGoods(shop.Writes, shop.Clock);
        RestoreSale = new RestoreSale(shop.Writes, shop.Clock);
        WithdrawReturn = new WithdrawReturn(shop.Writes, shop.Clock);
        MakeVoucher = new MakeVoucher(shop.Writes, shop.Clock);
    }

    public TestShop Shop { get; }

    public ShoesInMemory Shoes { get; } = new();

    public SellFitting Sell { get; }

    public SellGoods SellGoods { get; }

    public VoidSale VoidSale { get; }

    public ReturnGoods ReturnGoods { get; }

    public RestoreSale RestoreSale { get; }

    public WithdrawReturn WithdrawReturn { get; }

    public MakeVoucher MakeVoucher { get; }

    public Guid FittingId { get; private set; }

    public Item Ribbon { get; private set; } = null!;

    public Item Sewing { get; private set; } = null!;

    public Item HeelCushion { get; private set; } = null!;

    public static async Task<SellingShop> OpenAsync()
    {
        var selling = new SellingShop(await TestShop.OpenAsync());
        await selling.ImportAsync("""
            sku,maker,model,kind,sizeSystem,size,priceMinor,currency,onHand,leadTimeDays
            W-38,Aldergate,Wren,pointe,eu,38,8950,EUR,1,28
            W-39,Aldergate,Wren,pointe,eu,39,8950,EUR,0,28
            F-38,Brackwater,Finch,pointe,eu,38.5,,,1,
            J-38,Brackwater,Robin,jazz,eu,38,5000,EUR,1,
            """);
        var shop = selling.Shop;
        var place = await selling.PlaceIdAsync();
        selling.HeelCushion = await selling.HasAsync("P-1", "Heel cushion", ItemCategories.Pads, 650, place, 5, padId: "heel-cushion");
        selling.Ribbon = await selling.HasAsync("R-1", "Satin ribbon", ItemCategories.Ribbon, 480, place, 5);
        selling.Sewing = await shop.HasAsync(Item.Of(Guid.CreateVersion7(), shop.ShopId, "S-1", "Sewing", ItemCategories.Service, 1500, tracksStock: false));
        await shop.HasAsync(TaxRate.Of(Guid.CreateVersion7(), shop.ShopId, ItemCategories.Shoes, 2_000));
        await shop.HasAsync(TaxRate.Of(Guid.CreateVersion7(), shop.ShopId, ItemCategories.Pads, 500));
        selling.FittingId = await selling.OpenFittingAsync(ageYears: 13.2);
        return selling;
    }

    public async Task<Guid> OpenFittingAsync(double? ageYears, string kind = "pointe", bool skinBroken = false)
    {
        var dancer = Dancer.Of(Guid.CreateVersion7(), Shop.ShopId, "Tilly Fernsby-Quoin");
        dancer.Describe("Tilly Fernsby-Quoin", "", new DateOnly(2013, 1, 2), Sex.Female, "Ms Oakes");
        await Shop.HasAsync(dancer);
        var fitting = FittingRecord.Of(Guid.CreateVersion7(), Shop.Fitter, dancer.Id, kind, Shop.Clock.GetUtcNow(), ageYears, Sex.Female);
        fitting.Start(firstPair: true, soreLeft: false, soreRight: false, skinBroken);
        await Shop.HasAsync(fitting);
        foreach (var foot in new[] { Side.Left, Side.Right })
        {
            await Shop.HasAsync(FittingReading.Of(Guid.CreateVersion7(), Shop.Fitter, fitting.Id, Shop.Clock.GetUtcNow(), foot, "length", 237, ReadingUnit.Millimetres));
            await Shop.HasAsync(FittingReading.Of(Guid.CreateVersion7(), Shop.Fitter, fitting.Id, Shop.Clock.GetUtcNow(), foot, "ball-breadth", 89, ReadingUnit.Millimetres));
        }

        return fitting.Id;
    }

    public async Task<SellFittingRequest> RequestAsync(string sku, IReadOnlyList<PadUnderFoot>? pads = null, IReadOnlyList<SaleExtra>? extras = null, Guid? fittingId = null)
    {
        await using var db = Shop.CreateDbContext();
        var sizeId = await db.Items.Where(item => item.Code == sku).Select(item => item.Id).SingleAsync(TestContext.Current.CancellationToken);
        return new SellFittingRequest(fittingId ?? FittingId, sizeId, pads ?? [], extras ?? []);
    }

    public Task<SellFittingOutcome> SellAsync(SellFittingRequest request, Guid? commandId = null) =>
        Sell.RunAsync(Shop.Fitter, commandId ?? Guid.CreateVersion7(), request, TestContext.Current.CancellationToken);

    /// <summary>Makes a voucher; ten per cent off everything unless said otherwise.</summary>
    public async Task<Guid> HasVoucherAsync(
        string code, int? percent = 1_000, long? amount = null, DateOnly? from = null, DateOnly? to = null, int? uses = null, long least = 0, params IReadOnlyList<string> categories) =>
        Assert.IsType<MakeVoucherOutcome.Made>(await MakeVoucher.RunAsync(
            Shop.Manager,
            Guid.CreateVersion7(),
            new VoucherTerms(code, amount is null ? percent : null, amount, from, to, uses, least, categories),
            TestContext.Current.CancellationToken)).VoucherId;

    /// <summary>Sells without a fitting.</summary>
    public Task<SellGoodsOutcome> SellGoodsAsync(IReadOnlyList<SaleExtra> things, AskedDiscount? discount = null, Guid? commandId = null) =>
        SellGoods.RunAsync(Shop.Fitter, commandId ?? Guid.CreateVersion7(), new SellGoodsRequest(things, discount), TestContext.Current.CancellationToken);

    /// <summary>Takes a sale back.</summary>
    public Task<VoidSaleOutcome> VoidAsync(Guid saleId, Guid? commandId = null, string reason = "Rung up twice") =>
        VoidSale.RunAsync(Shop.Fitter, commandId ?? Guid.CreateVersion7(), new VoidSaleRequest(saleId, reason), TestContext.Current.CancellationToken);

    /// <summary>Takes goods back.</summary>
    public Task<ReturnGoodsOutcome> ReturnAsync(Guid saleId, IReadOnlyList<ReturnedLine> lines, Guid? commandId = null) =>
        ReturnGoods.RunAsync(Shop.Fitter, commandId ?? Guid.CreateVersion7(), new ReturnGoodsRequest(saleId, lines), TestContext.Current.CancellationToken);

    /// <summary>The line of a sale with so-and-so in it.</summary>
    public async Task<SaleLine> LineAsync(Guid saleId, string code)
    {
        await using var db = Shop.CreateDbContext();
        return await (from line in db.SaleLines join item in db.Items on line.ItemId equals item.Id where line.SaleId == saleId && item.Code == code select line).SingleAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>Runs things at the very same moment on threads of their own.</summary>
    public static TOutcome[] AtOnce<TOutcome>(params IReadOnlyList<Func<Task<TOutcome>>> works)
    {
        using var start = new Barrier(works.Count);
        var outcomes = new TOutcome[works.Count];
        var threads = works.Select((work, index) => new Thread(() =>
        {
            start.SignalAndWait();
            outcomes[index] = work().GetAwaiter().GetResult();
        })).ToList();
        threads.ForEach(thread => thread.Start());
        threads.ForEach(thread => thread.Join());
        return outcomes;
    }

    public async Task<int> OnHandAsync(string code)
    {
        await using var db = Shop.CreateDbContext();
        return await (from level in db.StockLevels join item in db.Items on level.ItemId equals item.Id where item.Code == code select level.OnHand).SumAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>How many rows a sale writes stand in the shop.</summary>
    public async Task<(int Sales, int Lines, int Sold, int Decisions, int Snapshots, int Papers, int Receipts)> RowsAsync()
    {
        var stop = TestContext.Current.CancellationToken;
        await using var db = Shop.CreateDbContext();
        return (
            await db.Sales.CountAsync(stop),
            await db.SaleLines.CountAsync(stop),
            await db.LedgerLines.CountAsync(line => line.Reason == LedgerReasons.Sold, stop),
            await db.FittingDecisions.CountAsync(stop),
            await db.FittingSnapshots.CountAsync(stop),
            await db.Papers.CountAsync(paper => paper.Kind == PaperKinds.TakeHomeSheet, stop),
            await db.SaleReceipts.CountAsync(stop));
    }

    public async Task AddStockAsync(Guid itemId, int quantity)
    {
        var placeId = await PlaceIdAsync();
        var commandId = Guid.CreateVersion7();
        await Shop.Writes.RunAsync(
            Shop.Fitter,
            commandId,
            "Add",
            async (db, stop) =>
            {
                await StockMoves.AddAsync(db, new StockMove(Shop.Fitter, commandId, Shop.Clock.GetUtcNow(), LedgerReasons.Opening), itemId, placeId, quantity, stop);
                return "added";
            },
            TestContext.Current.CancellationToken);
    }

    public ValueTask DisposeAsync() => Shop.DisposeAsync();

    public async Task<Item> HasAsync(string code, string name, string category, long price, Guid placeId, int onHand, string? padId = null)
    {
        var item = await Shop.HasAsync(Item.Of(Guid.CreateVersion7(), Shop.ShopId, code, name, category, price, padId: padId));
        await Shop.HasAsync(StockLevel.Of(Guid.CreateVersion7(), Shop.ShopId, item.Id, placeId, onHand));
        return item;
    }

    public async Task<Guid> PlaceIdAsync()
    {
        await using var db = Shop.CreateDbContext();
        return await db.ShelfPlaces.Select(place => place.Id).SingleAsync(TestContext.Current.CancellationToken);
    }

    private async Task ImportAsync(string text)
    {
        var file = CatalogueFileReader.Read(Encoding.UTF8.GetBytes(text), new CatalogueRules("EUR", ["pointe", "jazz"]));
        Assert.IsType<ImportOutcome.Imported>(await new ImportCatalogue(Shop.Writes, Shop.Clock)
            .RunAsync(Shop.Manager, Guid.CreateVersion7(), file, skipBad: false, TestContext.Current.CancellationToken));
    }
}
