using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Benchmarks.TryOns;

/// <summary>An invented shop: what it believes of its shoes, what they really are, and a shelf with holes.</summary>
/// <remarks>
/// Every maker sizes in a system of its own; of a third of the makers the shop measured samples, of a third it has the maker's data, of a
/// third only labels. The true inside of a pair differs from its form on file as much as the numbers of the shop say.
/// </remarks>
internal sealed class SimulatedShop
{
    private const int Makers = 6;
    private const int ModelsAMaker = 4;
    private const double Nothing = 0.01;
    private const double SmallestFoot = 212;
    private const double LargestFoot = 272;

    private static readonly string[] SystemsInTurn = ["us-women", "eu", "uk-adult", "mondopoint"];

    private readonly Dictionary<(ShoeLevel Level, string Key), double[]> _true = [];
    private readonly FitDefaults _defaults;

    private SimulatedShop(FitDefaults defaults) => _defaults = defaults;

    /// <summary>Every size on file.</summary>
    public IReadOnlyList<ShoeOnFile> Shoes { get; private set; } = [];

    /// <summary>What the label of each size says, by its code.</summary>
    public Dictionary<string, SizeLabel> Labels { get; } = new(StringComparer.Ordinal);

    /// <summary>A shop of so many sizes, of which so many stand on the shelf.</summary>
    public static SimulatedShop Of(int seed, int sizes, int onShelf, FitDefaults defaults)
    {
        var random = new Random(seed);
        var shop = new SimulatedShop(defaults);
        var made = new List<(string Sku, string Maker, string Model, ShoeForm Form)>();
        int sizesAModel = (sizes + (Makers * ModelsAMaker) - 1) / (Makers * ModelsAMaker);
        for (int maker = 0; maker < Makers; maker++)
        {
            var system = SizeSystem.Find(SystemsInTurn[maker % SystemsInTurn.Length])!;
            var source = (FormSource)(maker % 3);
            for (int model = 0; model < ModelsAMaker; model++)
            {
                double boxStep = random.Next(3) - 1;
                double vampStep = random.Next(3) - 1;
                double[] style = [.. Enumerable.Range(0, ShoeForm.Parts).Select(part => Chance.Normal(random) * defaults.FormSds.Label[part] / 2)];
                foreach (var label in LabelsOf(system, sizesAModel, boxStep, vampStep))
                {
                    string sku = $"{maker}-{model}-{made.Count:0000}";
                    var fromLabel = ShoeForm.FromLabel(label, defaults);
                    double?[] known = source == FormSource.Label
                        ? new double?[ShoeForm.Parts]
                        : [.. style.Select((value, part) => (double?)(fromLabel[(FormPart)part] + (part == (int)FormPart.Shank ? 0 : value)))];
                    made.Add((sku, $"maker-{maker}", $"model-{maker}-{model}", ShoeForm.Of(known, source, label, defaults)));
                    shop.Labels[sku] = label;
                }
            }
        }

        // A shelf holds what sells: the middle more often than the ends, and with holes everywhere.
        var shelf = Enumerable.Range(0, made.Count)
            .OrderByDescending(i => Math.Log(random.NextDouble()) / Wanted(made[i].Form[FormPart.Length], shop.Labels[made[i].Sku]))
            .Take(onShelf)
            .ToHashSet();
        shop.Shoes = [.. made.Select((shoe, i) => new ShoeOnFile(shoe.Sku, shoe.Maker, shoe.Model, shoe.Form, shelf.Contains(i)))];
        foreach (var shoe in shop.Shoes)
        {
            foreach (var level in ShoeLevels.All)
            {
                shop._true.TryAdd((level, ShoeLevels.KeyOf(shoe, level)), [.. Enumerable.Range(0, ShoeForm.Parts).Select(_ => Chance.Normal(random))]);
            }
        }

        return shop;
    }

    /// <summary>The real inside of a pair, in the order of <see cref="FormPart"/>.</summary>
    public double[] TrueForm(ShoeOnFile shoe)
    {
        double[] form = [.. Enumerable.Range(0, ShoeForm.Parts).Select(part => shoe.Form[(FormPart)part])];
        foreach (var level in ShoeLevels.All)
        {
            double[] numbers = _true[(level, ShoeLevels.KeyOf(shoe, level))];
            for (int part = 0; part < form.Length; part++)
            {
                form[part] += numbers[part] * ShoeLevels.SdOf(shoe.Form, (FormPart)part, level, _defaults);
            }
        }

        return form;
    }

    /// <summary>The true offset of the model, without the pair's own scatter: mm, the shank in points.</summary>
    public double TrueOffset(ShoeOnFile shoe, FormPart part) =>
        (_true[(ShoeLevel.Maker, shoe.Maker)][(int)part] * ShoeLevels.SdOf(shoe.Form, part, ShoeLevel.Maker, _defaults))
        + (_true[(ShoeLevel.Model, shoe.Model)][(int)part] * ShoeLevels.SdOf(shoe.Form, part, ShoeLevel.Model, _defaults));

    // How often a size is asked for, as a shop would guess: lengths about the mean of women's feet, the middle width most.
    private static double Wanted(double length, SizeLabel label) =>
        Math.Exp(-0.5 * Math.Pow((length - 244) / 16, 2)) * (label.WidthStep == 0 ? 1.5 : 1);

    /// <summary>The same shop with every model's real offset on file: only the scatter of single pairs is unknown.</summary>
    public SimulatedShop WithOffsetsKnown(out FitDefaults exact)
    {
        exact = _defaults with
        {
            FormSds = _defaults.FormSds with
            {
                Measured = [.. _defaults.FormSds.Measured.Select(_ => Nothing)],
                Maker = [.. _defaults.FormSds.Maker.Select(_ => Nothing)],
                Label = [.. _defaults.FormSds.Label.Select(_ => Nothing)],
                LabelMakersPart = [.. _defaults.FormSds.LabelMakersPart.Select(_ => Nothing)],
            },
        };
        return new SimulatedShop(_defaults)
        {
            Shoes = [.. Shoes.Select(shoe => shoe with { Form = shoe.Form.Changed(part => TrueOffset(shoe, part)) })],
        };
    }

    // Lengths in three widths, of which the middle one comes with two shanks.
    private static IEnumerable<SizeLabel> LabelsOf(SizeSystem system, int wanted, double boxStep, double vampStep)
    {
        (double Width, double Shank)[] options = [(-1, 5), (0, 4), (0, 6.5), (1, 5)];
        double first = system.SizeOfFoot(Millimetres.From(SmallestFoot));
        double last = system.SizeOfFoot(Millimetres.From(LargestFoot));
        int lengths = (wanted + options.Length - 1) / options.Length;
        double step = Math.Max(system.LabelStep, (last - first) / lengths);
        foreach (int i in Enumerable.Range(0, lengths))
        {
            double size = Math.Round((first + (i * step)) / system.LabelStep) * system.LabelStep;
            foreach (var (width, shank) in options)
            {
                yield return new SizeLabel(system, size, width, boxStep, vampStep, shank);
            }
        }
    }
}
