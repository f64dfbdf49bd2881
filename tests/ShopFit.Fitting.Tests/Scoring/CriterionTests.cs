namespace ShopFit.Fitting.Scoring;

public class CriterionTests
{
    // Derringer and Suich 1980: larger is better between 0 and 10.
    [Theory]
    [InlineData(5, 1, .5)]
    [InlineData(5, 2, .25)]
    [InlineData(5, .5, .707107)]
    [InlineData(2.5, 2, .0625)]
    [InlineData(-1, 2, 0)]
    [InlineData(11, 2, 1)]
    public void Larger_is_better(double ease, double exponent, double desirability) =>
        Assert.Equal(desirability, Larger(0, 10, exponent).Desirability(ease), 1e-6);

    // Derringer and Suich 1980: a target of 8 between 0 and 10, exponents 2 and 1.
    [Theory]
    [InlineData(4, .25)]
    [InlineData(6, .5625)]
    [InlineData(8, 1)]
    [InlineData(9, .5)]
    [InlineData(10, 0)]
    [InlineData(0, 0)]
    public void A_target_in_the_middle(double ease, double desirability) =>
        Assert.Equal(desirability, (Target(0, 8, 10) with { ExponentBelow = 2 }).Desirability(ease), 1e-12);

    // The tyre-tread example of Derringer and Suich 1980; coefficients from memory, checked because they give the published optimum.
    [Theory]
    [InlineData(-.050, .145, -.868, .188665, 1, .657313, .932660, .583172)]
    [InlineData(0, 0, 0, .3824, .870367, .0038, .812, .179015)]
    public void The_tyre_tread_of_Derringer_and_Suich(double a, double b, double c, double d1, double d2, double d3, double d4, double overall)
    {
        double[] responses =
        [
            139.12 + (16.49 * a) + (17.88 * b) + (10.91 * c) - (4.01 * a * a) - (3.45 * b * b) - (1.57 * c * c) + (5.13 * a * b) + (7.13 * a * c) + (7.88 * b * c),
            1261.11 + (268.15 * a) + (246.50 * b) + (139.48 * c) - (83.55 * a * a) - (124.79 * b * b) + (199.17 * c * c) + (69.38 * a * b) + (94.13 * a * c) + (104.38 * b * c),
            400.38 - (99.67 * a) - (31.40 * b) - (73.92 * c) + (7.93 * a * a) + (17.31 * b * b) + (.43 * c * c) + (8.75 * a * b) + (6.25 * a * c) + (1.25 * b * c),
            68.91 - (1.41 * a) + (4.32 * b) + (1.63 * c) + (1.56 * a * a) + (.06 * b * b) - (.32 * c * c) - (1.63 * a * b) + (.13 * a * c) - (.25 * b * c),
        ];
        Criterion[] goals = [Larger(120, 170, 1), Larger(1000, 1300, 1), Target(400, 500, 600), Target(60, 67.5, 75)];
        double[] expected = [d1, d2, d3, d4];

        for (int i = 0; i < goals.Length; i++)
        {
            Assert.Equal(expected[i], goals[i].Desirability(responses[i]), 1e-5);
        }

        Assert.Equal(overall, FootScore.Of(goals, responses), 1e-5);
    }

    [Fact]
    public void One_place_that_cannot_be_worn_vetoes_the_rest() =>
        Assert.Equal(0, FootScore.Of([Target(0, 1, 2), Target(0, 1, 2)], [1, 3]));

    [Fact]
    public void Heavier_places_count_for_more()
    {
        // d = ½ with weight 3 and 1 with weight 1: ½ to the power of ¾.
        Criterion[] criteria = [Larger(0, 10, 1) with { Weight = 3 }, Larger(0, 10, 1)];

        Assert.Equal(Math.Pow(.5, .75), FootScore.Of(criteria, [5, 12]), 1e-12);
    }

    [Fact]
    public void Eases_that_are_good_enough_are_those_whose_desirability_says_so()
    {
        var criterion = new Criterion("length", -4, -1, 2, 6, 3) { ExponentAbove = 2 };

        var (from, to) = criterion.EasesOf(.5);

        Assert.Equal(-2.5, from, 1e-12);
        Assert.Equal(.5, criterion.Desirability(to), 1e-12);
    }

    [Theory]
    [InlineData(-4, 0)]
    [InlineData(-9, 0)]
    [InlineData(-1, 1.0 / 3)]
    [InlineData(.5, .5)]
    [InlineData(2, 2.0 / 3)]
    [InlineData(4, 5.0 / 6)]
    [InlineData(6, 1)]
    [InlineData(60, 1)]
    public void A_strip_shows_what_is_right_in_its_middle_third(double ease, double place) =>
        Assert.Equal(place, new Criterion("length", -4, -1, 2, 6, 3).OnStrip(ease), 1e-12);

    [Fact]
    public void A_strip_without_an_upper_end_never_leaves_its_middle()
    {
        var endless = new Criterion("toe-line", -6, -2, double.PositiveInfinity, double.PositiveInfinity, .5);

        Assert.Equal(1.0 / 3, endless.OnStrip(-2), 1e-12);
        Assert.InRange(endless.OnStrip(1000), .5, 2.0 / 3);
    }

    private static Criterion Larger(double low, double high, double exponent) =>
        new("larger", low, high, double.PositiveInfinity, double.PositiveInfinity, 1) { ExponentBelow = exponent };

    private static Criterion Target(double low, double middle, double high) => new("target", low, middle, middle, high, 1);
}
