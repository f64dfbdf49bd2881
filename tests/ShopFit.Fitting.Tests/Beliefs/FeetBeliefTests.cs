using CsCheck;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;

namespace ShopFit.Fitting.Beliefs;

public class FeetBeliefTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;

    // ANSUR II 2012, regressions computed from the public rows; tolerances are what their rounding allows.
    [Theory]
    [InlineData(Sex.Female, Trait.BallBreadth, 40.160, .2134, 3.98)]
    [InlineData(Sex.Female, Trait.BallGirth, 86.942, .5732, 9.37)]
    [InlineData(Sex.Female, Trait.HeelToBall, 2.609, .7286, 3.30)]
    [InlineData(Sex.Female, Trait.HeelBreadth, 14.525, .2137, 4.44)]
    [InlineData(Sex.Male, Trait.BallBreadth, 38.091, .2352, 4.23)]
    [InlineData(Sex.Male, Trait.BallGirth, 92.150, .5895, 10.38)]
    [InlineData(Sex.Male, Trait.HeelToBall, .459, .7393, 3.98)]
    [InlineData(Sex.Male, Trait.HeelBreadth, 17.742, .2019, 4.79)]
    public void Adults_keep_the_regressions_of_the_survey(Sex sex, Trait trait, double constant, double slope, double residual)
    {
        var prior = FeetBelief.Prior(sex, null, Defaults).Joint;
        double found = prior.Covariance[(int)trait] / prior.Variance(0);

        // Two SDs and a correlation, each rounded, leave a thousandth of the slope open.
        Assert.Equal(slope, found, 1e-3 * slope);
        Assert.Equal(constant, prior.Mean[(int)trait] - (found * prior.Mean[0]), 1e-3 * slope * prior.Mean[0]);
        Assert.Equal(residual, Math.Sqrt(prior.Variance((int)trait) - (found * found * prior.Variance(0))), .011);
    }

    // ANSUR II 2012: girth on length and breadth together.
    [Theory]
    [InlineData(Sex.Female, 12.204, .1761, 1.8610, 5.75)]
    [InlineData(Sex.Male, 17.760, .1303, 1.9530, 6.28)]
    public void Girth_follows_from_length_and_breadth(Sex sex, double constant, double onLength, double onBreadth, double residual)
    {
        var prior = FeetBelief.Prior(sex, null, Defaults);
        var exact = Defaults with { ReadingSd = [.. Enumerable.Repeat(1e-6, Traits.Count)] };
        double Girth(double length, double breadth) => Read(prior, exact, (Trait.Length, length), (Trait.BallBreadth, breadth)).Mean(Side.Left, Trait.BallGirth);

        Assert.Equal(onLength, Girth(251, 95) - Girth(250, 95), 3e-3);
        Assert.Equal(onBreadth, Girth(250, 96) - Girth(250, 95), 3e-3);
        Assert.Equal(constant + (onLength * 250) + (onBreadth * 95), Girth(250, 95), .05);
        Assert.Equal(residual, Read(prior, exact, (Trait.Length, 250), (Trait.BallBreadth, 95)).Sd(Side.Left, Trait.BallGirth), .01);
    }

    // 19 % of people differ by more than 4 mm (SATRA Bulletin 2018, as reported): a normal difference with an SD of 3.05 mm.
    [Fact]
    public void Left_and_right_differ_as_published()
    {
        var women = FeetBelief.Prior(Sex.Female, null, Defaults).Joint;
        double sd = Math.Sqrt(2 * (women.Variance(0) - women.Covariance[Traits.Count]));

        Assert.Equal(3.05, sd, .01);
        Assert.Equal(.19, 2 * (1 - StandardNormal.Cdf(4 / sd)), .002);
    }

    // Snyder et al. 1977, UM-HSRI-77-17; in between, straight lines.
    [Theory]
    [InlineData(Sex.Female, 4, 160.9, 10.2)]
    [InlineData(Sex.Female, 9, 207.1, 12.8)]
    [InlineData(Sex.Female, 12, 230.2, 12.1)]
    [InlineData(Sex.Female, 12.5, 232.3, 12.2)]
    [InlineData(Sex.Male, 9, 210.2, 12.7)]
    [InlineData(Sex.Male, 13, 243.9, 15.4)]
    [InlineData(Sex.Male, 16, 265.1, 12.5)]
    public void Children_are_as_long_as_the_table_says(Sex sex, double age, double mean, double sd)
    {
        var prior = FeetBelief.Prior(sex, age, Defaults);

        Assert.Equal(mean, prior.Mean(Side.Right, Trait.Length), 1e-9);
        Assert.Equal(sd, prior.Sd(Side.Right, Trait.Length), 1e-9);
    }

    [Theory]
    [InlineData(Sex.Female)]
    [InlineData(Sex.Male)]
    public void No_birthday_makes_a_foot_jump(Sex sex)
    {
        for (double age = 2; age < 20; age += 1.0 / 365)
        {
            double grown = FeetBelief.Prior(sex, age + (1.0 / 365), Defaults).Mean(Side.Left, Trait.Length)
                - FeetBelief.Prior(sex, age, Defaults).Mean(Side.Left, Trait.Length);
            Assert.InRange(grown, -.01, .04);
        }
    }

    // Cheng et al. 1997 found girls of three 153 ± 9 mm long; the table, continued by its first step, is not far off.
    [Fact]
    public void Below_the_table_its_first_step_goes_on_down_to_two_years()
    {
        Assert.Equal(153, FeetBelief.Prior(Sex.Female, 3, Defaults).Mean(Side.Left, Trait.Length), 1.0);
        Assert.Equal(
            FeetBelief.Prior(Sex.Female, 2, Defaults).Mean(Side.Left, Trait.Length),
            FeetBelief.Prior(Sex.Female, .5, Defaults).Mean(Side.Left, Trait.Length));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void An_age_that_is_no_age_is_refused(double age) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FeetBelief.Prior(Sex.Female, age, Defaults));

    [Fact]
    public void Children_keep_the_adults_regression_on_length()
    {
        var girls = FeetBelief.Prior(Sex.Female, 10, Defaults).Joint;

        Assert.Equal(.5732, girls.Covariance[(int)Trait.BallGirth] / girls.Variance(0), 4e-4);
        Assert.Equal(86.942 + (.5732 * 215.0), girls.Mean[(int)Trait.BallGirth], .12);
    }

    [Fact]
    public void A_gauge_read_to_half_sizes_is_off_by_1_58_mm()
    {
        var reading = new Reading(Side.Left, Trait.Length, 7.5, ReadingUnit.Size, SizeSystem.Find("us-women"));

        Assert.Equal(1.58, Math.Sqrt(NumberReading.Of(0, reading, Defaults).Variance), .005);
    }

    [Fact]
    public void Without_a_sex_the_readings_decide()
    {
        var prior = FeetBelief.Prior(null, null, Defaults);
        double wide = prior.Sd(Side.Left, Trait.Length);
        var large = Read(prior, Defaults, (Trait.Length, 290));
        var men = Read(FeetBelief.Prior(Sex.Male, null, Defaults), Defaults, (Trait.Length, 290));

        Assert.Equal((246.29 + 271.18) / 2, prior.Mean(Side.Left, Trait.Length), 1e-9);
        Assert.True(wide > 17);
        Assert.Equal(men.Mean(Side.Left, Trait.BallGirth), large.Mean(Side.Left, Trait.BallGirth), .6);
    }

    [Fact]
    public void One_word_agrees_with_brute_force()
    {
        // Toe slope 16 ± 6 of the population; thresholds at its 30th and 70th percentile, noise half its SD.
        var belief = FeetBelief.Prior(Sex.Female, null, Defaults).After([Reading.InWords(Side.Left, Trait.ToeSlope, 2)], Defaults).Belief;
        double threshold = 16 + (6 * StandardNormal.Quantile(.7));
        double mass = 0;
        double first = 0;
        double second = 0;
        for (double u = -10; u <= 10; u += .001)
        {
            double x = 16 + (6 * u);
            double weight = Math.Exp(-u * u / 2) * StandardNormal.Cdf((x - threshold) / 3);
            mass += weight;
            first += weight * x;
            second += weight * x * x;
        }

        Assert.Equal(first / mass, belief.Mean(Side.Left, Trait.ToeSlope), 1e-9);
        Assert.Equal(Math.Sqrt((second / mass) - Math.Pow(first / mass, 2)), belief.Sd(Side.Left, Trait.ToeSlope), 1e-9);
    }

    [Fact]
    public void Of_a_repeated_word_the_last_holds()
    {
        var prior = FeetBelief.Prior(Sex.Female, null, Defaults);
        var twice = prior.After([Reading.InWords(Side.Left, Trait.Squeeze, 0), Reading.InWords(Side.Left, Trait.Squeeze, 2)], Defaults).Belief;
        var once = prior.After([Reading.InWords(Side.Left, Trait.Squeeze, 2)], Defaults).Belief;

        Assert.Equal(once.Mean(Side.Right, Trait.Squeeze), twice.Mean(Side.Right, Trait.Squeeze));
    }

    [Fact]
    public void Repeated_numbers_are_independent_readings()
    {
        var prior = FeetBelief.Prior(Sex.Female, null, Defaults);
        double once = Read(prior, Defaults, (Trait.Length, 240)).Sd(Side.Left, Trait.Length);
        double twice = Read(prior, Defaults, (Trait.Length, 240), (Trait.Length, 240)).Sd(Side.Left, Trait.Length);

        Assert.Equal(Math.Sqrt(1 / ((1 / (12.44 * 12.44)) + 1)), once, 1e-9);
        Assert.Equal(Math.Sqrt(1 / ((1 / (12.44 * 12.44)) + 2)), twice, 1e-9);
    }

    [Fact]
    public void A_gross_misreading_is_kept_weighed_down_and_told()
    {
        var (belief, doubts) = FeetBelief.Prior(Sex.Female, null, Defaults).After(
            [Reading.Of(Side.Left, Trait.Length, 240), Reading.Of(Side.Right, Trait.Length, 300), Reading.Of(Side.Left, Trait.Length, 241)], Defaults);

        var doubt = Assert.Single(doubts);
        Assert.Equal(1, doubt.Index);
        Assert.Equal(240.5, doubt.Expected, .5);
        Assert.Equal(3.1, doubt.ExpectedSd, .2);
        Assert.InRange(doubt.Weight, double.Epsilon, .1);
        Assert.Equal(240.7, belief.Mean(Side.Right, Trait.Length), 2.0);
    }

    [Fact]
    public void A_usual_difference_between_the_feet_is_not_doubted()
    {
        var (_, doubts) = FeetBelief.Prior(Sex.Female, null, Defaults).After(
            [Reading.Of(Side.Left, Trait.Length, 240), Reading.Of(Side.Right, Trait.Length, 246)], Defaults);

        Assert.Empty(doubts);
    }

    [Fact]
    public void The_order_of_readings_does_not_matter()
    {
        Reading[] readings =
        [
            Reading.Of(Side.Left, Trait.Length, 240), Reading.Of(Side.Right, Trait.Length, 300), Reading.Of(Side.Left, Trait.BallGirth, 222),
            Reading.InWords(Side.Left, Trait.ToeSlope, 0), Reading.InWords(Side.Right, Trait.Strength, 2), Reading.Of(Side.Left, Trait.BallBreadth, 190 / 2.0),
        ];
        var prior = FeetBelief.Prior(null, 15, Defaults);
        var expected = prior.After(readings, Defaults).Belief.Joint;

        Gen.Shuffle(readings).Sample(shuffled =>
        {
            var found = prior.After(shuffled, Defaults).Belief.Joint;
            Assert.True(expected.Mean.SequenceEqual(found.Mean));
            Assert.True(expected.Covariance.SequenceEqual(found.Covariance));
        });
    }

    [Fact]
    public void A_reading_keeps_a_covariance_and_never_widens_it() =>
        Gen.Select(Gen.Bool, Gen.Int[0, Traits.Count - 1], Gen.Int[0, 1], Gen.Double[-4, 4], Gen.Int[-1, 2]).Array[1, 8].Sample(steps =>
        {
            var prior = FeetBelief.Prior(steps[0].Item1 ? Sex.Female : Sex.Male, null, Defaults);
            var readings = steps.Select(step =>
            {
                var (_, index, foot, sds, word) = step;
                var row = Traits.All[index];
                return word >= 0 && row.TakesWords
                    ? Reading.InWords((Side)foot, row.Trait, word)
                    : Reading.Of((Side)foot, row.Trait, Math.Clamp(prior.Mean((Side)foot, row.Trait) + (sds * prior.Sd((Side)foot, row.Trait)), row.Lowest, row.Highest));
            }).ToArray();

            var before = prior.Joint;
            var after = prior.After(readings, Defaults).Belief.Joint;

            int size = after.Size;
            double[] narrowed = new double[size * size];
            for (int i = 0; i < size * size; i++)
            {
                Assert.Equal(after.Covariance[i], after.Covariance[(i % size * size) + (i / size)], 1e-12);
                narrowed[i] = before.Covariance[i] - after.Covariance[i];
            }

            Assert.All(Enumerable.Range(0, size), i => Assert.True(Vectors.Cholesky(after.Covariance, size)[(i * size) + i] > 0));

            // Nothing is less certain than before, in any direction.
            for (int i = 0; i < size; i++)
            {
                narrowed[(i * size) + i] += 1e-9;
            }

            Assert.NotEmpty(Vectors.Cholesky(narrowed, size));
        });

    [Fact]
    public void A_reading_with_a_problem_is_refused() =>
        Assert.Throws<ArgumentException>(() =>
            FeetBelief.Prior(Sex.Female, null, Defaults).After([Reading.Of(Side.Left, Trait.Length, 90)], Defaults));

    [Fact]
    public void A_foot_measured_a_year_ago_has_grown_along_the_curve()
    {
        // Girls of 9 gain 7.9 mm by 10 (Snyder et al. 1977); the step's SD is half of it and 2 mm.
        var then = Read(FeetBelief.Prior(Sex.Female, 9, Defaults), Defaults, (Trait.Length, 200));
        var now = then.CarriedForward(Sex.Female, 9, 10, Defaults);

        Assert.Equal(then.Mean(Side.Left, Trait.Length) + 7.9, now.Mean(Side.Left, Trait.Length), 1e-9);
        Assert.Equal(Math.Sqrt(Math.Pow(then.Sd(Side.Left, Trait.Length), 2) + Math.Pow((7.9 / 2) + 2, 2)), now.Sd(Side.Left, Trait.Length), 1e-9);
        Assert.Equal(then.Mean(Side.Left, Trait.BallGirth) + (7.9 * .5732), now.Mean(Side.Left, Trait.BallGirth), .01);
    }

    [Fact]
    public void Grown_feet_only_become_less_certain()
    {
        var then = Read(FeetBelief.Prior(Sex.Female, null, Defaults), Defaults, (Trait.Length, 240));
        var now = then.CarriedForward(Sex.Female, 30, 33, Defaults);

        Assert.Equal(then.Mean(Side.Left, Trait.Length), now.Mean(Side.Left, Trait.Length), 1e-9);
        Assert.Equal(Math.Sqrt(Math.Pow(then.Sd(Side.Left, Trait.Length), 2) + 36), now.Sd(Side.Left, Trait.Length), 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => then.CarriedForward(Sex.Female, 33, 30, Defaults));
    }

    private static FeetBelief Read(FeetBelief prior, FitDefaults defaults, params (Trait Trait, double Value)[] readings) =>
        prior.After([.. readings.Select(reading => Reading.Of(Side.Left, reading.Trait, reading.Value))], defaults).Belief;
}
