using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Seed;

/// <summary>Every size of the catalogue as the shop knows it, and as it truly is.</summary>
internal sealed class DemoPairs
{
    private readonly Dictionary<string, double[]> _offsetOfMaker = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double[]> _offsetOfModel = new(StringComparer.Ordinal);

    internal DemoPairs(IReadOnlyList<DemoSize> sizes)
    {
        foreach (var maker in DemoMakers.All)
        {
            _offsetOfMaker[maker.Name] = Normals($"offset of {maker.Name}");
            foreach (var model in maker.Models)
            {
                _offsetOfModel[model.Name] = Normals($"offset of {model.Name}");
            }
        }

        Sizes = sizes;
        OnFile = [.. sizes.Select(size => new ShoeOnFile(size.Sku, size.Maker.Name, $"{size.Maker.Name}\n{size.Model.Name}", FormOf(size), OnShelf: true))];
        IndexOf = Enumerable.Range(0, sizes.Count).ToDictionary(index => sizes[index].Sku, index => index, StringComparer.Ordinal);
    }

    internal IReadOnlyList<DemoSize> Sizes { get; }

    /// <summary>As the shop knows them, in the same order.</summary>
    internal IReadOnlyList<ShoeOnFile> OnFile { get; }

    internal IReadOnlyDictionary<string, int> IndexOf { get; }

    /// <summary>The inside of a pair in the hand: the form on file, what the maker and the model do, and the scatter of the hand.</summary>
    internal double[] InHand(int index, DemoRandom random)
    {
        var (size, form, uncertain) = (Sizes[index], OnFile[index].Form, FitDefaults.Standard.FormSds);
        return [.. Enum.GetValues<FormPart>().Select(part => form[part]
            + (uncertain.MakersPart(part, form.SourceOf(part)) * _offsetOfMaker[size.Maker.Name][(int)part])
            + (uncertain.ModelsPart(part, form.SourceOf(part)) * _offsetOfModel[size.Model.Name][(int)part])
            + (uncertain.PairScatter[(int)part] * random.Normal()))];
    }

    private static ShoeForm FormOf(DemoSize size) => ShoeForm.Of(
        [.. DemoCatalogue.FormOf(size), size.Shank.Word.Length > 0 ? size.Shank.Step : null],
        size.HasSample ? (size.Model.Sample!.Source == "measured" ? FormSource.Measured : FormSource.Maker) : FormSource.Label,
        new SizeLabel(
            DemoCatalogue.SystemOf(size.Maker), size.Size, size.Width.Step, size.Model.BoxStep, size.Vamp.Step, size.Shank.Word.Length > 0 ? size.Shank.Step : null),
        FitDefaults.Standard);

    // Half of what the fit model allows for: a maker further off would not be carried for long.
    private static double[] Normals(string name)
    {
        var random = DemoRandom.Of(name);
        return [.. Enumerable.Range(0, ShoeForm.Parts).Select(_ => 0.5 * Math.Clamp(random.Normal(), -2, 2))];
    }
}
