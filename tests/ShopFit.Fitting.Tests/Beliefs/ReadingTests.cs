using CsCheck;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;

namespace ShopFit.Fitting.Beliefs;

public class ReadingTests
{
    private static readonly Gen<Reading> GenReading = Gen.Select(
        Gen.Enum<Trait>(),
        Gen.OneOf(Gen.Double, Gen.Double[-50, 400], Gen.Int[-1, 3].Select(word => (double)word)),
        Gen.Enum<ReadingUnit>(),
        Gen.OneOf(SizeSystem.All.ToArray()),
        (trait, value, unit, system) => new Reading(Side.Left, trait, value, unit, unit == ReadingUnit.Size ? system : null));

    [Theory]
    [InlineData(Trait.Length, 100, 350)]
    [InlineData(Trait.HeelToBall, 60, 260)]
    [InlineData(Trait.BallBreadth, 25, 140)]
    [InlineData(Trait.BallGirth, 100, 350)]
    [InlineData(Trait.ToeBreadth, 25, 140)]
    [InlineData(Trait.HeelBreadth, 25, 140)]
    [InlineData(Trait.ForefootDepth, 15, 100)]
    [InlineData(Trait.ToeSlope, -10, 60)]
    [InlineData(Trait.SecondToeLead, -30, 30)]
    [InlineData(Trait.Squeeze, 0, 60)]
    [InlineData(Trait.PointRange, 0, 130)]
    [InlineData(Trait.Strength, 0, 10)]
    public void The_ends_of_a_range_are_accepted_and_nothing_beyond(Trait trait, double lowest, double highest)
    {
        var problem = new ReadingProblem(ReadingProblemCode.OutOfRange, lowest, highest);

        Assert.Null(Reading.Of(Side.Left, trait, lowest).Check());
        Assert.Null(Reading.Of(Side.Right, trait, highest).Check());
        Assert.Equal(problem, Reading.Of(Side.Left, trait, lowest - 0.1).Check());
        Assert.Equal(problem, Reading.Of(Side.Left, trait, highest + 0.1).Check());
        Assert.Equal(problem, Reading.Of(Side.Left, trait, double.NaN).Check());
        Assert.Equal(problem, Reading.Of(Side.Left, trait, double.PositiveInfinity).Check());
    }

    [Fact]
    public void Inches_become_millimetres()
    {
        var reading = new Reading(Side.Left, Trait.Length, 9.4375, ReadingUnit.Inches);

        Assert.Null(reading.Check());
        Assert.Equal(239.7125, reading.InTraitUnit()!.Value, precision: 9);
    }

    [Fact]
    public void A_range_is_told_in_inches_to_who_gave_inches() =>
        Assert.Equal(
            new ReadingProblem(ReadingProblemCode.OutOfRange, 3.94, 13.77),
            new Reading(Side.Left, Trait.Length, 14, ReadingUnit.Inches).Check());

    // EU 1.5 F + 2: 100 mm is EU 17, and the scale ends at 50. The women's scale of the gauge: 3 F − 20.5, from nought.
    [Theory]
    [InlineData("eu", 16, 17, 50)]
    [InlineData("eu", 51, 17, 50)]
    [InlineData("us-women", -1, 0, 18.5)]
    [InlineData("uk-child", 1, 2, 13.5)]
    [InlineData("jp", 9.5, 10, 35)]
    public void A_range_is_told_in_sizes_to_who_gave_a_size(string system, double size, double lowest, double highest) =>
        Assert.Equal(
            new ReadingProblem(ReadingProblemCode.OutOfRange, lowest, highest),
            new Reading(Side.Left, Trait.Length, size, ReadingUnit.Size, SizeSystem.Find(system)).Check());

    [Fact]
    public void A_size_off_the_gauge_becomes_the_foot_it_names()
    {
        var reading = new Reading(Side.Right, Trait.Length, 7.5, ReadingUnit.Size, SizeSystem.Find("us-women"));

        // 3 F − 20.5 = 7.5: F is 28 thirds of an inch.
        Assert.Equal(28 * 25.4 / 3, reading.InTraitUnit()!.Value, precision: 9);
    }

    [Theory]
    [InlineData(Trait.BallGirth)]
    [InlineData(Trait.HeelToBall)]
    [InlineData(Trait.Strength)]
    public void Only_a_length_is_read_in_sizes(Trait trait) =>
        Assert.Equal(
            ReadingProblemCode.WrongUnit,
            new Reading(Side.Left, trait, 7, ReadingUnit.Size, SizeSystem.Find("eu")).Check()!.Code);

    [Theory]
    [InlineData(Trait.PointRange, ReadingUnit.Millimetres)]
    [InlineData(Trait.PointRange, ReadingUnit.Inches)]
    [InlineData(Trait.Strength, ReadingUnit.Degrees)]
    [InlineData(Trait.Length, ReadingUnit.Points)]
    [InlineData(Trait.Length, ReadingUnit.Word)]
    [InlineData(Trait.BallBreadth, ReadingUnit.Word)]
    public void A_unit_that_does_not_go_with_a_trait_is_refused(Trait trait, ReadingUnit unit) =>
        Assert.Equal(ReadingProblemCode.WrongUnit, new Reading(Side.Left, trait, 1, unit).Check()!.Code);

    [Fact]
    public void A_size_needs_its_system_and_nothing_else_takes_one()
    {
        Assert.Equal(ReadingProblemCode.SizeSystemMissing, new Reading(Side.Left, Trait.Length, 7, ReadingUnit.Size).Check()!.Code);
        Assert.Equal(
            ReadingProblemCode.SizeSystemUnexpected,
            new Reading(Side.Left, Trait.Length, 240, ReadingUnit.Millimetres, SizeSystem.Find("eu")).Check()!.Code);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(0.5)]
    [InlineData(3)]
    [InlineData(double.NaN)]
    public void A_word_is_nought_one_or_two(double word) =>
        Assert.Equal(
            new ReadingProblem(ReadingProblemCode.NotAWord, 0, 2),
            new Reading(Side.Left, Trait.Squeeze, word, ReadingUnit.Word).Check());

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void A_word_has_no_number(int word)
    {
        var reading = Reading.InWords(Side.Left, Trait.ToeSlope, word);

        Assert.Null(reading.Check());
        Assert.Null(reading.InTraitUnit());
    }

    [Fact]
    public void InTraitUnit_refuses_a_reading_with_a_problem() =>
        Assert.Throws<InvalidOperationException>(() => Reading.Of(Side.Left, Trait.Length, 2385).InTraitUnit());

    [Fact]
    public void What_is_accepted_lies_in_the_range_of_its_trait() =>
        GenReading.Sample(reading =>
        {
            if (reading.Check() is null && reading.InTraitUnit() is { } value)
            {
                Assert.InRange(value, Traits.Of(reading.Trait).Lowest, Traits.Of(reading.Trait).Highest);
            }
        }, iter: 20_000);

    [Fact]
    public void What_is_told_to_be_allowed_is_accepted() =>
        GenReading.Where(reading => reading.Check() is { Lowest: not null }).Sample(reading =>
        {
            var problem = reading.Check()!;

            Assert.Null((reading with { Value = problem.Lowest!.Value }).Check());
            Assert.Null((reading with { Value = problem.Highest!.Value }).Check());
        }, iter: 2_000);
}
