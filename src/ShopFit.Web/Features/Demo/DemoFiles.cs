using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using CsvHelper;

namespace ShopFit.Web.Features.Demo;

/// <summary>The files of the demo shop, as they lie beside the program.</summary>
internal sealed class DemoFiles
{
    private static readonly JsonSerializerOptions Format = new(JsonSerializerDefaults.Web)
    {
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Skip,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    private readonly string _folder = Path.Combine(AppContext.BaseDirectory, "seed");

    public Stream Catalogue() => File.OpenRead(Path.Combine(_folder, "catalogue.csv"));

    public DemoShopSettings Shop() => Read<DemoShopSettings>("shop.json");

    public DemoHistory History() => Read<DemoHistory>("people.json");

    public DemoYears Years() => DemoYearFiles.Read(Rows);

    /// <summary>How each model is made.</summary>
    public IReadOnlyList<(string Maker, string Model, string Construction)> Models() =>
        [.. Rows("models.csv").Select(row => (row["maker"], row["model"], row["construction"]))];

    /// <summary>The place of each code.</summary>
    public IReadOnlyDictionary<string, string> Places() =>
        Rows("shelf.csv").ToDictionary(row => row["sku"], row => row["place"], StringComparer.Ordinal);

    public IReadOnlyList<DemoGoods> Haberdashery() => [.. Rows("haberdashery.csv").Select(row => new DemoGoods(
        row["code"],
        row["name"],
        row["category"],
        row["padId"] is { Length: > 0 } padId ? padId : null,
        long.Parse(row["priceMinor"], CultureInfo.InvariantCulture),
        row["gtin"] is { Length: > 0 } gtin ? gtin : null,
        bool.Parse(row["tracksStock"]),
        row["onHand"] is { Length: > 0 } onHand ? int.Parse(onHand, CultureInfo.InvariantCulture) : 0,
        row["place"]))];

    private T Read<T>(string name) => JsonSerializer.Deserialize<T>(File.ReadAllBytes(Path.Combine(_folder, name)), Format)!;

    private IEnumerable<Dictionary<string, string>> Rows(string name)
    {
        using var csv = CsvReader.Create(File.ReadAllBytes(Path.Combine(_folder, name)), CsvReaderOptions.Default with { Separator = ',' });
        while (csv.Read())
        {
            var cells = csv.Current.ToArray();
            yield return csv.Headers.Zip(cells).ToDictionary(cell => cell.First, cell => cell.Second, StringComparer.Ordinal);
        }
    }
}

/// <summary>Something else that the demo shop sells.</summary>
internal sealed record DemoGoods(string Code, string Name, string Category, string? PadId, long PriceMinor, string? Gtin, bool TracksStock, int OnHand, string Place);
