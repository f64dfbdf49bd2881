using System.Diagnostics;
using CsCheck;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Beliefs;

/// <summary>How probable it is that a reading is grossly wrong, against a plain sum over all combinations.</summary>
public class MisreadingsTests
{
    private static readonly FitDefaults Numbers = FitDefaults.Standard;

    // Asking from a chance of nothing on, every reading tells its own.
    private static readonly GrossReadings AllTold = Numbers.Gross with { AskFrom = 0 };

    private static readonly Gen<Reading[]> FewReadings =
        Gen.Select(Gen.Int[0, Traits.Count - 1], Gen.Int[0, 1], Gen.Double[0, 1]).Array[1, 6].Select(drawn => drawn.Select(each =>
        {
            var (index, foot, share) = each;
            var row = Traits.All[index];
            return Reading.Of((Side)foot, row.Trait, row.Lowest + (share * (row.Highest - row.Lowest)));
        }).ToArray());

    // What a foot cannot be: no adult of the survey has feet of 100 or of 350 mm (ANSUR II 2012: women 246.3 ± 12.4 mm, men 271.2 ± 13.1 mm).
    [Theory]
    [InlineData(Sex.Female, 100)]
    [InlineData(Sex.Female, 350)]
    [InlineData(Sex.Male, 100)]
    [InlineData(Sex.Male, 350)]
    [InlineData(null, 100)]
    [InlineData(null, 350)]
    public void Absurd_lengths_that_agree_are_doubted_all_the_same(Sex? sex, double absurd)
    {
        var adult = FeetBelief.Prior(sex, null, Numbers);
        Reading[][] cases =
        [
            [Length(Side.Left, absurd), Length(Side.Right, absurd)],
            [Length(Side.Left, absurd), Length(Side.Left, absurd + (absurd < 200 ? 1 : -1))],
            [Length(Side.Left, absurd), Length(Side.Right, absurd), Length(Side.Left, absurd), Length(Side.Right, absurd)],
        ];

        Assert.All(cases, readings =>
        {
            var read = adult.After(readings, Numbers);

            Assert.Equal(Enumerable.Range(0, readings.Length), read.Doubts.Select(doubt => doubt.Index));
            Assert.All(read.Doubts, doubt => Assert.InRange(doubt.Weight, 0, 0.01));
            Assert.InRange(Math.Abs(read.Belief.Mean(Side.Left, Trait.Length) - absurd), 15, 150);
        });
    }

    [Fact]
    public void What_an_absurd_pair_should_have_been_is_not_told_by_its_twin()
    {
        var read = FeetBelief.Prior(Sex.Female, null, Numbers).After([Length(Side.Left, 100), Length(Side.Right, 100)], Numbers);

        Assert.All(read.Doubts, doubt => Assert.InRange(doubt.Expected, 190, 246.3));
    }

    [Fact]
    public void Weights_are_those_of_all_combinations_summed_one_by_one() =>
        Gen.Select(FewReadings, Gen.Int[0, 2], Gen.Double[6, 40]).Sample(
            drawn =>
            {
                var (readings, which, age) = drawn;
                var priors = Priors(which == 2 ? null : (Sex)which, age);
                var numbers = Sorted(readings);

                var verdicts = Misreadings.Judge(priors, numbers, AllTold);

                double[] weights = WeightsByBruteForce(priors, numbers, AllTold);
                for (int i = 0; i < numbers.Length; i++)
                {
                    Assert.Equal(weights[i], verdicts[i].Weight, 1e-9);
                }
            },
            iter: 200);

    [Fact]
    public void Of_very_many_combinations_the_probable_ones_are_enough()
    {
        // Two of each length and breadth, a few of them slips: more combinations than are followed.
        var priors = Priors(Sex.Female, 15);
        Gen.Select(Gen.Double[-4, 4].Array[10], Gen.Double[-40, 40].Array[3]).Sample(
            drawn =>
            {
                var (noise, slips) = drawn;
                Reading[] readings = [.. noise.Select((off, i) =>
                {
                    var (trait, usual) = i / 2 % 2 == 0 ? (Trait.Length, 238) : (Trait.BallBreadth, 90);
                    return Reading.Of((Side)(i % 2), trait, usual + (i < slips.Length ? slips[i] : off));
                })];
                var numbers = Sorted([.. readings.Where(reading => reading.Check() is null)]);

                var verdicts = Misreadings.Judge(priors, numbers, AllTold);

                double[] weights = WeightsByBruteForce(priors, numbers, AllTold);
                for (int i = 0; i < numbers.Length; i++)
                {
                    Assert.Equal(weights[i], verdicts[i].Weight, 0.001);
                }
            },
            iter: 6);
    }

