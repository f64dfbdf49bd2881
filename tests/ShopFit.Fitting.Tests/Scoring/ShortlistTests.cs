using CsCheck;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Pads;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Scoring;

public class ShortlistTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;
    private static readonly FeetBelief Feet = FeetBelief.Prior(Sex.Female, 14, Defaults).After(
        [
            Reading.Of(Side.Left, Trait.Length, 238), Reading.Of(Side.Right, Trait.Length, 236),
            Reading.Of(Side.Left, Trait.BallBreadth, 90), Reading.Of(Side.Right, Trait.BallBreadth, 89),
            Reading.InWords(Side.Left, Trait.ToeSlope, 1), Reading.InWords(Side.Right, Trait.ToeSlope, 2),
        ],
        Defaults).Belief;

    private static readonly ShoeOnFile[] Shoes = [.. Catalogue()];

    private static ShortlistQuestion Question => new() { Feet = Feet, Shoes = Shoes, Kind = "pointe", From = ShortlistFrom.Catalogue };

    // Checked against a million draws by simple code of its own.
    [Fact]
    public void Shown_chances_are_within_a_hundredth_of_the_truth()
    {
        var list = Shortlist.Of(Question, TestContext.Current.CancellationToken);

        Assert.Equal(MonteCarlo.ChanceOfFit(Feet, list.Pairs[0].Shoe.Form, Defaults, 1_000_000), list.Pairs[0].ChanceOfFit, .01);
        Assert.Equal(MonteCarlo.ChanceOfFit(Feet, list.Pairs[9].Shoe.Form, Defaults, 200_000), list.Pairs[9].ChanceOfFit, .01);
    }

    [Fact]
    public void The_best_are_shown_best_first_and_nothing_better_is_left_out()
    {
        var list = Shortlist.Of(Question with { Limit = 5 }, TestContext.Current.CancellationToken);
        var all = Shoes.Select(shoe => Shortlist.Judge(Question, shoe)).OrderByDescending(fit => fit.ChanceOfFit).ToArray();

        Assert.Equal(all.Take(5).Select(fit => fit.Shoe.Sku), list.Pairs.Select(fit => fit.Shoe.Sku));
        Assert.Equal(all.Take(5).Select(fit => fit.ChanceOfFit), list.Pairs.Select(fit => fit.ChanceOfFit));
    }

    [Fact]
    public void A_pair_is_judged_as_the_list_judges_it()
    {
        var listed = Shortlist.Of(Question, TestContext.Current.CancellationToken).Pairs[3];
        var judged = Shortlist.Judge(Question, listed.Shoe);

        Assert.Equal((listed.ChanceOfFit, listed.Score), (judged.ChanceOfFit, judged.Score));
        Assert.Equal(listed.Pads, judged.Pads);
        Assert.Equal(listed.Criteria, judged.Criteria);
    }

    [Fact]
    public void The_same_question_gets_the_same_answer_to_the_bit_whatever_the_order_of_the_shoes()
    {
        var first = Shortlist.Of(Question, TestContext.Current.CancellationToken);
        var second = Shortlist.Of(Question with { Shoes = [.. Shoes.Reverse()] }, TestContext.Current.CancellationToken);

        Assert.Equal(first.ChanceOnShelf, second.ChanceOnShelf);
        Assert.Equal(
            first.Pairs.Select(fit => (fit.Shoe.Sku, fit.ChanceOfFit, fit.Score)),
            second.Pairs.Select(fit => (fit.Shoe.Sku, fit.ChanceOfFit, fit.Score)));
    }

    [Fact]
    public void From_the_shelf_only_what_stands_there_is_shown_and_one_of_it_fits_at_least_as_often_as_its_best()
    {
        var list = Shortlist.Of(Question with { From = ShortlistFrom.Shelf }, TestContext.Current.CancellationToken);

        Assert.All(list.Pairs, fit => Assert.True(fit.Shoe.OnShelf));
        Assert.InRange(list.ChanceOnShelf, list.Pairs[0].ChanceOfFit, 1);
    }

    [Fact]
    public void When_nothing_can_fit_the_nearest_are_still_shown()
    {
        var list = Shortlist.Of(
            Question with { Feet = FeetBelief.Prior(Sex.Male, null, Defaults).After([Reading.Of(Side.Left, Trait.Length, 320), Reading.Of(Side.Right, Trait.Length, 320)], Defaults).Belief },
            TestContext.Current.CancellationToken);

        Assert.Equal(10, list.Pairs.Count);
        Assert.All(list.Pairs, fit => Assert.Equal(0, fit.ChanceOfFit));
        Assert.Equal(0, list.ChanceOnShelf);
    }

    [Fact]
    public void A_shoe_a_millimetre_longer_has_a_millimetre_more_ease() =>
        Gen.Double[-20, 20].Sample(
            longer =>
            {
                double Ease(double by) => Shortlist.Judge(Question, Measured("one", 238 + by)).Criteria[0].Ease;
                Assert.Equal(longer, Ease(longer) - Ease(0) + PadsTaken(longer) - PadsTaken(0), 1e-9);
            },
            iter: 20);

    [Theory]
    [InlineData("pointe", 9)]
    [InlineData("demi-pointe", 8)]
    [InlineData("soft", 3)]
    [InlineData("jazz", 3)]
    [InlineData("tap", 3)]
    [InlineData("character", 3)]
    public void Each_kind_is_asked_its_own_questions(string kind, int criteria)
    {
        var fit = Shortlist.Judge(Question with { Kind = kind }, Shoes[0]);

        Assert.Equal(2 * criteria, fit.Criteria.Count);
        Assert.InRange(fit.ChanceOfFit, 0, 1);
        Assert.InRange(fit.Score, 0, 1);
    }

    [Fact]
    public void What_cannot_be_answered_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Shortlist.Of(Question with { Kind = "wellington" }, TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentOutOfRangeException>(() => Shortlist.Of(Question with { Limit = 0 }, TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentException>(() => Shortlist.Judge(Question with { TryOns = [new TryOn("unknown", null, [], [])] }, Shoes[0]));
        Assert.Throws<ArgumentException>(() => Shortlist.Judge(
            Question with { TryOns = [new TryOn(Shoes[0].Sku, null, [new CheckAnswer(Side.Left, "wiggle", 1)], [])] }, Shoes[0]));
    }

    [Fact]
    public void One_answer_at_a_try_on_agrees_with_the_closed_formula()
    {
        // Toes crumpled: ease of length + noise below −2; the ease is a difference of foot, maker, model and pair.
        var shoe = Shoes[0];
        var judged = Shortlist.Judge(Question, shoe).Criteria[0];
        double sd = (judged.High - judged.Ease) / StandardNormal.Quantile(.95);
        double mean = judged.Ease + PadsUnder(Question, shoe);
        double seen = Math.Sqrt((sd * sd) + (1.5 * 1.5));
        var truncated = TruncatedNormal.Between(double.NegativeInfinity, (-2 - mean) / seen);

        var told = Question with { TryOns = [new TryOn(shoe.Sku, null, [new CheckAnswer(Side.Left, "toes-flat", 0)], [])] };
        var after = Shortlist.Judge(told, shoe).Criteria[0];

        Assert.Equal(mean + (sd * sd / seen * truncated.Mean), after.Ease + PadsUnder(told, shoe), 1e-9);
        Assert.Equal(Math.Sqrt((sd * sd) - (sd * sd / seen * (sd * sd / seen) * (1 - truncated.Variance))), (after.High - after.Ease) / StandardNormal.Quantile(.95), 1e-9);
    }

    [Fact]
    public void The_order_of_answers_and_try_ons_does_not_matter()
    {
        CheckAnswer[] answers = [new(Side.Left, "toes-flat", 2), new(Side.Right, "ball-sides", 0), new(Side.Right, "outer-toes", 0, ByDancer: true), new(Side.Left, "sole-line", 2)];
        TryOn[] tried = [new(Shoes[3].Sku, false, answers, []), new(Shoes[8].Sku, null, [new(Side.Left, "arch", 1)], [])];
        TryOn[] turned = [tried[1], tried[0] with { Answers = [.. answers.Reverse()] }];

        var first = Shortlist.Judge(Question with { TryOns = tried }, Shoes[5]);
        var second = Shortlist.Judge(Question with { TryOns = turned }, Shoes[5]);

        Assert.Equal((first.ChanceOfFit, first.Score), (second.ChanceOfFit, second.Score));
    }

    [Fact]
    public void Said_to_fit_it_fits_and_said_not_to_it_does_not()
    {
        var best = Shortlist.Of(Question, TestContext.Current.CancellationToken).Pairs[0];

        double no = Shortlist.Judge(Question with { TryOns = [new TryOn(best.Shoe.Sku, false, [], [])] }, best.Shoe).ChanceOfFit;
        double yes = Shortlist.Judge(Question with { TryOns = [new TryOn(best.Shoe.Sku, true, [], best.Pads)] }, best.Shoe).ChanceOfFit;

        Assert.Equal(0, no);
        Assert.InRange(yes, .9, 1); // stated pads need not be allowed ones for every foot that they fit
    }

    // This pair leaves the other finalists so little to cover that the rest of the shelf, added on, led past certainty.
    [Fact]
    public void The_chance_that_one_on_the_shelf_fits_stays_a_chance_after_a_pair_that_fits()
    {
        var question = Question with
        {
            Shoes = [.. Shoes.Select(shoe => new ShoeOnFile(shoe.Sku, shoe.Maker, shoe.Model, shoe.Form, OnShelf: true))],
            From = ShortlistFrom.Shelf,
            Limit = 1,
            TryOns = [new TryOn("alder-30", true, [], [new(Side.Left, "heel-cushion"), new(Side.Right, "toe-cushion")])],
        };

        Assert.InRange(Shortlist.Of(question, TestContext.Current.CancellationToken).ChanceOnShelf, .99, 1);
    }

    [Fact]
    public void A_model_that_runs_long_is_known_to_run_long_in_its_other_sizes()
    {
        // Ease of another size of the model rises more than that of another maker's shoe of the same form.
        var tried = Measured("tried", 236);
        var sister = Measured("sister", 240);
        var stranger = new ShoeOnFile("stranger", "other maker", "other model", sister.Form, true);
        ShoeOnFile[] shoes = [tried, sister, stranger];
        var before = Question with { Shoes = shoes };
        var after = before with { TryOns = [new TryOn("tried", null, [new(Side.Left, "toes-flat", 2), new(Side.Right, "toes-flat", 2)], [])] };

        double Gain(ShoeOnFile shoe) =>
            Shortlist.Judge(after, shoe).Criteria[0].Ease + PadsUnder(after, shoe) - Shortlist.Judge(before, shoe).Criteria[0].Ease - PadsUnder(before, shoe);

        Assert.True(Gain(sister) > Gain(stranger) + .1);
        Assert.True(Gain(stranger) > .1);
    }

    private static double PadsTaken(double longer) => PadsUnder(Question, Measured("one", 238 + longer));

    // What the pads of the answer take from the length of the left shoe.
    private static double PadsUnder(ShortlistQuestion question, ShoeOnFile shoe) =>
        -Shortlist.Judge(question, shoe).Pads.Where(pad => pad.Foot == Side.Left).Sum(pad => PadSets.ShiftOf([Defaults.FindPad(pad.Pad)!], "length"));

    private static ShoeOnFile Measured(string sku, double length)
    {
        var label = new SizeLabel(SizeSystem.Find("mondopoint")!, 240);
        double?[] known = new double?[ShoeForm.Parts];
        var form = ShoeForm.FromLabel(label, Defaults);
        for (int part = 0; part < known.Length; part++)
        {
            known[part] = form[(FormPart)part];
        }

        known[0] = length;
        return new ShoeOnFile(sku, "maker", "model", ShoeForm.Of(known, FormSource.Measured, label, Defaults), OnShelf: true);
    }

    private static IEnumerable<ShoeOnFile> Catalogue()
    {
        var system = SizeSystem.Find("mondopoint")!;
        foreach (string model in new[] { "alder", "birch", "cedar" })
        {
            for (int i = 0; i < 45; i++)
            {
                var label = new SizeLabel(system, 220 + (i / 3 * 2.5), (i % 3) - 1, model.Length - 5, 0, 5);
                var fromLabel = ShoeForm.FromLabel(label, Defaults);
                double?[] known = [.. Enumerable.Range(0, ShoeForm.Parts).Select(part => model == "cedar" ? null : (double?)fromLabel[(FormPart)part])];
                yield return new ShoeOnFile($"{model}-{i:00}", "maker", model, ShoeForm.Of(known, model == "alder" ? FormSource.Measured : FormSource.Maker, label, Defaults), i % 2 == 0);
            }
        }
    }
}
