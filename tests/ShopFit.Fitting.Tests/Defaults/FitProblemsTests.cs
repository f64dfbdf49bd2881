using ShopFit.Fitting.Pads;

namespace ShopFit.Fitting.Defaults;

public class FitProblemsTests
{
    private static readonly FitDefaults Standard = FitDefaults.Standard;

    [Fact]
    public void The_standard_numbers_make_sense() => Assert.Empty(Standard.Problems());

    [Theory]
    [InlineData("bands.pointe.length.weight", double.NaN, FitProblemCode.NotFinite)]
    [InlineData("bands.pointe.length.ideal-from", double.NegativeInfinity, FitProblemCode.NotFinite)]
    [InlineData("bands.pointe.length.ideal-to", double.PositiveInfinity, FitProblemCode.NotFinite)]
    [InlineData("bands.pointe.length.weight", -1, FitProblemCode.OutOfRange)]
    [InlineData("readings.length.sd", 0, FitProblemCode.OutOfRange)]
    [InlineData("feet.strength.sd", -2, FitProblemCode.OutOfRange)]
    [InlineData("feet.strength.left-right", 1, FitProblemCode.OutOfRange)]
    [InlineData("forms.length.pair", 0, FitProblemCode.OutOfRange)]
    [InlineData("checks.arch.noise", 0, FitProblemCode.OutOfRange)]
    [InlineData("pads.heel-cushion.heel", 3, FitProblemCode.OutOfRange)]
    [InlineData("bands.pointe.length.no-fit-below", 0, FitProblemCode.LimitsOutOfOrder)]
    [InlineData("bands.tap.heel.ideal-to", 9, FitProblemCode.LimitsOutOfOrder)]
    [InlineData("bands.pointe.toe-line.ideal-to", 4, FitProblemCode.RampWithoutEnd)]
    [InlineData("bands.pointe.toe-line.no-fit-above", 4, FitProblemCode.LimitsOutOfOrder)]
    [InlineData("checks.drop.first-threshold", 3, FitProblemCode.ThresholdsOutOfOrder)]
    [InlineData("answers.word-upper.value", 0.3, FitProblemCode.ThresholdsOutOfOrder)]
    [InlineData("growth.adult-from.value", 15, FitProblemCode.StepsOutOfOrder)]
    [InlineData("sentences.even.value", 0.7, FitProblemCode.StepsOutOfOrder)]
    public void A_number_that_makes_no_sense_is_named_with_what_is_wrong(string path, double value, FitProblemCode code)
    {
        var problem = Assert.Single(AdjustableNumbers.Find(path)!.Set(Standard, value).Problems(), problem => problem.Code == code);

        Assert.Contains(path, problem.Paths);
    }

    [Fact]
    public void A_count_is_whole_and_a_switch_is_on_or_off()
    {
        Assert.Equal(FitProblemCode.NotWhole, AdjustableNumbers.Find("score.most-correcting.value")!.Refuses(1.5));
        Assert.Equal(FitProblemCode.NotWhole, AdjustableNumbers.Find("pads.toe-cap.proposed")!.Refuses(0.5));
        Assert.Null(AdjustableNumbers.Find("pads.toe-cap.proposed")!.Refuses(0));
    }

    [Fact]
    public void Limits_may_meet() =>
        Assert.Empty(AdjustableNumbers.Find("bands.pointe.length.no-fit-below")!.Set(Standard, -1).Problems());

    [Fact]
    public void A_kind_in_which_nothing_counts_is_told()
    {
        var nothing = Standard with { Kinds = [.. Standard.Kinds.Select(kind => kind with { Criteria = [.. kind.Criteria.Select(criterion => criterion with { Weight = 0 })] })] };

        Assert.Equal(Standard.Kinds.Count, nothing.Problems().Count(problem => problem.Code == FitProblemCode.NothingCounts));
    }

    [Fact]
    public void Correlations_that_no_feet_can_have_are_told()
    {
        var women = Standard.Adults[0];

        // Length goes with heel-to-ball and with girth, and those two against each other: impossible together.
        double[] correlations = [.. women.Correlations];
        (correlations[8], correlations[16]) = (-0.9, -0.9);
        var impossible = Standard with { Adults = [women with { Correlations = correlations }, Standard.Adults[1]] };

        Assert.Contains(impossible.Problems(), problem => problem.Code == FitProblemCode.NotPositiveDefinite);
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    public void A_correlation_of_two_traits_lies_between_its_ends(double value)
    {
        double[] correlations = [.. Standard.Adults[0].Correlations];
        (correlations[1], correlations[5]) = (value, value);
        var numbers = Standard with { Adults = [Standard.Adults[0] with { Correlations = correlations }, Standard.Adults[1]] };

        Assert.Contains(numbers.Problems(), problem => problem.Code == FitProblemCode.NoCorrelation);
    }

    // Feet that are alike in one trait and not in another that goes with it: their joint covariance is none.
    [Fact]
    public void Likeness_of_left_and_right_that_tears_traits_apart_is_told()
    {
        var torn = Standard with { LeftRightCorrelation = [.. Standard.LeftRightCorrelation.Select((value, trait) => trait == 0 ? 0.2 : value)] };

        Assert.Contains(torn.Problems(), problem => problem.Code == FitProblemCode.NotPositiveDefinite);
    }

    [Fact]
    public void An_ease_that_does_not_exist_is_told()
    {
        var pads = Standard with { Pads = [new Pad("sock", new Dictionary<string, double>(StringComparer.Ordinal) { ["ankle"] = -1 }, 1)] };

        Assert.Equal("pads.sock.ankle", Assert.Single(pads.Problems(), problem => problem.Code == FitProblemCode.UnknownEase).Paths.Single());
    }

    [Fact]
    public void More_sets_of_pads_than_can_be_searched_are_told() =>
        Assert.Contains(
            (Standard with { Pads = [.. Standard.Pads.Select(pad => pad with { Corrects = true })], PadRules = new PadRules(MostCorrecting: 3) }).Problems(),
            problem => problem.Code == FitProblemCode.TooManyPadSets);

    [Fact]
    public void A_table_without_its_rows_is_told_and_breaks_nothing() =>
        Assert.Equal(
            ["left-right", "readings", "feet"],
            (Standard with { LeftRightCorrelation = [], ReadingSd = [1], DerivedTraits = [] }).Problems().Select(problem => problem.Paths.Single()));
}
