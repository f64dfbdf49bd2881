using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Learning;

public class LearntOffsetsTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;
    private static readonly FeetBelief Feet = FeetBelief.Prior(Sex.Female, null, Defaults).After(
        [Reading.Of(Side.Left, Trait.Length, 238), Reading.Of(Side.Right, Trait.Length, 238), Reading.Of(Side.Left, Trait.BallBreadth, 90)], Defaults).Belief;

    private static readonly ShoeOnFile Alder = Shoe("alder-1", "north", "alder", 240);
    private static readonly ShoeOnFile Birch = Shoe("birch-1", "north", "birch", 240);
    private static readonly ShoeOnFile Cedar = Shoe("cedar-1", "south", "cedar", 240);

    [Fact]
    public void Nothing_learnt_is_the_uncertainty_of_the_form_on_file()
    {
        var offset = LearntOffsets.None.OffsetOf(Alder, Defaults);

        Assert.All(offset.Means, mean => Assert.Equal(0, mean));
        Assert.All(Enum.GetValues<FormPart>(), part => Assert.Equal(Defaults.FormSds.Offset(part, FormSource.Label), offset.Sd(part), 1e-9));
        Assert.Equal((0, false), (offset.Fittings, offset.Frozen));
    }

    // The offset is all that is unknown: one check then has the closed formula of methods for a single ordered answer.
    [Fact]
    public void One_answer_moves_an_offset_as_the_closed_formula_says()
    {
        double foot = Feet.Sd(Side.Left, Trait.Length);
        double offset = Defaults.FormSds.Offset(FormPart.Length, FormSource.Label);
        double scatter = Defaults.FormSds.PairScatter[0];
        double ease = Alder.Form[FormPart.Length] - Feet.Mean(Side.Left, Trait.Length);
        double seen = Math.Sqrt((foot * foot) + (offset * offset) + (scatter * scatter) + (1.5 * 1.5));
        var truncated = TruncatedNormal.Between((3 - ease) / seen, double.PositiveInfinity);

        var learnt = LearntOffsets.None.After(Told([Long(Alder)], Alder)).OffsetOf(Alder, Defaults);

        double gain = offset * offset / seen;
        Assert.Equal(gain * truncated.Mean, learnt.Mean(FormPart.Length), 1e-9);
        Assert.Equal(Math.Sqrt((offset * offset) - (gain * gain * (1 - truncated.Variance))), learnt.Sd(FormPart.Length), 1e-9);
        Assert.Equal(1, learnt.Fittings);
    }

    [Fact]
    public void What_a_model_tells_is_shared_with_its_maker_and_with_nobody_else()
    {
        var learnt = LearntOffsets.None.After(Told([Long(Alder)], Alder));

        double own = learnt.OffsetOf(Alder, Defaults).Mean(FormPart.Length);
        double sister = learnt.OffsetOf(Birch, Defaults).Mean(FormPart.Length);
        Assert.True(own > sister && sister > .5, $"{own} {sister}");
        Assert.Equal(0, learnt.OffsetOf(Cedar, Defaults).Mean(FormPart.Length));
        Assert.Equal(0, learnt.FittingsOf("birch"));
    }

    // What a fitting says of two models together stays known: if one is later found to run true, the other is known to be long.
    [Fact]
    public void What_one_fitting_says_of_two_models_is_kept_together()
    {
        var both = LearntOffsets.None.After(Told([Answered(Alder, 2), Answered(Cedar, 0)], Alder, Cedar));
        double before = both.OffsetOf(Alder, Defaults).Mean(FormPart.Length);

        // Other feet show that cedar is longer than was thought.
        var other = FeetBelief.Prior(Sex.Female, null, Defaults).After([Reading.Of(Side.Left, Trait.Length, 240), Reading.Of(Side.Right, Trait.Length, 240)], Defaults).Belief;
        var told = Told([Answered(Cedar, 2)], Cedar) with { Feet = other };
        double after = both.After(told).OffsetOf(Alder, Defaults).Mean(FormPart.Length);

        Assert.True(after > before, $"{before} {after}");
    }

    [Fact]
    public void Found_to_fit_counts_half_at_the_sale_and_in_full_once_the_look_says_so()
    {
        double Spread(params FoundToFit[] fitted) =>
            LearntOffsets.None.After(Told([new TryOn(Alder.Sku, null, [], [])], Alder) with { Fitted = fitted }).OffsetOf(Alder, Defaults).Sd(FormPart.Length);

        double nothing = Spread();
        double half = Spread(new FoundToFit(Alder.Sku, []));
        double whole = Spread(new FoundToFit(Alder.Sku, [], Confirmed: true));

        Assert.True(nothing > half + .1 && half > whole + .1, $"{nothing} {half} {whole}");
    }

    [Fact]
    public void The_same_fittings_in_the_same_order_lead_to_the_same_value_to_the_bit()
    {
        ToldByFitting[] told = [Told([Long(Alder)], Alder), Told([Answered(Birch, 0), Answered(Cedar, 1)], Birch, Cedar), Told([Answered(Alder, 1)], Alder)];

        var once = told.Aggregate(LearntOffsets.None, (learnt, fitting) => learnt.After(fitting));
        var again = told.Aggregate(LearntOffsets.None, (learnt, fitting) => learnt.After(fitting));

        foreach (var shoe in new[] { Alder, Birch, Cedar })
        {
            Assert.Equal(once.OffsetOf(shoe, Defaults).Means, again.OffsetOf(shoe, Defaults).Means);
            Assert.Equal(once.OffsetOf(shoe, Defaults).Sds, again.OffsetOf(shoe, Defaults).Sds);
        }
    }

    [Fact]
    public void A_frozen_model_stays_where_it_is_and_learns_again_when_let_go()
    {
        var learnt = LearntOffsets.None.After(Told([Long(Alder)], Alder)).Freezing("alder");
        double held = learnt.OffsetOf(Alder, Defaults).Mean(FormPart.Length);

        // Its maker still learns from others; the model's own part does not move.
        var after = learnt.After(Told([Answered(Alder, 0)], Alder));
        Assert.Equal(learnt.Of([new(ShoeLevel.Model, "alder")]).Mean.ToArray(), after.Of([new(ShoeLevel.Model, "alder")]).Mean.ToArray());
        Assert.True(after.OffsetOf(Alder, Defaults).Frozen);

        var free = after.Freezing("alder", frozen: false).After(Told([Answered(Alder, 0)], Alder));
        Assert.False(free.IsFrozen("alder"));
        Assert.True(free.OffsetOf(Alder, Defaults).Mean(FormPart.Length) < held);
    }

    [Fact]
    public void A_forgotten_model_starts_from_its_label_and_its_makers_habits()
    {
        var learnt = LearntOffsets.None.After(Told([Long(Alder)], Alder));

        var forgotten = learnt.Forgetting("alder");

        Assert.Equal(0, forgotten.FittingsOf("alder"));
        Assert.Equal(learnt.OffsetOf(Birch, Defaults).Mean(FormPart.Length), forgotten.OffsetOf(Alder, Defaults).Mean(FormPart.Length), 1e-12);
    }

    [Fact]
    public void Of_more_models_than_are_kept_together_none_is_lost()
    {
        var learnt = LearntOffsets.None;
        ShoeOnFile[] shoes = [.. Enumerable.Range(0, LearntOffsets.MostTogether + 3).Select(i => Shoe($"pair-{i}", "north", $"model-{i:000}", 240))];
        foreach (var shoe in shoes)
        {
            learnt = learnt.After(Told([Long(shoe)], shoe));
        }

        Assert.All(shoes, shoe => Assert.Equal(1, learnt.FittingsOf(shoe.Model)));
        Assert.All(shoes, shoe => Assert.True(learnt.OffsetOf(shoe, Defaults).Mean(FormPart.Length) > 1));
    }

    // A million dancers' worth of drawing by plain code: feet, maker, model, pair.
    [Fact]
    public void A_chance_after_learning_is_within_a_hundredth_of_the_truth()
    {
        var learnt = LearntOffsets.None.After(Told([Long(Alder), Answered(Birch, 1)], Alder, Birch));
        var question = new ShortlistQuestion { Feet = Feet, Shoes = [Alder, Birch], Kind = "pointe", From = ShortlistFrom.Catalogue, Learnt = learnt };

        foreach (var shoe in question.Shoes)
        {
            var numbers = learnt.Of([new(ShoeLevel.Maker, shoe.Maker), new(ShoeLevel.Model, shoe.Model)]);
            Assert.Equal(MonteCarlo.ChanceOfFit(Feet, shoe.Form, numbers, Defaults, 400_000), Shortlist.Judge(question, shoe).ChanceOfFit, .01);
        }
    }

    [Fact]
    public void An_ease_after_learning_is_that_of_the_learnt_offset()
    {
        var learnt = LearntOffsets.None.After(Told([Long(Alder)], Alder));
        var shoes = new[] { Alder, Birch, Cedar };
        var before = new ShortlistQuestion { Feet = Feet, Shoes = shoes, Kind = "pointe" };
        foreach (var shoe in shoes)
        {
            // No pads where they would hide it.
            var plain = before with { Defaults = Defaults with { Pads = [] } };
            var then = Shortlist.Judge(plain, shoe).Criteria[0];
            var now = Shortlist.Judge(plain with { Learnt = learnt }, shoe).Criteria[0];
            var offset = learnt.OffsetOf(shoe, Defaults);
            Assert.Equal(offset.Mean(FormPart.Length), now.Ease - then.Ease, 1e-9);
            double Variance(CriterionFit fit) => Math.Pow((fit.High - fit.Ease) / StandardNormal.Quantile(.95), 2);
            Assert.Equal(
                Math.Pow(Defaults.FormSds.Offset(FormPart.Length, FormSource.Label), 2) - Math.Pow(offset.Sd(FormPart.Length), 2), Variance(then) - Variance(now), 1e-9);
        }
    }

    private static TryOn Long(ShoeOnFile shoe) => Answered(shoe, 2);

    private static TryOn Answered(ShoeOnFile shoe, int toesFlat) => new(shoe.Sku, null, [new CheckAnswer(Side.Left, "toes-flat", toesFlat)], []);

    private static ToldByFitting Told(TryOn[] tryOns, params ShoeOnFile[] tried) => new() { Feet = Feet, Kind = "pointe", Tried = tried, TryOns = tryOns };

    private static ShoeOnFile Shoe(string sku, string maker, string model, double size) =>
        new(sku, maker, model, ShoeForm.FromLabel(new SizeLabel(SizeSystem.Find("mondopoint")!, size), Defaults), OnShelf: true);
}
