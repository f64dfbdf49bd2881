using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Defaults;

/// <summary>How far the real inside of a pair may be from its form on file, mm (points for the shank), in the order of <see cref="FormPart"/> (cp).</summary>
/// <remarks>
/// A real pair = form on file + offset of the model + scatter of the pair. The offset has a part that all
/// models of a maker share and a part of the model's own. For a form known from its label alone the
/// maker's row comes on top of the model's: an unknown sizing habit shifts all that a maker makes. For a
/// measured form or a maker's data the row is the whole offset, and <see cref="SharedByMaker"/> of its variance is shared.
/// </remarks>
public sealed record FormUncertainty
{
    /// <summary>Offset of a model that the shop measured.</summary>
    public IReadOnlyList<double> Measured { get; init; } = [1.0, 1.0, 2.0, 1.0, 1.0, 2.0, 2.0, 0.5];

    /// <summary>Offset where the maker's data are all that is known.</summary>
    public IReadOnlyList<double> Maker { get; init; } = [1.5, 1.5, 3.0, 1.5, 1.5, 2.5, 2.5, 0.7];

    /// <summary>The model's own part where only the label is known.</summary>
    public IReadOnlyList<double> Label { get; init; } = [4.0, 3.0, 6.0, 3.0, 3.0, 5.0, 5.0, 1.5];

    /// <summary>The maker's part where only the label is known.</summary>
    public IReadOnlyList<double> LabelMakersPart { get; init; } = [5.0, 1.5, 3.0, 1.5, 1.5, 2.5, 2.5, 0.7];

    /// <summary>Share of the variance of a measured or maker's offset that all models of a maker share, 0 to 1.</summary>
    public double SharedByMaker { get; init; } = 0.5;

    /// <summary>Scatter of a hand-made pair about its model; one value for both shoes of a pair.</summary>
    public IReadOnlyList<double> PairScatter { get; init; } = [0.7, 0.6, 1.5, 0.6, 0.5, 1.0, 1.0, 0.3];

    /// <summary>A sample is measured once more where it is further from its label than so many SDs of what the label leaves open (cp).</summary>
    /// <remarks>One good sample in eight is asked again for each part; measuring again is cheap.</remarks>
    public double SampleAskedAgainFrom { get; init; } = 1.5;

    /// <summary>SD of the offset's part that all models of a maker share.</summary>
    public double MakersPart(FormPart part, FormSource source) =>
        source == FormSource.Label ? LabelMakersPart[(int)part] : Row(source)[(int)part] * Math.Sqrt(SharedByMaker);

    /// <summary>SD of the offset's part that is the model's own.</summary>
    public double ModelsPart(FormPart part, FormSource source) =>
        source == FormSource.Label ? Label[(int)part] : Row(source)[(int)part] * Math.Sqrt(1 - SharedByMaker);

    /// <summary>SD of the whole offset: how far the model may be from its form on file, the scatter of its pairs left aside.</summary>
    public double Offset(FormPart part, FormSource source)
    {
        double maker = MakersPart(part, source);
        double model = ModelsPart(part, source);
        return Math.Sqrt((maker * maker) + (model * model));
    }

    /// <summary>SD of one pair about its form on file: both parts of the offset and the scatter.</summary>
    public double Total(FormPart part, FormSource source)
    {
        double offset = Offset(part, source);
        double pair = PairScatter[(int)part];
        return Math.Sqrt((offset * offset) + (pair * pair));
    }

    private IReadOnlyList<double> Row(FormSource source) => source == FormSource.Measured ? Measured : Maker;
}
