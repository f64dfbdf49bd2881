using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Benchmarks;

/// <summary>An invented catalogue, the same in every run: makers that size in different ways, models in sizes, widths and boxes.</summary>
internal static class SyntheticCatalogue
{
    private const int ModelsAMaker = 8;
    private const int SizesAModel = 100;

    private static readonly string[] SystemsInTurn = ["eu", "uk-adult", "us-women", "mondopoint"];

    public static IReadOnlyList<ShoeOnFile> Of(int sizes, FitDefaults defaults, int seed = 20_260_314)
    {
        var random = new Random(seed);
        SizeSystem[] systems = [.. SystemsInTurn.Select(id => SizeSystem.Find(id)!)];
        var shoes = new List<ShoeOnFile>(sizes);
        for (int model = 0; shoes.Count < sizes; model++)
        {
            string maker = $"maker-{model / ModelsAMaker}";
            var system = systems[model / ModelsAMaker % systems.Length];
            var source = (FormSource)(model % 3);
            double smallest = system.SizeOfFoot(Millimetres.From(205));
            double boxStep = (model % 3) - 1;
            double vampStep = (model / 3 % 3) - 1;
            double[] offset = [.. Enumerable.Range(0, ShoeForm.Parts).Select(_ => (random.NextDouble() * 4) - 2)];
            for (int i = 0; i < SizesAModel && shoes.Count < sizes; i++)
            {
                // Twenty lengths in five combinations of width and shank.
                double size = (Math.Round(smallest / system.LabelStep) + (i / 5)) * system.LabelStep;
                var label = new SizeLabel(system, size, (i % 5 % 3) - 1, boxStep, vampStep, i % 5 < 3 ? 5 : 6.5);
                var fromLabel = ShoeForm.FromLabel(label, defaults);
                double?[] known = source == FormSource.Label
                    ? new double?[ShoeForm.Parts]
                    : [.. offset.Select((value, part) => (double?)(fromLabel[(FormPart)part] + (part == (int)FormPart.Shank ? 0 : value)))];
                shoes.Add(new ShoeOnFile($"sku-{model:000}-{i:000}", maker, $"model-{model:000}", ShoeForm.Of(known, source, label, defaults), OnShelf: random.NextDouble() < 0.5));
            }
        }

        return shoes;
    }
}