    [Fact]
    public void Two_hundred_readings_are_judged_before_anybody_waits()
    {
        var prior = FeetBelief.Prior(null, null, Numbers);
        Reading[] readings = [.. Enumerable.Range(0, 200).Select(i =>
        {
            var row = Traits.All[i % Traits.Count];
            var foot = (Side)(i / Traits.Count % 2);
            return Reading.Of(foot, row.Trait, i % 3 == 0 ? row.Highest : Math.Clamp(prior.Mean(foot, row.Trait) + (i % 7) - 3, row.Lowest, row.Highest));
        })];
        prior.After(readings[..20], Numbers);

        var watch = Stopwatch.StartNew();
        var read = prior.After(readings, Numbers);

        Assert.NotEmpty(read.Doubts);
        Assert.All(read.Doubts, doubt => Assert.True(double.IsFinite(doubt.Expected + doubt.ExpectedSd + doubt.Weight)));
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 2);
    }

    [Fact]
    public void A_strange_reading_gains_trust_from_a_second_that_bears_it_out()
    {
        var adult = Priors(Sex.Female, null);
        double WeightOfFirst(int times) => Misreadings.Judge(adult, Sorted([.. Enumerable.Repeat(Length(Side.Left, 205), times)]), AllTold)[0].Weight;

        Assert.True(WeightOfFirst(1) < WeightOfFirst(2));
    }

    // The sex, which readings are wrong, and which traits have an error that all their readings share: each combination by itself.
    private static double[] WeightsByBruteForce((double Weight, Gaussian Feet)[] priors, NumberReading[] readings, GrossReadings rules)
    {
        int count = readings.Length;
        double gross = rules.SdFactor * rules.SdFactor;
        int[][] several = [.. Enumerable.Range(0, count).GroupBy(i => readings[i].Index % Traits.Count).Where(group => group.Count() > 1).Select(group => group.ToArray())];
        var found = new List<(double Log, double[] Weights)>();
        foreach (var (weight, prior) in priors)
        {
            for (int combination = 0; combination < 1 << (count + several.Length); combination++)
            {
                double log = Math.Log(weight);
                double[] spread = new double[count];
                double[,] covariance = new double[count, count];
                for (int i = 0; i < count; i++)
                {
                    bool wrong = (combination >> i & 1) == 1;
                    log += Math.Log(wrong ? rules.Chance : 1 - rules.Chance);
                    spread[i] = wrong ? gross : 1;
                    for (int j = 0; j < count; j++)
                    {
                        covariance[i, j] = prior.Covariance[(readings[i].Index * prior.Size) + readings[j].Index];
                    }

                    covariance[i, i] += readings[i].Variance * spread[i];
                }

                for (int k = 0; k < several.Length; k++)
                {
                    bool shared = (combination >> (count + k) & 1) == 1;
                    log += Math.Log(shared ? rules.SharedChance : 1 - rules.SharedChance);
                    foreach (int i in shared ? several[k] : [])
                    {
                        spread[i] += gross * several[k].Length;
                        foreach (int j in several[k])
                        {
                            covariance[i, j] += gross * several[k].Max(each => readings[each].Variance);
                        }
                    }
                }

                log += LogDensity(covariance, [.. readings.Select(reading => reading.Value - prior.Mean[reading.Index])]);
                found.Add((log, [.. spread.Select(each => 1 / each)]));
            }
        }

        double highest = found.Max(each => each.Log);
        double total = found.Sum(each => Math.Exp(each.Log - highest));
        return [.. Enumerable.Range(0, count).Select(i => found.Sum(each => Math.Exp(each.Log - highest) * each.Weights[i]) / total)];
    }

    // By elimination of Gauss, without the library's own arithmetic; what is the same for all combinations is left out.
    private static double LogDensity(double[,] matrix, double[] values)
    {
        double log = 0;
        for (int k = 0; k < values.Length; k++)
        {
            log -= 0.5 * (Math.Log(matrix[k, k]) + (values[k] * values[k] / matrix[k, k]));
            for (int i = k + 1; i < values.Length; i++)
            {
                double factor = matrix[i, k] / matrix[k, k];
                values[i] -= factor * values[k];
                for (int j = k + 1; j < values.Length; j++)
                {
                    matrix[i, j] -= factor * matrix[k, j];
                }
            }
        }

        return log;
    }

    private static (double Weight, Gaussian Feet)[] Priors(Sex? sex, double? age) =>
        sex is { } known
            ? [(1, FeetBelief.Prior(known, age, Numbers).Joint)]
            : [(.5, FeetBelief.Prior(Sex.Female, age, Numbers).Joint), (.5, FeetBelief.Prior(Sex.Male, age, Numbers).Joint)];

    private static NumberReading[] Sorted(Reading[] readings) =>
        [.. Misreadings.InOrder(readings.Select((reading, place) => NumberReading.Of(place, reading, Numbers)))];

    private static Reading Length(Side foot, double value) => Reading.Of(foot, Trait.Length, value);
}
