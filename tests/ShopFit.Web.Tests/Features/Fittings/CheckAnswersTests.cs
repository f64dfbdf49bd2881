using CsCheck;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Web.Features.Fittings;

public class CheckAnswersTests
{
    private static readonly CheckAnswer Left = new(Side.Left, "drop", 1);
    private static readonly CheckAnswer Right = new(Side.Right, "drop", 1);

    [Fact]
    public void The_first_tap_answers_for_both_feet() =>
        Assert.Equal([Left, Right], CheckAnswers.Tap([], Side.Left, "drop", 1, byDancer: false).Answers);

    [Fact]
    public void A_second_tap_splits_them() =>
        Assert.Equal([new(Side.Right, "drop", 2)], CheckAnswers.Tap([Left, Right], Side.Right, "drop", 2, byDancer: false).Answers);

    [Fact]
    public void The_same_tap_again_takes_that_foot_back()
    {
        var (answers, takenBack) = CheckAnswers.Tap([Left, Right], Side.Right, "drop", 1, byDancer: false);

        Assert.Empty(answers);
        Assert.Equal([new CheckOfFoot(Side.Right, "drop")], takenBack);
    }

    [Fact]
    public void What_she_says_too_takes_the_place_of_what_was_seen() =>
        Assert.Equal([Left with { ByDancer = true }], CheckAnswers.Tap([Left, Right], Side.Left, "drop", 1, byDancer: true).Answers);

    [Fact]
    public void The_rest_is_set_to_the_middle_and_what_was_said_stays()
    {
        var checks = FittingChecks.For("pointe", FitDefaults.Standard).Where(check => check.Position == TryOnPosition.EnPointe).ToList();
        var rest = CheckAnswers.RestAsItShouldBe([Left], checks, byDancer: false);

        Assert.DoesNotContain(rest, given => given.Foot == Side.Left && given.Check == "drop");
        Assert.Equal((2 * checks.Count) - 1, rest.Count);
        Assert.All(rest, given => Assert.Equal(1, given.Answer));
    }

    [Fact]
    public void However_it_is_tapped_a_check_of_a_foot_has_one_answer_at_most() =>
        Gen.Select(Gen.Enum<Side>(), Gen.Int[0, 2], Gen.Int[0, 2], Gen.Bool).Array[1, 12].Sample(taps =>
        {
            IReadOnlyList<CheckAnswer> said = [];
            foreach (var (foot, check, answer, byDancer) in taps)
            {
                var (answers, takenBack) = CheckAnswers.Tap(said, foot, $"check-{check}", answer, byDancer);
                said = CheckAnswers.After(said, answers, takenBack);
            }

            Assert.Equal(said.Count, said.DistinctBy(given => (given.Foot, given.Check)).Count());
        });

    // Common practice, no source: nobody rises en pointe in a soft shoe, and a box is asked about only where there is one.
    [Theory]
    [InlineData("pointe", 12)]
    [InlineData("demi-pointe", 6)]
    [InlineData("soft", 3)]
    [InlineData("tap", 3)]
    public void Each_kind_is_asked_about_what_it_has(string kind, int checks) =>
        Assert.Equal(checks, FittingChecks.For(kind, FitDefaults.Standard).Count);

    [Fact]
    public void Answers_are_read_as_they_were_written()
    {
        CheckAnswer[] said = [Left, Right with { ByDancer = true }];

        Assert.Equal(said, AnswersAsJson.Read(AnswersAsJson.Write(said)));
    }
}
