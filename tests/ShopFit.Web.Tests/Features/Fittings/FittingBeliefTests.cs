using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Features.Fittings;

public class FittingBeliefTests
{
    private static readonly DateTimeOffset Today = new(2026, 3, 14, 15, 9, 0, TimeSpan.Zero);

    [Fact]
    public void Without_any_reading_it_is_what_age_and_sex_say()
    {
        var belief = Believe([], []);

        Assert.Equal(FeetBelief.Prior(Sex.Female, 12, FitDefaults.Standard).Mean(Side.Left, Trait.Length), belief.Now.Belief.Mean(Side.Left, Trait.Length), 9);
    }

    [Fact]
    public void A_reading_of_today_pulls_the_belief_to_it_and_makes_it_surer()
    {
        var belief = Believe([Reading.Of(Side.Left, Trait.Length, 238.5)], []);

        Assert.Equal(238.5, belief.Now.Belief.Mean(Side.Left, Trait.Length), 0.5);
        Assert.True(belief.Now.Belief.Sd(Side.Left, Trait.Length) < belief.Before.Sd(Side.Left, Trait.Length));
    }

    [Fact]
    public void The_last_fitting_is_carried_forward_grown_and_less_sure()
    {
        PastReadings last = new(11, Today.AddYears(-1), [Reading.Of(Side.Left, Trait.Length, 228)]);
        var then = FeetBelief.Prior(Sex.Female, 11, FitDefaults.Standard).After(last.Readings, FitDefaults.Standard).Belief;

        var now = Believe([], [last]).Now.Belief;

        // Girls of eleven to twelve grow by about 3 % of an adult foot in a year (Snyder 1977): more than nothing, less than two centimetres.
        Assert.InRange(now.Mean(Side.Left, Trait.Length) - then.Mean(Side.Left, Trait.Length), 1, 20);
        Assert.True(now.Sd(Side.Left, Trait.Length) > then.Sd(Side.Left, Trait.Length));
    }

    [Fact]
    public void A_grown_dancer_of_unknown_age_keeps_her_feet()
    {
        PastReadings last = new(null, Today.AddYears(-1), [Reading.Of(Side.Left, Trait.Length, 245)]);

        var now = FittingBelief.Of(new(Sex.Female, null, Today, [], [last]), FitDefaults.Standard).Now.Belief;

        Assert.Equal(245, now.Mean(Side.Left, Trait.Length), 1.0);
    }

    [Fact]
    public void What_is_being_typed_is_believed_for_the_drawing_only()
    {
        var belief = Believe([], []);

        var typed = belief.With(Reading.Of(Side.Left, Trait.Length, 250));

        Assert.True(typed.Mean(Side.Left, Trait.Length) > belief.Now.Belief.Mean(Side.Left, Trait.Length));
        Assert.Empty(belief.Now.Doubts);
    }

    private static FittingBelief Believe(IReadOnlyList<Reading> today, IReadOnlyList<PastReadings> before) =>
        FittingBelief.Of(new(Sex.Female, 12, Today, today, before), FitDefaults.Standard);
}
