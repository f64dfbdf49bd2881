namespace ShopFit.Fitting.Beliefs;

public class GaussianTests
{
    private static readonly double[] One = [1];

    // A constant state read ten times, computed outside this library.
    [Fact]
    public void Ten_readings_of_one_number()
    {
        double[] readings = [49.03, 48.44, 55.21, 49.98, 50.6, 52.61, 45.87, 42.64, 48.26, 55.84];
        var belief = new Gaussian([60], [225]);
        var after = readings.Select(reading => belief = belief.After(One, reading, 25)).ToArray();

        Assert.Equal((50.127, 22.5), (Math.Round(after[0].Mean[0], 3), Math.Round(after[0].Variance(0), 4)));
        Assert.Equal((49.3279, 11.8421), (Math.Round(after[1].Mean[0], 4), Math.Round(after[1].Variance(0), 4)));
        Assert.Equal((49.9596, 2.4725), (Math.Round(after[9].Mean[0], 4), Math.Round(after[9].Variance(0), 4)));
    }

    // By hand: S = 9, K = (5/9, 1/3).
    [Fact]
    public void The_sum_of_two_numbers_is_read()
    {
        var after = new Gaussian([0, 0], [4, 1, 1, 2]).After([1, 1], 3, 1);

        AssertClose([5.0 / 3, 1], after.Mean, 1e-12);
        AssertClose([11.0 / 9, -2.0 / 3, -2.0 / 3, 1], after.Covariance, 1e-12);
    }

    // One answer with a noise of 1, computed outside this library.
    [Theory]
    [InlineData(2, -1.5, 1.5, .621224611, 1.224241093, .352769203)]
    [InlineData(0, 1.5, double.PositiveInfinity, 2.268847956, 1.574946500, .251167477)]
    public void One_ordered_answer(double mean, double lower, double upper, double newMean, double newVariance, double probability)
    {
        var (after, log) = ExpectationPropagation.After(new Gaussian([mean], [4]), [new OrdinalAnswer([1], lower, upper, 1)]);

        Assert.Equal(newMean, after.Mean[0], 1e-9);
        Assert.Equal(newVariance, after.Variance(0), 1e-9);
        Assert.Equal(probability, Math.Exp(log), 1e-9);
    }

    [Fact]
    public void One_answer_about_a_combination_agrees_with_brute_force()
    {
        var prior = new Gaussian([1, -2], [4, 1.2, 1.2, 9]);
        var (after, log) = ExpectationPropagation.After(prior, [new OrdinalAnswer([.5, 1], -3, 2, 2.5)]);
        var (mass, mean, covariance) = Integrated(prior, (x, y) => Between(-3, 2, (.5 * x) + y, 2.5));

        Assert.Equal(mass, Math.Exp(log), 1e-9);
        AssertClose(mean, after.Mean, 1e-9);
        AssertClose(covariance, after.Covariance, 1e-9);
    }

    [Fact]
    public void Several_answers_come_near_brute_force_and_their_order_does_not_matter()
    {
        var prior = new Gaussian([1, -2], [4, 1.2, 1.2, 9]);
        OrdinalAnswer[] answers =
        [
            new([1, 0], 2, double.PositiveInfinity, 1.5),
            new([0, 1], double.NegativeInfinity, -3, 2.5),
            new([.5, 1], -1, 4, 2),
        ];
        var (after, log) = ExpectationPropagation.After(prior, answers);
        var (turned, turnedLog) = ExpectationPropagation.After(prior, [.. answers.Reverse()]);
        var (mass, mean, covariance) = Integrated(prior, (x, y) =>
            Between(2, 99, x, 1.5) * Between(-99, -3, y, 2.5) * Between(-1, 4, (.5 * x) + y, 2));

        AssertClose(after.Mean, turned.Mean, 1e-8);
        AssertClose(after.Covariance, turned.Covariance, 1e-8);
        Assert.Equal(log, turnedLog, 1e-8);
        AssertClose(mean, after.Mean, .02);
        AssertClose(covariance, after.Covariance, .05);
        Assert.Equal(Math.Log(mass), log, .02);
    }

    [Fact]
    public void A_mixture_keeps_mean_and_spread_of_both()
    {
        // Means 0 and 4, variances 1 and 3, half each: mean 2, variance 2 + 4.
        var mixed = Gaussian.OfMixture([(.5, new Gaussian([0], [1])), (.5, new Gaussian([4], [3]))]);

        Assert.Equal(2, mixed.Mean[0], 1e-12);
        Assert.Equal(6, mixed.Variance(0), 1e-12);
    }

    private static double Between(double lower, double upper, double z, double noise) =>
        StandardNormal.Cdf((upper - z) / noise) - StandardNormal.Cdf((lower - z) / noise);

    private static void AssertClose(ReadOnlySpan<double> expected, ReadOnlySpan<double> actual, double tolerance)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (int i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i], actual[i], tolerance);
        }
    }

    // The trapezium rule, exact to rounding for smooth functions that die out at both ends.
    private static (double Mass, double[] Mean, double[] Covariance) Integrated(Gaussian prior, Func<double, double, double> likelihood)
    {
        const int Cells = 400;
        const double Reach = 9;
        double step = 2 * Reach / Cells;
        double[] root = Vectors.Cholesky(prior.Covariance, 2);
        double mass = 0;
        double[] first = new double[2];
        double[] second = new double[4];
        for (int i = 0; i <= Cells; i++)
        {
            for (int j = 0; j <= Cells; j++)
            {
                double u = -Reach + (i * step);
                double v = -Reach + (j * step);
                double x = prior.Mean[0] + (root[0] * u);
                double y = prior.Mean[1] + (root[2] * u) + (root[3] * v);
                double weight = step * step * Math.Exp(-((u * u) + (v * v)) / 2) / (2 * Math.PI) * likelihood(x, y);
                mass += weight;
                first[0] += weight * x;
                first[1] += weight * y;
                second[0] += weight * x * x;
                second[1] += weight * x * y;
                second[3] += weight * y * y;
            }
        }

        double[] mean = [first[0] / mass, first[1] / mass];
        double cross = (second[1] / mass) - (mean[0] * mean[1]);
        return (mass, mean, [(second[0] / mass) - (mean[0] * mean[0]), cross, cross, (second[3] / mass) - (mean[1] * mean[1])]);
    }
}
