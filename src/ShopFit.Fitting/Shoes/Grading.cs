using ShopFit.Fitting.Defaults;

namespace ShopFit.Fitting.Shoes;

/// <summary>One measured sample of a model, graded over its sizes, widths, boxes and vamps.</summary>
/// <param name="Sample">The form of the pair that was measured.</param>
/// <param name="SampleLabel">What that pair's label says.</param>
public sealed record Grading(ShoeForm Sample, SizeLabel SampleLabel)
{
    /// <summary>The form under another label of the same model.</summary>
    /// <remarks>
    /// Every part moves by what the two labels differ by in the form from a label alone; the shank moves only where
    /// both labels name one. The form keeps the sample's sources: grading adds no doubt of its own here.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The size lies outside its system.</exception>
    public ShoeForm Under(SizeLabel label, FitDefaults defaults)
    {
        var from = ShoeForm.FromLabel(SampleLabel, defaults);
        var to = ShoeForm.FromLabel(label, defaults);
        bool shankNamed = SampleLabel.ShankPoints is not null && label.ShankPoints is not null;
        return Sample.Changed(part => part == FormPart.Shank && !shankNamed ? 0 : to[part] - from[part]);
    }
}
