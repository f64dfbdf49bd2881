using CsCheck;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Defaults;

public class AdjustableNumbersTests
{
    private static readonly IReadOnlyList<AdjustableNumber> All = AdjustableNumbers.All;

    [Fact]
    public void Each_has_a_path_of_its_own_and_is_found_by_it()
    {
        Assert.Equal(All.Count, All.Select(number => number.Path).Distinct(StringComparer.Ordinal).Count());
        Assert.All(All, number => Assert.Same(number, AdjustableNumbers.Find(number.Path)));
        Assert.Null(AdjustableNumbers.Find("bands.pointe.length"));
    }

    [Fact]
    public void Each_default_is_allowed_and_is_what_the_standard_numbers_say()
    {
        Assert.All(All, number => Assert.Null(number.Refuses(number.Default)));
        Assert.Equal(3, AdjustableNumbers.Find("bands.pointe.length.weight")!.Default);
        Assert.Equal(-1.5, AdjustableNumbers.Find("pads.toe-cap.length")!.Default);
        Assert.Equal(0.95, AdjustableNumbers.Find("feet.strength.left-right")!.Default);
        Assert.Equal(1.5, AdjustableNumbers.Find("forms.box-breadth.maker")!.Default);
        Assert.Equal(6.35, AdjustableNumbers.Find("allowances.us-women.value")!.Default);
        Assert.Equal(0.05, AdjustableNumbers.Find("shank-need.point-range.value")!.Default);
    }

    [Fact]
    public void Each_moves_one_number_and_back_again_leaves_no_trace()
    {
        string standard = FitDefaults.Standard.Fingerprint();
        Assert.All(All, number =>
        {
            double other = number.Default == number.Lowest ? number.Highest : number.Lowest;
            var changed = number.Set(FitDefaults.Standard, other);

            Assert.Equal(other, number.In(changed));
            Assert.NotEqual(standard, changed.Fingerprint());
            Assert.Equal(standard, number.Set(changed, number.Default).Fingerprint());
            Assert.Equal([number], All.Where(each => each.In(changed) != each.Default));
        });
    }

    // What a survey or a standard says is not a matter of taste.
    [Fact]
    public void Nothing_published_can_be_changed()
    {
        var changed = All.Aggregate(FitDefaults.Standard, (numbers, number) => number.Set(numbers, number.Default == number.Lowest ? number.Highest : number.Lowest));

        Assert.Same(FitDefaults.Standard.Adults, changed.Adults);
        Assert.Same(FitDefaults.Standard.Growth.Girls, changed.Growth.Girls);
        Assert.Same(FitDefaults.Standard.Growth.Boys, changed.Growth.Boys);
        Assert.Equal(FitDefaults.Standard.Limits, changed.Limits);
        Assert.All(
            SurveyedFeet.SurveyTraits,
            trait => Assert.Equal(0.97, changed.LeftRightCorrelation[(int)trait]));
    }

    [Fact]
    public void A_shops_own_numbers_lie_over_the_standard_ones()
    {
        var (numbers, problems) = AdjustableNumbers.Over(Own(("bands.pointe.length.weight", 5), ("pads.toe-cap.proposed", 0)));

        Assert.Empty(problems);
        Assert.Equal(5, numbers.CriteriaOf("pointe")![0].Weight);
        Assert.False(numbers.FindPad("toe-cap")!.Corrects);
        Assert.Same(FitDefaults.Standard, AdjustableNumbers.Over(Own()).Numbers);
    }

    [Fact]
    public void One_that_makes_no_sense_stays_at_its_default_and_the_others_hold()
    {
        var (numbers, problems) = AdjustableNumbers.Over(Own(("bands.pointe.length.weight", 5), ("bands.pointe.box.weight", -1), ("bands.boots.length.weight", 1)));

        Assert.Equal(5, numbers.CriteriaOf("pointe")![0].Weight);
        Assert.Equal(2, numbers.CriteriaOf("pointe")![1].Weight);
        Assert.Equal(
            [(FitProblemCode.UnknownNumber, "bands.boots.length.weight"), (FitProblemCode.OutOfRange, "bands.pointe.box.weight")],
            problems.Select(problem => (problem.Code, problem.Paths.Single())));
    }

    [Fact]
    public void Those_that_make_no_sense_together_go_together()
    {
        var (numbers, problems) = AdjustableNumbers.Over(Own(("bands.pointe.length.ideal-from", 3), ("bands.pointe.length.no-fit-above", 8), ("readings.length.sd", 2)));

        Assert.Equal(FitProblemCode.LimitsOutOfOrder, Assert.Single(problems).Code);
        Assert.Equal(FitDefaults.Standard.CriteriaOf("pointe")![0], numbers.CriteriaOf("pointe")![0]);
        Assert.Equal(2, numbers.ReadingSd[0]);
    }

