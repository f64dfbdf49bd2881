using CsCheck;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Beliefs;

/// <summary>Which readings are asked for once more, and what becomes of them. The numbers that decide are common practice, no source.</summary>
public class DoubtfulReadingTests
{
    private static readonly FitDefaults Numbers = FitDefaults.Standard;

    [Theory]
    [InlineData(3.05, false)] // one standard deviation of the published left-right difference
    [InlineData(6, false)] // two: one person in twenty
    [InlineData(11.5, true)] // nearly four: hardly anybody
    [InlineData(30, true)]
    public void Feet_that_differ_more_than_feet_do_are_asked_for_once_more(double difference, bool asked)
    {
        var read = Prior(14).After([Length(Side.Left, 238), Length(Side.Right, 238 + difference)], Numbers);

        Assert.Equal(asked, read.Doubts.Count > 0);
    }

    [Fact]
    public void A_length_nine_millimetres_off_the_last_visit_is_asked_for_once_more()
    {
        var last = Prior(12).After([Length(Side.Left, 229), Length(Side.Right, 228)], Numbers).Belief;
        var now = last.CarriedForward(Sex.Female, 12, 12.25, Numbers);

        Assert.Empty(now.After([Length(Side.Left, 231)], Numbers).Doubts);
        var doubt = Assert.Single(now.After([Length(Side.Left, 239.5)], Numbers).Doubts);
        Assert.InRange(doubt.Expected, 229, 232);
    }

    [Fact]
    public void A_slip_of_the_finger_is_kept_and_hardly_counts()
    {
        Reading[] good = [Length(Side.Left, 238), Length(Side.Right, 239), Reading.Of(Side.Left, Trait.BallBreadth, 89)];

        var without = Prior(16).After(good, Numbers).Belief;
        var with = Prior(16).After([.. good, Length(Side.Left, 283)], Numbers);

        var doubt = Assert.Single(with.Doubts);
        Assert.Equal(3, doubt.Index);
        Assert.InRange(doubt.Weight, 0, 0.01);
        Assert.Equal(without.Mean(Side.Left, Trait.Length), with.Belief.Mean(Side.Left, Trait.Length), 0.5);
    }

    [Fact]
    public void The_order_of_readings_does_not_matter_with_a_slip_among_them() =>
        Gen.Select(Gen.Shuffle(Enumerable.Range(0, 6).ToArray()), Gen.Double[150, 330]).Sample(drawn =>
        {
            var (order, slip) = drawn;
            Reading[] readings =
            [
                Length(Side.Left, 238), Length(Side.Left, 239), Length(Side.Right, 240), Length(Side.Right, slip),
                Reading.Of(Side.Right, Trait.BallGirth, 224), Reading.InWords(Side.Left, Trait.ToeSlope, 2),
            ];

            var one = Prior(15).After(readings, Numbers);
            var other = Prior(15).After([.. order.Select(place => readings[place])], Numbers);

            Assert.Equal(one.Belief.Mean(Side.Right, Trait.Length), other.Belief.Mean(Side.Right, Trait.Length));
            Assert.Equal(one.Doubts.Select(doubt => doubt.Index), other.Doubts.Select(doubt => order[doubt.Index]).Order());
        }, iter: 50);

    private static FeetBelief Prior(double age) => FeetBelief.Prior(Sex.Female, age, Numbers);

    private static Reading Length(Side foot, double value) => Reading.Of(foot, Trait.Length, value);
}
