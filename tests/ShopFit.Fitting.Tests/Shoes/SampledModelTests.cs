using CsCheck;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Measures;

namespace ShopFit.Fitting.Shoes;

public class SampledModelTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;
    private static readonly SizeSystem Eu = SizeSystem.Find("eu")!;
    private static readonly FormPart[] GrowWithTheSize = [FormPart.Length, FormPart.BoxBreadth, FormPart.BallGirth, FormPart.HeelBreadth, FormPart.CrownDepth, FormPart.Vamp];

    private static readonly Gen<SizeLabel> GenLabel =
        from size in Gen.Int[66, 88]
        from width in Gen.Int[-2, 2]
        from box in Gen.Int[-1, 1]
        from vamp in Gen.Int[-1, 1]
        select new SizeLabel(Eu, size / 2.0, width, box, vamp);

    private static readonly Gen<Grading> GenSample =
        from label in GenLabel
        from off in Gen.Double[-9, 9].Array[ShoeForm.Parts]
        from missing in Gen.Int[0, 5]
        select new Grading(
            ShoeForm.Of(
                [.. off.Select((mm, part) => part > 0 && part == missing ? (double?)null : ShoeForm.FromLabel(label, Defaults)[(FormPart)part] + mm)],
                FormSource.Measured,
                label,
                Defaults),
            label);

    [Fact]
    public void Grading_a_sample_gives_the_sample_back() =>
        GenSample.Array[1, 3].Sample(samples =>
        {
            // Of two samples under one label the later one counts.
            var last = samples[^1];
            var under = new SampledModel(samples).Under(last.SampleLabel, Defaults);

            foreach (var part in Enum.GetValues<FormPart>().Where(part => last.Sample.SourceOf(part) == FormSource.Measured))
            {
                Assert.Equal(last.Sample[part], under[(int)part]!.Value.Value, 1e-12);
                Assert.Equal(samples.Length - 1, under[(int)part]!.Value.Sample);
            }
        });

    [Fact]
    public void One_sample_is_graded_as_its_labels_differ() =>
        Gen.Select(GenSample, GenLabel).Sample((sample, label) =>
        {
            var under = new SampledModel([sample]).Under(label, Defaults);
            var graded = sample.Under(label, Defaults);

            foreach (var part in Enum.GetValues<FormPart>())
            {
                Assert.Equal(sample.Sample.SourceOf(part) == FormSource.Measured ? graded[part] : null, under[(int)part]?.Value);
            }
        });

    [Fact]
    public void Larger_labels_are_larger_inside_whatever_one_sample_measured() =>
        Gen.Select(GenSample, GenLabel).Sample((sample, label) =>
        {
            var model = new SampledModel([sample]);
            var (smaller, larger) = (model.Under(label, Defaults), model.Under(label with { Size = label.Size + 0.5 }, Defaults));

            foreach (var part in GrowWithTheSize.Where(part => smaller[(int)part] is not null && part is not FormPart.Shank))
            {
                // A label that is the sample's own is on the same line, so the order holds there too.
                Assert.True(smaller[(int)part]!.Value.Value < larger[(int)part]!.Value.Value, part.ToString());
            }
        });

    [Fact]
    public void Between_two_samples_in_order_the_sizes_stay_in_order()
    {
        var model = new SampledModel([Measured(36, length: 228, girth: 205), Measured(40, length: 252, girth: 222)]);
        var lengths = Enumerable.Range(0, 17).Select(half => model.Under(new SizeLabel(Eu, 34 + (half / 2.0)), Defaults)[0]!.Value).ToList();

        Assert.Equal(lengths.Select(part => part.Value).Order(), lengths.Select(part => part.Value));
        Assert.Equal((228, 240, 252), (lengths[4].Value, Math.Round(lengths[8].Value, 9), lengths[12].Value));
        Assert.Equal((0, 0, 1, 1), (lengths[0].Sample, lengths[7].Sample, lengths[9].Sample, lengths[^1].Sample));
    }

    [Fact]
    public void Steps_between_sizes_are_those_of_the_label()
    {
        var model = new SampledModel([Measured(38, length: 240, girth: 214)]);
        var broad = model.Under(new SizeLabel(Eu, 39, WidthStep: 1), Defaults);

        // A Paris point is 6.67 mm (ISO/TS 19407:2015); ANSUR II women's ball girth rises 0.573 mm a mm; a width step is 7 mm *(cp)*.
        Assert.Equal(240 + (20.0 / 3), broad[(int)FormPart.Length]!.Value.Value, 1e-9);
        Assert.Equal(214 + (0.5732 * 20 / 3) + 7, broad[(int)FormPart.BallGirth]!.Value.Value, 1e-9);
        Assert.Null(broad[(int)FormPart.Vamp]);
    }

    [Fact]
    public void Without_a_sample_nothing_is_said() =>
        Assert.All(new SampledModel([]).Under(new SizeLabel(Eu, 38), Defaults), part => Assert.Null(part));

    private static Grading Measured(double size, double length, double girth)
    {
        var label = new SizeLabel(Eu, size);
        return new Grading(ShoeForm.Of([length, null, girth, null, null, null, null, null], FormSource.Measured, label, Defaults), label);
    }
}