    [Fact]
    public void A_whole_band_can_be_moved_and_given_an_end()
    {
        var (numbers, problems) = AdjustableNumbers.Over(Own(
            ("bands.pointe.length.no-fit-below", 10), ("bands.pointe.length.ideal-from", 11), ("bands.pointe.length.ideal-to", 12), ("bands.pointe.length.no-fit-above", 13),
            ("bands.pointe.toe-line.ideal-to", 6), ("bands.pointe.toe-line.no-fit-above", 12)));

        Assert.Empty(problems);
        Assert.Equal(12, numbers.CriteriaOf("pointe")![0].IdealTo);
    }

    [Fact]
    public void At_either_end_of_its_range_each_alone_leaves_a_shortlist_that_says_something() =>
        Assert.All(All.SelectMany(number => new[] { (number, number.Lowest), (number, number.Highest) }), change =>
            SaysSomething(change, withTryOns: change.number.Group is "checks" or "answers"));

    [Fact]
    public void Any_single_change_within_its_range_leaves_a_shortlist_that_says_something() =>
        Gen.Select(Gen.Int[0, All.Count - 1].Select(i => All[i]), Gen.Double[0, 1])
            .Select((number, share) => (number, Value: number.Unit is NumberUnit.Count or NumberUnit.YesOrNo
                ? Math.Round(number.Lowest + (share * (number.Highest - number.Lowest)))
                : number.Lowest + (share * (number.Highest - number.Lowest))))
            .Sample(change => SaysSomething(change, withTryOns: true), iter: 60);

    private static void SaysSomething((AdjustableNumber Number, double Value) change, bool withTryOns)
    {
        var numbers = AdjustableNumbers.Over(Own((change.Number.Path, change.Value))).Numbers;
        string kind = change.Number.Group.StartsWith("bands.", StringComparison.Ordinal) ? change.Number.Group["bands.".Length..] : "pointe";
        var label = new SizeLabel(SizeSystem.Find("mondopoint")!, 235);
        ShoeOnFile[] shoes =
        [
            .. new[] { FormSource.Measured, FormSource.Maker, FormSource.Label }.Select((source, i) =>
                new ShoeOnFile($"shoe-{i}", "maker", "model", ShoeForm.Of([239.0 + i, 79, 205, 61, null, 15, 61, null], source, label with { Size = 240 - i, WidthStep = i - 1, BoxStep = 1 }, numbers), OnShelf: true)),
        ];
        var feet = FeetBelief.Prior(null, 13, numbers)
            .After([Reading.Of(Side.Left, Trait.Length, 238), Reading.Of(Side.Right, Trait.Length, 236), Reading.InWords(Side.Left, Trait.ToeSlope, 2), Reading.InWords(Side.Left, Trait.Strength, 0)], numbers).Belief
            .CarriedForward(null, 13, 13.5, numbers)
            .After([Reading.Of(Side.Left, Trait.BallBreadth, 90)], numbers).Belief;

        var list = Shortlist.Of(
            new ShortlistQuestion
            {
                Feet = feet,
                Shoes = shoes,
                Kind = kind,
                From = ShortlistFrom.Shelf,
                FirstPair = true,
                Defaults = numbers,
                TryOns = !withTryOns ? [] : [new TryOn("shoe-0", false, [new CheckAnswer(Side.Left, "toes-flat", 2), new CheckAnswer(Side.Right, "drop", 0, ByDancer: true), new CheckAnswer(Side.Right, "arch", 1)], [])],
            },
            CancellationToken.None);

        Assert.Equal(3, list.Pairs.Count);
        Assert.InRange(list.ChanceOnShelf, 0, 1);
        Assert.All(list.Pairs, pair =>
        {
            Assert.InRange(pair.ChanceOfFit, 0, 1);
            Assert.InRange(pair.Score, 0, 1);
            Assert.All(pair.Criteria, criterion =>
            {
                Assert.True(double.IsFinite(criterion.Low) && criterion.Low <= criterion.Ease && criterion.Ease <= criterion.High && double.IsFinite(criterion.High), $"{change.Number.Path} = {change.Value}: {criterion}");
                Assert.InRange(criterion.Desirability, 0, 1);
            });
        });
    }

    private static Dictionary<string, double> Own(params (string Path, double Value)[] own) => own.ToDictionary(entry => entry.Path, entry => entry.Value, StringComparer.Ordinal);
}
