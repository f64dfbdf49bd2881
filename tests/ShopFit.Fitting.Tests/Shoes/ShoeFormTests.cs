using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Measures;

namespace ShopFit.Fitting.Shoes;

public class ShoeFormTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;
    private static readonly SizeLabel Plain = new(SizeSystem.Find("us-women")!, 7.5);

    // Common practice, no source: the label's foot less three quarters of a size; 3F − 20.5 = 7.5 gives 28/3 in.
    [Fact]
    public void A_label_alone_gives_all_eight_parts()
    {
        var form = ShoeForm.FromLabel(Plain with { WidthStep = 1, BoxStep = -1, VampStep = 1 }, Defaults);
        double length = ((7.5 - .75 + 20.5) / 3) * 25.4;

        Assert.Equal(length, form[FormPart.Length], 1e-9);
        Assert.Equal((.86 * (40.16 + (.2134 * length))) - .5 + 2.5 - 1, form[FormPart.BoxBreadth], 1e-9);
        Assert.Equal(76.44 + (.5732 * length) + 7, form[FormPart.BallGirth], 1e-9);
        Assert.Equal(12.03 + (.2137 * length) + 1.5, form[FormPart.HeelBreadth], 1e-9);
        Assert.Equal((.155 * length) - .5, form[FormPart.CrownDepth], 1e-9);
        Assert.Equal(20, form[FormPart.ToeSlope], 1e-9);
        Assert.Equal((.2714 * length) - 1.11 + 5, form[FormPart.Vamp], 1e-9);
        Assert.Equal(5.2, form[FormPart.Shank], 1e-9);
        Assert.Equal(FormSource.Label, form.Source);
    }

    [Theory]
    [InlineData("eu", 37, 20.0 / 3)]
    [InlineData("uk-adult", 5, 6.35)]
    [InlineData("mondopoint", 240, 5)]
    [InlineData("jp", 24, 5)]
    public void Each_system_has_its_allowance(string system, double size, double allowance)
    {
        var label = new SizeLabel(SizeSystem.Find(system)!, size);

        Assert.Equal(label.System.FootLengthOf(size).Value - allowance, ShoeForm.FromLabel(label, Defaults)[FormPart.Length], 1e-9);
    }

    [Fact]
    public void Every_size_system_has_an_allowance() =>
        Assert.All(SizeSystem.All, system => Assert.True(Defaults.Label.AllowanceOf(system.Id) > 0));

    [Fact]
    public void What_is_missing_follows_from_the_label_and_stays_as_uncertain()
    {
        var form = ShoeForm.Of([231, null, null, null, null, null, null, 6], FormSource.Measured, Plain, Defaults);

        Assert.Equal(231, form[FormPart.Length]);
        Assert.Equal(ShoeForm.FromLabel(Plain, Defaults)[FormPart.Vamp], form[FormPart.Vamp]);
        Assert.Equal((FormSource.Measured, FormSource.Label), (form.SourceOf(FormPart.Shank), form.SourceOf(FormPart.Vamp)));
        Assert.Throws<ArgumentException>(() => ShoeForm.Of([231], FormSource.Measured, Plain, Defaults));
    }

    [Fact]
    public void A_sample_is_graded_by_what_the_labels_differ_in()
    {
        var sample = ShoeForm.Of([231, 78, 210, 62, 36, 15, 63, 5], FormSource.Measured, Plain, Defaults);
        var larger = new Grading(sample, Plain).Under(Plain with { Size = 8, WidthStep = 1 }, Defaults);

        Assert.Equal(231 + (25.4 / 6), larger[FormPart.Length], 1e-9);
        Assert.Equal(210 + (.5732 * 25.4 / 6) + 7, larger[FormPart.BallGirth], 1e-9);
        Assert.Equal(5, larger[FormPart.Shank], 1e-9);
        Assert.Equal(FormSource.Measured, larger.SourceOf(FormPart.BallGirth));
    }

    [Fact]
    public void A_label_carries_the_makers_doubt_on_top_and_a_measured_form_shares_its_own()
    {
        var sds = Defaults.FormSds;

        Assert.Equal((5, 4), (sds.MakersPart(FormPart.Length, FormSource.Label), sds.ModelsPart(FormPart.Length, FormSource.Label)));
        Assert.Equal(Math.Sqrt(25 + 16 + .49), sds.Total(FormPart.Length, FormSource.Label), 1e-12);
        Assert.Equal(Math.Sqrt(1 + .49), sds.Total(FormPart.Length, FormSource.Measured), 1e-12);
    }
}
