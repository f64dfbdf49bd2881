using System.Globalization;

namespace ShopFit.Seed;

/// <summary>A row of the haberdashery, as far as the history needs it.</summary>
internal sealed record DemoGoods(string Code, string PadId, bool TracksStock, int OnHand)
{
    /// <summary>Reads haberdashery.csv, whose names may stand in quotes.</summary>
    internal static IReadOnlyList<DemoGoods> Read(string csv) =>
    [
        .. csv.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(line =>
        {
            // From the back, where no cell has a comma: place, onHand, tracksStock, gtin, currency, priceMinor, padId.
            var cells = line.Split(',');
            return new DemoGoods(
                cells[0],
                cells[^7],
                cells[^3] == "true",
                cells[^2].Length > 0 ? int.Parse(cells[^2], CultureInfo.InvariantCulture) : 0);
        }),
    ];
}
