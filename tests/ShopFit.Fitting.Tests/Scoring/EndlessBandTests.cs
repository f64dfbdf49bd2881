using CsCheck;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Sentences;

namespace ShopFit.Fitting.Scoring;

/// <summary>Bands of which a side has no limit: there, no ease is too much.</summary>
public class EndlessBandTests
{
    private const double None = double.PositiveInfinity;

    // Every way in which the ends of a band may be missing, from one to all four.
    private static readonly Gen<Criterion> Bands =
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 2], Gen.Double[.25, 4]).Select((below, above, exponent) => new Criterion(
            "endless",
            below > 0 ? -None : -6,
            below > 1 ? -None : -2,
            above > 1 ? None : 3,
            above > 0 ? None : 9,
            1)
        { ExponentBelow = exponent, ExponentAbove = exponent });

    [Theory]
    [InlineData(-1000, 0)]
    [InlineData(2.5, 1)]
    [InlineData(4, 1)]
    [InlineData(1e300, 1)]
    public void Where_no_ease_is_too_much_more_than_ideal_is_as_good(double ease, double desirability)
    {
        var criterion = new Criterion("vamp", -6, -2, 3, None, 1);

        Assert.Equal(desirability, criterion.Desirability(ease));
        Assert.Equal(desirability, FootScore.Of([criterion], [ease]));
    }

    [Fact]
    public void Where_no_ease_is_too_little_less_than_ideal_is_as_good()
    {
        var criterion = new Criterion("vamp", -None, -2, 3, 9, 1);

        Assert.Equal(1, criterion.Desirability(-50));
        Assert.Equal(0.5, criterion.Desirability(6), 1e-12);
    }

    [Fact]
    public void Every_ease_has_a_desirability_a_place_on_the_strip_and_an_answer_to_whether_it_fits() =>
        Gen.Select(Bands, Gen.Double[-1e6, 1e6]).Sample(drawn =>
        {
            var (criterion, ease) = drawn;
            var (from, to) = criterion.EasesOf(.5);
            var steps = EaseSteps.Of(criterion, .5, [0, -1.5]);

            Assert.InRange(criterion.Desirability(ease), 0, 1);
            Assert.InRange(criterion.OnStrip(ease), 0, 1);
            Assert.Equal(criterion.Desirability(ease) >= .5, ease >= from && ease <= to);
            Assert.Equal(criterion.Desirability(ease) >= .5, (steps.At(ease) & 1) == 1);
        });

    [Theory]
    [InlineData(-None, -2, 3, None)]
    [InlineData(-None, -None, None, None)]
    [InlineData(-None, -None, 3, 9)]
    [InlineData(-6, -2, 3, None)]
    public void A_narrow_interval_is_sure_whichever_end_is_missing(double noFitBelow, double idealFrom, double idealTo, double noFitAbove)
    {
        var criterion = new Criterion("length", noFitBelow, idealFrom, idealTo, noFitAbove, 1);

        Assert.EndsWith("very sure", FitSentences.Ease(new CriterionFit(Side.Left, criterion, 0, -.1, .1, 1)), StringComparison.Ordinal);
    }

    [Fact]
    public void More_ease_never_lies_further_to_the_left() =>
        Gen.Select(Bands, Gen.Double[-60, 60], Gen.Double[0, 20]).Sample(drawn =>
        {
            var (criterion, ease, more) = drawn;
            Assert.InRange(criterion.OnStrip(ease + more), criterion.OnStrip(ease), 1);
        });
}
