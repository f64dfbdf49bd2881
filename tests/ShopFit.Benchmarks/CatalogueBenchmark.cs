using System.Diagnostics;
using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Benchmarks;

/// <summary>How long the shop's computer takes for what the catalogue pages ask, with 20,000 sizes on file.</summary>
internal static class CatalogueBenchmark
{
    private const int Rows = 20_000;
    private const int Models = 40;
    private const int Makers = 8;
    private const int Times = 30;
    private const int PageRows = 50;

    public static async Task RunAsync(TextWriter report, CancellationToken cancellationToken)
    {
        var folder = new ShopFolder(Directory.CreateTempSubdirectory("shopfit-catalogue-").FullName);
        try
        {
            await new ShopPreparation(folder, TimeProvider.System).RunAsync(cancellationToken);
            var contexts = new Contexts(folder);
            await using var db = contexts.CreateDbContext();
            var shopId = await db.Shops.Select(shop => shop.Id).SingleAsync(cancellationToken);
            var actor = new Actor(Guid.CreateVersion7(), shopId, "Manager", IsManager: true, "");
            using var writeLock = new WriteLock();
            var writes = new ShopWrites(contexts, writeLock, TimeProvider.System);
            var file = CatalogueFileReader.Read(Encoding.UTF8.GetBytes(Catalogue()), new CatalogueRules("EUR", ["pointe"]));
            await new ImportCatalogue(writes, TimeProvider.System).RunAsync(actor, Guid.CreateVersion7(), file, skipBad: false, cancellationToken);

            var reads = new ShopContexts(contexts, new CurrentActor(new SignedIn(actor)));
            var shoes = new ShoesInMemory();
            var catalogue = new CatalogueQueries(reads, shoes);
            var watch = Stopwatch.StartNew();
            var first = await catalogue.FindAsync(new CatalogueSearch(), 0, PageRows, cancellationToken);
            await report.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{"first look after a change",-34} {watch.Elapsed.TotalMilliseconds,7:0.0} ms"));
            var row = first.Rows[0];
            var place = await db.ShelfPlaces.IgnoreQueryFilters().Select(shelf => shelf.Id).SingleAsync(cancellationToken);
            await MeasureAsync(report, "one pair put down, and first look", async () =>
            {
                var move = new StockMove(actor, Guid.CreateVersion7(), TimeProvider.System.GetUtcNow(), LedgerReasons.Opening);
                await writes.RunAsync(actor, move.CommandId, "Move", async (writing, stop) =>
                {
                    await StockMoves.AddAsync(writing, move, row.SizeId, place, 1, stop);
                    return "moved";
                }, cancellationToken);
                return await catalogue.FindAsync(new CatalogueSearch(), 0, PageRows, cancellationToken);
            });
            var price = 1L;
            await MeasureAsync(report, "one price set, and first look", async () =>
            {
                await new SetPrice(writes, TimeProvider.System).RunAsync(actor, Guid.CreateVersion7(), row.SizeId, price++, cancellationToken);
                return await catalogue.FindAsync(new CatalogueSearch(), 0, PageRows, cancellationToken);
            });
            foreach (var (name, search) in new (string, CatalogueSearch)[]
            {
                ("search: nothing typed", new()),
                ("search: one letter", new("m")),
                ("search: model, size and width", new("model 17 38½ w3")),
                ("search: nothing matches", new("wren tall")),
                ("filter: no measure of the inside", new(Missing: CatalogueGap.Form)),
            })
            {
                await MeasureAsync(report, name, () => catalogue.FindAsync(search, 0, PageRows, cancellationToken));
            }

            var labels = new LabelQueries(reads);
            var maker = (await catalogue.ChoicesAsync(cancellationToken)).Makers[0].Id;
            var meanings = new LabelMeanings { Widths = new Dictionary<string, double>(StringComparer.Ordinal) { ["W3"] = 1 } };
            await MeasureAsync(report, "a model of 500 sizes", () => new ModelQueries(reads, shoes).SeeAsync(row.ModelId, cancellationToken));
            await MeasureAsync(report, "a size", () => new SizeQueries(reads, shoes, TimeProvider.System).SeeAsync(row.SizeId, cancellationToken));
            await MeasureAsync(report, "preview of a sample, 500 sizes", () => new SampleQueries(reads, shoes, TimeProvider.System).PreviewAsync(row.SizeId, [240, 78, 212, 62, 36, 15, 63, 5], cancellationToken));
            await MeasureAsync(report, "preview of a step, 2,500 sizes", () => labels.PreviewAsync(maker, meanings, cancellationToken));
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            Directory.Delete(folder.Path, recursive: true);
        }
    }

    private static async Task MeasureAsync<TAnswer>(TextWriter report, string name, Func<Task<TAnswer>> ask)
    {
        await ask();
        var times = new List<double>(Times);
        for (var time = 0; time < Times; time++)
        {
            var started = Stopwatch.GetTimestamp();
            await ask();
            times.Add(Stopwatch.GetElapsedTime(started).TotalMilliseconds);
        }

        times.Sort();
        await report.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{name,-34} {times[Times / 2],7:0.0} ms median, {times[^1],7:0.0} ms at most"));
    }

    private static string Catalogue()
    {
        const int SizesOfAModel = Rows / Models;
        var text = new StringBuilder("sku,maker,model,kind,sizeSystem,size,width,option,shankName,onHand\n");
        for (var row = 0; row < Rows; row++)
        {
            var (model, size) = (row / SizesOfAModel, row % SizesOfAModel);
            text.Append(CultureInfo.InvariantCulture, $"S{row},Maker {model % Makers},Model {model},pointe,eu,{32 + (size % 20 * 0.5)},W{size / 20 % 5},O{size / 100},,{row % 3}\n");
        }

        return text.ToString();
    }

    private sealed class Contexts(ShopFolder folder) : IDbContextFactory<ShopDbContext>
    {
        public ShopDbContext CreateDbContext() => new(ShopDatabase.Options<ShopDbContext>(folder.DatabaseFile));
    }

    private sealed class SignedIn(Actor actor) : AuthenticationStateProvider
    {
        public override Task<AuthenticationState> GetAuthenticationStateAsync() =>
            Task.FromResult(new AuthenticationState(ShopClaims.PrincipalOf(actor, "benchmark")));
    }
}
