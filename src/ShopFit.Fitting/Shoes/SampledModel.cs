using ShopFit.Fitting.Defaults;

namespace ShopFit.Fitting.Shoes;

/// <summary>A model of which the shop measured one sample or several: what they say of every label of the model.</summary>
/// <remarks>
/// One sample is graded over all labels by <see cref="Grading"/>. Between two samples of different lengths each part goes
/// over from the one to the other in a straight line, so that the samples come back unchanged, and so that larger labels
/// stay larger wherever the samples are; beyond the outermost one that one alone is graded. Of two samples of the same
/// length the later one counts, but a label that was itself measured keeps its own measure.
/// </remarks>
/// <param name="Samples">The samples in the order in which they were measured. Parts that were not measured on one say nothing there.</param>
public sealed record SampledModel(IReadOnlyList<Grading> Samples)
{
    /// <summary>What the samples say of a label: eight parts in the order of <see cref="FormPart"/>; null where none was measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A size lies outside its system.</exception>
    public IReadOnlyList<GradedPart?> Under(SizeLabel label, FitDefaults defaults)
    {
        var length = ShoeForm.FromLabel(label, defaults)[FormPart.Length];
        var graded = Samples.Select((sample, index) => new Graded(
            index,
            ShoeForm.FromLabel(sample.SampleLabel, defaults)[FormPart.Length],
            sample.SampleLabel == label,
            sample.Sample,
            sample.Under(label, defaults))).ToList();
        return [.. Enum.GetValues<FormPart>().Select(part => Under(part, length, graded))];
    }

    private static GradedPart? Under(FormPart part, double length, IReadOnlyList<Graded> graded)
    {
        var measured = graded.Where(sample => sample.Measured.SourceOf(part) == FormSource.Measured).ToList();
        if (measured.FindLast(sample => sample.IsThisLabel) is { } own)
        {
            return new GradedPart(own.Measured[part], own.Index);
        }

        var shorter = measured.Where(sample => sample.Length <= length).OrderBy(sample => sample.Length).ThenBy(sample => sample.Index).LastOrDefault();
        var longer = measured.Where(sample => sample.Length >= length).OrderBy(sample => sample.Length).ThenByDescending(sample => sample.Index).FirstOrDefault();
        return (shorter, longer) switch
        {
            (null, null) => null,
            ({ } only, null) => new GradedPart(only.Form[part], only.Index),
            (null, { } only) => new GradedPart(only.Form[part], only.Index),
            var (from, to) => Between(part, length, from, to),
        };
    }

    private static GradedPart Between(FormPart part, double length, Graded from, Graded to)
    {
        // The two are one and the same where the label is as long as a sample.
        var share = to.Length > from.Length ? (length - from.Length) / (to.Length - from.Length) : 0;
        return new GradedPart(from.Form[part] + (share * (to.Form[part] - from.Form[part])), share > 0.5 ? to.Index : from.Index);
    }

    private sealed record Graded(int Index, double Length, bool IsThisLabel, ShoeForm Measured, ShoeForm Form);
}
