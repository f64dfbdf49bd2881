using CsCheck;

namespace ShopFit.Fitting.Beliefs;

public class TruncatedNormalTests
{
    // Standard results for the truncated normal, computed outside this library to nine digits.
    [Theory]
    [InlineData(0, double.PositiveInfinity, .797884561, .363380228)]
    [InlineData(-1, 1, 0, .291125095)]
    [InlineData(1, 2, 1.383169047, .072742886)]
    [InlineData(2, double.PositiveInfinity, 2.373215533, .114279100)]
    public void Mean_and_variance_between_two_limits(double lower, double upper, double mean, double variance)
    {
        var between = TruncatedNormal.Between(lower, upper);

        Assert.Equal(mean, between.Mean, 1e-9);
        Assert.Equal(variance, between.Variance, 1e-9);
    }

    [Fact]
    public void A_normal_with_another_mean_and_spread_is_scaled()
    {
        var between = TruncatedNormal.Between(-2, 2);

        Assert.Equal(100, 100 + (25 * between.Mean), 1e-9);
        Assert.Equal(483.588314719, 625 * between.Variance, 1e-8);
    }

    // v = φ(t)/Φ(t) and w = v(v + t) of a one-sided answer (Herbrich, Minka and Graepel 2006), computed outside this library.
    [Theory]
    [InlineData(-2, 2.373215533, .885720900)]
    [InlineData(-1, 1.525135276, .800902334)]
    [InlineData(0, .797884561, .636619772)]
    [InlineData(.5, .509160434, .513824564)]
    [InlineData(1, .287599971, .370313714)]
    [InlineData(2, .055247863, .113548052)]
    [InlineData(-10, 10.098093234, .990554622)]
    public void One_sided_answers(double t, double v, double w)
    {
        // x above −t: its mean is v, and w is what the variance loses.
        var above = TruncatedNormal.Between(-t, double.PositiveInfinity);

        Assert.Equal(v, above.Mean, 1e-9);
        Assert.Equal(w, 1 - above.Variance, 1e-9);
    }

    // The same for an answer between −0.5 and 0.5 about t, computed outside this library.
    [Theory]
    [InlineData(0, 0, .919410845)]
    [InlineData(.5, -.459862229, .920348175)]
    [InlineData(1, -.920644605, .923057902)]
    [InlineData(2, -1.848083316, .932544613)]
    public void Two_sided_answers(double t, double v, double w)
    {
        var between = TruncatedNormal.Between(-.5 - t, .5 - t);

        Assert.Equal(v, between.Mean, 1e-9);
        Assert.Equal(w, 1 - between.Variance, 1e-9);
    }

    [Theory]
    [InlineData(30, double.PositiveInfinity)]
    [InlineData(300, double.PositiveInfinity)]
    [InlineData(40, 40.001)]
    [InlineData(-1e6, -1e5)]
    [InlineData(0, 1e-7)]
    public void Far_out_and_narrow_intervals_stay_inside_and_keep_some_spread(double lower, double upper)
    {
        var between = TruncatedNormal.Between(lower, upper);

        Assert.InRange(between.Mean, lower, upper);
        Assert.InRange(between.Variance, double.Epsilon, 1);
        Assert.True(double.IsFinite(between.LogProbability));
    }

    // Mills' ratio for large x: mean − x → 1/x and variance → 1/x² (Abramowitz and Stegun 1964, 26.2.12).
    [Fact]
    public void The_far_tail_follows_its_series()
    {
        const double x = 1000;

        var tail = TruncatedNormal.Between(x, double.PositiveInfinity);

        Assert.Equal((1 / x) - (2 / Math.Pow(x, 3)), tail.Mean - x, 1e-12);
        Assert.Equal((1 / (x * x)) - (6 / Math.Pow(x, 4)), tail.Variance, 1e-15);
    }

    [Fact]
    public void Closed_formulas_and_integrals_meet() =>
        Gen.Select(Gen.Double[-6, 6], Gen.Double[.01, 12]).Sample((lower, width) =>
        {
            var (mass, mean, variance) = Integrated(lower, lower + width);
            var between = TruncatedNormal.Between(lower, lower + width);

            Assert.Equal(Math.Log(mass), between.LogProbability, 1e-9);
            Assert.Equal(mean, between.Mean, 1e-9);
            Assert.Equal(variance, between.Variance, 1e-9);
        });

    [Theory]
    [InlineData(.5, .691462461)]
    [InlineData(-2.5, .006209665326)]
    [InlineData(0, .5)]
    public void The_distribution_itself(double x, double below) => Assert.Equal(below, StandardNormal.Cdf(x), 1e-9);

    [Fact]
    public void Quantiles_lead_back() =>
        Gen.Double[1e-9, 1 - 1e-9].Sample(p => Assert.Equal(p, StandardNormal.Cdf(StandardNormal.Quantile(p)), 1e-12));

    // Simpson's rule on a fine grid.
    private static (double Mass, double Mean, double Variance) Integrated(double lower, double upper)
    {
        const int Cells = 20_000;
        double step = (upper - lower) / Cells;
        double mass = 0;
        double first = 0;
        double second = 0;
        for (int i = 0; i <= Cells; i++)
        {
            double x = lower + (i * step);
            double weight = (i == 0 || i == Cells ? 1 : i % 2 == 1 ? 4 : 2) * step / 3 * Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);
            mass += weight;
            first += weight * x;
            second += weight * x * x;
        }

        return (mass, first / mass, (second / mass) - (first / mass * (first / mass)));
    }
}
