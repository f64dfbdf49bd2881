using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;

namespace ShopFit.Fitting.Shoes;

/// <summary>How much rounder and broader a shoe gets with each size: what was published, and where our own form from a label stands among it.</summary>
public class PublishedGradingTests
{
    // A quarter of an inch of girth a whole size.
    private const double QuarterInch = Millimetres.PerInch / 4;

    // Golding, The Manufacture of Boots and Shoes (1902), "Irregular Gradations": the male scale, 3 fitting. Joint, instep,
    // tread and seat in inches. The tread of size 3 is badly printed; 2 11/12 is what the steps on both sides of it make.
    public static TheoryData<int, string, string, string, string> GoldingsMaleScale => new()
    {
        { 1, "7 1/4", "7 17/32", "2 3/4", "2" },
        { 2, "7 1/2", "7 25/32", "2 5/6", "2 1/16" },
        { 3, "7 3/4", "8 1/32", "2 11/12", "2 1/8" },
        { 4, "8", "8 9/32", "3", "2 3/16" },
        { 5, "8 1/4", "8 17/32", "3 1/12", "2 1/4" },
    };

    [Theory]
    [MemberData(nameof(GoldingsMaleScale))]
    public void Goldings_male_scale_grows_by_the_steps_he_gives(int size, string joint, string instep, string tread, string seat)
    {
        // His steps for adults: joint and instep 1/4 inch, tread 1/12, seat 1/16 a size.
        Assert.Equal(7.25 + ((size - 1) / 4.0), Inches(joint), 1e-12);
        Assert.Equal(7 + (17 / 32.0) + ((size - 1) / 4.0), Inches(instep), 1e-12);
        Assert.Equal(2.75 + ((size - 1) / 12.0), Inches(tread), 1e-12);
        Assert.Equal(2 + ((size - 1) / 16.0), Inches(seat), 1e-12);
    }

    [Fact]
    public void Goldings_worked_example_comes_out_in_the_british_scale()
    {
        // The same book, "Classed Standard Measures": a lady's foot of size 1 1/2 and 2 1/2 sizes of allowance make size 4.
        Assert.Equal(4, Inches("1 1/2") + Inches("2 1/2"), 1e-12);
        var uk = SizeSystem.Find("uk-adult")!;
        Assert.Equal(2.5 * Millimetres.PerInch / 3, uk.LastLengthOf(4)!.Value.Value - uk.LastLengthOf(1.5)!.Value.Value, 1e-9);
    }

    // Girth at the joints, mm for each step of that system. ANSUR II (2012, women), computed from the public rows: 0.573 mm of
    // girth a mm of length.
    [Theory]
    [InlineData("mondopoint", 5, 2.87)]
    [InlineData("jp", 0.5, 2.87)]
    [InlineData("eu", 1, 3.82)]
    [InlineData("uk-adult", 1, 4.85)]
    [InlineData("us-women", 1, 4.85)]
    public void The_form_of_a_label_gets_rounder_as_surveyed_feet_do(string system, double step, double girth) =>
        Assert.Equal(girth, Growth(system, step, FormPart.BallGirth), 0.005);

    // Breadth across the joints, likewise: 0.213 mm a mm of length. The box follows the toes, 0.86 of it (common practice, no source).
    [Theory]
    [InlineData("mondopoint", 5, 1.07)]
    [InlineData("eu", 1, 1.42)]
    [InlineData("uk-adult", 1, 1.81)]
    public void The_form_of_a_label_gets_broader_as_surveyed_feet_do(string system, double step, double breadth) =>
        Assert.Equal(0.86 * breadth, Growth(system, step, FormPart.BoxBreadth), 0.01);

    [Fact]
    public void Published_rules_of_the_trade_lie_around_it_and_the_japanese_standard_nearest()
    {
        var women = FitDefaults.Standard;

        // JIS S 5037: 3 mm of girth for 5 mm of length, 6 mm a letter.
        var jis = JisGirth.Of(Sex.Female, Millimetres.From(240), JisGirthLetter.E) - JisGirth.Of(Sex.Female, Millimetres.From(235), JisGirthLetter.E);
        Assert.Equal(3, jis.Value, 1e-9);
        Assert.InRange(Growth("jp", 0.5, FormPart.BallGirth), 2.8, jis.Value);

        // Golding 1902, modern last makers (a glossary of the trade) and United States lasts alike: 1/4 inch a size, which
        // grades more than feet grow; 3/16 inch for British child sizes 1 to 10 is nearer to them.
        var size = Growth("uk-adult", 1, FormPart.BallGirth);
        Assert.InRange(size, QuarterInch * 3 / 4, QuarterInch);
        Assert.Equal(4.76, QuarterInch * 3 / 4, 0.005);
        Assert.Equal(6.35, QuarterInch, 1e-9);

        // Paris points, from memory: 5 mm a size, 4 to 5 for women's dress shoes. Chinese types, from memory: 3.5 mm for 5 mm.
        Assert.InRange(Growth("eu", 1, FormPart.BallGirth), 3.5, 4);
        Assert.InRange(Growth("mondopoint", 5, FormPart.BallGirth), 2.5, 3.5);

        // A width step is 7 mm of girth: a Chinese type (encyclopaedia) is 7, a Japanese letter 6, a British fitting 1/4 inch (from memory).
        var step = Form(new SizeLabel(SizeSystem.Find("eu")!, 38, WidthStep: 1), women)[FormPart.BallGirth] - Form(new SizeLabel(SizeSystem.Find("eu")!, 38), women)[FormPart.BallGirth];
        Assert.InRange(step, 6, 7);
    }

    [Fact]
    public void Soles_of_united_states_lasts_widen_by_three_thirty_seconds_of_an_inch() =>
        // A secondary source prints 3/32 inch, 2.38 mm, a size; Golding's tread is 1/12, 2.1 mm. Feet broaden by 1.81.
        Assert.InRange(Growth("us-women", 1, FormPart.BoxBreadth) / 0.86, 1.5, Millimetres.FromInches(3 / 32.0).Value);

    private static double Growth(string system, double step, FormPart part)
    {
        var scale = SizeSystem.Find(system)!;
        var size = scale.NearestLabel(scale.SizeOfFoot(Millimetres.From(240)));
        return Form(new SizeLabel(scale, size + step), FitDefaults.Standard)[part] - Form(new SizeLabel(scale, size), FitDefaults.Standard)[part];
    }

    private static ShoeForm Form(SizeLabel label, FitDefaults defaults) => ShoeForm.FromLabel(label, defaults);

    private static double Inches(string text) => TypedNumber.TryRead(text, out var inches) ? inches : throw new FormatException(text);
}
