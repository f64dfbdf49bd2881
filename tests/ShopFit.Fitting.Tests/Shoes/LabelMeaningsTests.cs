using CsCheck;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Measures;

namespace ShopFit.Fitting.Shoes;

public class LabelMeaningsTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;
    private static readonly SizeSystem Eu = SizeSystem.Find("eu")!;

    private static readonly string[] Widths = ["slender", "even", "wide", "wider"];
    private static readonly string[] Options = ["pointed, low", "square, high", ""];

    private static readonly LabelMeanings Standard = new()
    {
        Widths = Of(("slender", -1), ("even", 0), ("wide", 1), ("wider", 2)),
        Options = new Dictionary<string, OptionMeaning>(StringComparer.Ordinal) { ["pointed, low"] = new(-1, -1), ["square, high"] = new(1, 1) },
        Shanks = Of(("reed", 4), ("oak", 7.5)),
    };

    // Common practice, no source: the regressions of the surveyed women, 2.5 mm of box, 7 mm of girth and 1.5 mm of heel a
    // width step, 1 mm of box and 4 mm of slope a box step, 5 mm of vamp a vamp step, one Paris point less than the label.
    [Fact]
    public void Words_of_standard_steps_give_the_form_of_a_label_exactly() =>
        Gen.Select(Gen.Int[66, 88], Gen.Int[0, 3], Gen.Int[0, 2]).Sample((half, widthIndex, optionIndex) =>
        {
            var (width, option) = (Widths[widthIndex], Options[optionIndex]);
            var form = ShoeForm.FromLabel(Standard.Read(new SizeLabel(Eu, half / 2.0), width, option, "oak"), Defaults);
            var length = ((half / 2.0) - 2) / 0.15 - (20.0 / 3);
            double w = width switch { "slender" => -1, "even" => 0, "wide" => 1, _ => 2 };
            double b = option switch { "pointed, low" => -1, "square, high" => 1, _ => 0 };

            Assert.Equal(length, form[FormPart.Length], 1e-9);
            Assert.Equal((0.86 * (40.16 + (0.2134 * length))) - 0.5 + (2.5 * w) + b, form[FormPart.BoxBreadth], 1e-9);
            Assert.Equal(76.44 + (0.5732 * length) + (7 * w), form[FormPart.BallGirth], 1e-9);
            Assert.Equal(12.03 + (0.2137 * length) + (1.5 * w), form[FormPart.HeelBreadth], 1e-9);
            Assert.Equal((0.155 * length) - 0.5, form[FormPart.CrownDepth], 1e-9);
            Assert.Equal(16 - (4 * b), form[FormPart.ToeSlope], 1e-9);
            Assert.Equal((0.2714 * length) - 1.11 + (5 * b), form[FormPart.Vamp], 1e-9);
            Assert.Equal(7.5, form[FormPart.Shank]);
        });

    [Fact]
    public void A_word_of_which_nothing_was_said_leaves_what_the_catalogue_gave()
    {
        var label = new SizeLabel(Eu, 38, WidthStep: 1.5, BoxStep: -1, VampStep: 0.5, ShankPoints: 6);

        Assert.Equal(label, LabelMeanings.None.Read(label, "wide", "high", "oak"));
        Assert.Equal(label, Standard.Read(label, "WIDE", "unheard", ""));
    }

    [Fact]
    public void A_maker_whose_labels_run_two_sizes_ahead_makes_shoes_two_sizes_shorter()
    {
        var meanings = LabelMeanings.None with { Systems = new Dictionary<string, SystemMeaning>(StringComparer.Ordinal) { ["eu"] = new("eu", 2) } };

        Assert.Equal(
            Eu.FootLengthOf(36).Value,
            ShoeForm.FromLabel(meanings.Read(new SizeLabel(Eu, 38), "", "", ""), Defaults)[FormPart.Length],
            1e-9);
    }

    [Fact]
    public void A_label_is_read_in_another_system_where_the_shop_says_so_and_the_size_exists_there()
    {
        var meanings = LabelMeanings.None with { Systems = new Dictionary<string, SystemMeaning>(StringComparer.Ordinal) { ["us-women"] = new("uk-adult", null) } };
        var (women, uk) = (SizeSystem.Find("us-women")!, SizeSystem.Find("uk-adult")!);

        Assert.Equal(new SizeLabel(uk, 5), meanings.Read(new SizeLabel(women, 5), "", "", ""));
        Assert.Equal(new SizeLabel(women, 18), meanings.Read(new SizeLabel(women, 18), "", "", ""));
    }

    // One size: a third of an inch, a Paris point of two thirds of a centimetre (ISO/TS 19407:2015), 1 mm, 1 cm.
    [Theory]
    [InlineData("uk-adult", 25.4 / 3)]
    [InlineData("eu", 20.0 / 3)]
    [InlineData("mondopoint", 1)]
    [InlineData("jp", 10)]
    public void A_size_of_each_system_has_its_length(string system, double millimetres) =>
        Assert.Equal(millimetres, LabelMeanings.MillimetresASize(SizeSystem.Find(system)!), 1e-9);

    private static Dictionary<string, double> Of(params (string Word, double Step)[] words) =>
        words.ToDictionary(word => word.Word, word => word.Step, StringComparer.Ordinal);
}
