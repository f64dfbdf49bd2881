using CsCheck;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.TryOns;

public class CheckTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;
    private static readonly FeetBelief Anybody = FeetBelief.Prior(Sex.Female, null, Defaults);
    private static readonly ShoeOnFile[] Shoes = [.. Enumerable.Range(0, 12).Select(i => new ShoeOnFile(
        $"pair-{i:00}", $"maker-{i % 2}", $"model-{i % 4}", ShoeForm.FromLabel(new SizeLabel(SizeSystem.Find("mondopoint")!, 235 + (5 * (i / 4)), (i % 3) - 1), Defaults), OnShelf: true))];

    private static readonly Gen<CheckAnswer> AnyAnswer =
        Gen.Select(Gen.Enum<Side>(), Gen.Int[0, Defaults.Checks.Count - 1].Select(i => Defaults.Checks[i].Id), Gen.Int[0, 2], Gen.Bool)
            .Select((foot, check, answer, byDancer) => new CheckAnswer(foot, check, answer, byDancer));

    private static readonly Gen<TryOn[]> SomeTryOns =
        Gen.Select(Gen.Int[0, Shoes.Length - 1].Select(i => Shoes[i]), AnyAnswer.Array[1, 6]).Select((shoe, answers) => new TryOn(shoe.Sku, null, answers, [])).Array[1, 3];

    // Answers are log-concave, so that what they leave is narrower than the Gaussian they came to, in every direction (Brascamp
    // and Lieb 1976). Beside other answers a surprising one may widen a little what those had narrowed, in truth as in the model.
    [Fact]
    public void Checks_never_widen_the_joint_covariance_in_any_direction() =>
        SomeTryOns.Sample(
            tryOns =>
            {
                var before = JointBelief.Of(Asked([.. tryOns.Select(tryOn => tryOn with { Answers = [] })])).All;
                var after = JointBelief.Of(Asked(tryOns)).All;
                double[] taken = [.. Enumerable.Range(0, before.Covariance.Length).Select(i => before.Covariance[i] - after.Covariance[i])];
                for (int i = 0; i < before.Size; i++)
                {
                    taken[(i * before.Size) + i] += 1e-9;
                }

                _ = Vectors.Cholesky(taken, before.Size); // throws where a direction became wider
            },
            iter: 150);

    [Fact]
    public void Left_and_right_changed_change_the_answer_over() =>
        SomeTryOns.Sample(
            tryOns =>
            {
                TryOn[] flipped = [.. tryOns.Select(tryOn => tryOn with { Answers = [.. tryOn.Answers.Select(answer => answer with { Foot = Other(answer.Foot) })] })];
                var one = Shortlist.Judge(Asked(tryOns), Shoes[5]);
                var other = Shortlist.Judge(Asked(flipped), Shoes[5]);
                var left = one.Criteria.Where(fit => fit.Foot == Side.Left).Select(fit => fit.High - fit.Low);
                var right = other.Criteria.Where(fit => fit.Foot == Side.Right).Select(fit => fit.High - fit.Low);
                Assert.All(left.Zip(right), pair => Assert.Equal(pair.First, pair.Second, 1e-6));
                Assert.Equal(one.ChanceOfFit, other.ChanceOfFit, .02); // drawn: the fixed draws are not the same for both feet
            },
            iter: 40);

    [Fact]
    public void The_order_in_which_the_same_answers_came_moves_no_chance() =>
        Gen.Select(SomeTryOns, Gen.Int[0, 1_000_000]).Sample(
            (tryOns, seed) =>
            {
                var random = new Random(seed);
                TryOn[] shuffled = [.. tryOns.Select(tryOn => tryOn with { Answers = Shuffled([.. tryOn.Answers], random) })];
                random.Shuffle(shuffled);
                double one = Shortlist.Judge(Asked(tryOns), Shoes[7]).ChanceOfFit;
                double other = Shortlist.Judge(Asked(shuffled), Shoes[7]).ChanceOfFit;
                Assert.Equal(one, other, .005);
            },
            iter: 60);

    // Feet and shoes drawn by plain code, of which those are kept that would have given these answers.
    [Fact]
    public void Several_checks_agree_with_draws_of_which_only_the_likely_ones_are_kept()
    {
        CheckAnswer[] answers =
        [
            new(Side.Left, "toes-flat", 2), new(Side.Right, "heel-fabric", 2), new(Side.Left, "ball-sides", 0), new(Side.Right, "outer-toes", 0), new(Side.Left, "drop", 1),
        ];
        var question = Asked([new TryOn(Shoes[3].Sku, null, answers, [])]);
        var before = JointBelief.Of(question with { TryOns = [question.TryOns[0] with { Answers = [] }] });
        var after = JointBelief.Of(question).All;

        const int Draws = 400_000;
        var random = new Random(3);
        double[] lower = Vectors.Cholesky(before.All.Covariance, before.All.Size);
        double[] mean = new double[before.All.Size];
        double[] square = new double[before.All.Size];
        double weights = 0;
        double weightsSquared = 0;
        double[] z = new double[mean.Length];
        double[] x = new double[mean.Length];
        for (int draw = 0; draw < Draws; draw++)
        {
            for (int i = 0; i < z.Length; i++)
            {
                z[i] = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
                x[i] = before.All.Mean[i] + Vectors.Dot(lower.AsSpan(i * z.Length, i + 1), z.AsSpan(0, i + 1));
            }

            double weight = answers.Aggregate(1.0, (product, answer) => product * Likelihood(answer, before, x));
            weights += weight;
            weightsSquared += weight * weight;
            for (int i = 0; i < mean.Length; i++)
            {
                mean[i] += weight * x[i];
                square[i] += weight * x[i] * x[i];
            }
        }

        double error = 1 / Math.Sqrt(weights * weights / weightsSquared);
        for (int i = 0; i < mean.Length; i++)
        {
            double centre = mean[i] / weights;
            double sd = Math.Sqrt((square[i] / weights) - (centre * centre));
            Assert.Equal(centre, after.Mean[i], sd * ((5 * error) + .02));
            Assert.Equal(sd, Math.Sqrt(after.Variance(i)), sd * ((5 * error) + .03));
        }
    }

    [Fact]
    public void Pads_under_the_foot_count_while_a_check_is_made()
    {
        // Toes reach the end with a cap that takes 1.5 mm: the bare shoe is longer than if they reached it without.
        double Ease(params PadUnderFoot[] pads) => Shortlist.Judge(
            Asked([new TryOn(Shoes[0].Sku, null, [new CheckAnswer(Side.Left, "toes-flat", 0)], pads)]) with { Defaults = Defaults with { PadRules = Defaults.PadRules with { MostCorrecting = 0 } } },
            Shoes[0]).Criteria[0].Ease;

        Assert.True(Ease(new PadUnderFoot(Side.Left, "toe-cap")) > Ease() + .5);
    }

    [Fact]
    public void A_dancers_word_and_a_first_pair_count_for_less()
    {
        double Taken(bool byDancer, bool firstPair)
        {
            var question = Asked([new TryOn(Shoes[0].Sku, null, [new CheckAnswer(Side.Left, "toes-flat", 2, byDancer)], [])]) with { FirstPair = firstPair };
            return Anybody.Joint.Variance(0) - JointBelief.Of(question).All.Variance(0);
        }

        Assert.True(Taken(false, false) > Taken(true, false));
        Assert.Equal(Taken(true, false), Taken(false, true), 1e-9);
        Assert.True(Taken(true, false) > Taken(true, true));
    }

    [Fact]
    public void What_is_only_spoken_about_changes_nothing()
    {
        var seen = Asked([new TryOn(Shoes[0].Sku, null, [new CheckAnswer(Side.Left, "sole-line", 2)], [])]);
        var nothing = Asked([new TryOn(Shoes[0].Sku, null, [], [])]);

        Assert.Equal(JointBelief.Of(nothing).All.Covariance.ToArray(), JointBelief.Of(seen).All.Covariance.ToArray());
    }

    private static ShortlistQuestion Asked(TryOn[] tryOns) => new() { Feet = Anybody, Shoes = Shoes, Kind = "pointe", From = ShortlistFrom.Catalogue, TryOns = tryOns };

    private static Side Other(Side foot) => foot == Side.Left ? Side.Right : Side.Left;

    private static T[] Shuffled<T>(T[] items, Random random)
    {
        random.Shuffle(items);
        return items;
    }

    private static double Likelihood(CheckAnswer answer, JointBelief belief, double[] x)
    {
        var check = Defaults.FindCheck(answer.Check)!;
        double seen = 0;
        foreach (var term in check.Sees)
        {
            double[] direction = new double[x.Length];
            seen += belief.AddEase(direction, Shoes[3], answer.Foot, EaseModel.RowOf(term.Criterion, Defaults), term.Factor, Defaults) + Vectors.Dot(direction, x);
        }

        double above = answer.Answer == 2 ? 1 : StandardNormal.Cdf(((answer.Answer == 0 ? check.Lower : check.Upper) - seen) / check.Noise);
        double below = answer.Answer == 0 ? 0 : StandardNormal.Cdf(((answer.Answer == 1 ? check.Lower : check.Upper) - seen) / check.Noise);
        return above - below;
    }
}
