using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;

namespace ShopFit.Web.Features.Fittings;

public sealed class ReadInTests
{
    [Theory]
    [InlineData(9.375, "9 3/8")]
    [InlineData(9.4375, "9 7/16")]
    [InlineData(0.125, "1/8")]
    [InlineData(9.5, "9.5")]
    [InlineData(9.25, "9.25")]
    [InlineData(9.41, "9.41")]
    public void Inches_that_were_read_off_a_tape_are_shown_as_the_tape_has_them(double inches, string shown) =>
        Assert.Equal(shown, ReadIn.Inches.ShowTyped(inches));

    [Theory]
    [InlineData(238.25, "238.5")]
    [InlineData(238.2, "238")]
    [InlineData(239, "239")]
    public void Millimetres_are_shown_in_halves(double mm, string shown) => Assert.Equal(shown, ReadIn.Millimetres.Show(mm));

    [Theory]
    [InlineData("mm", 236, 238.5, "+2.5")]
    [InlineData("mm", 238.5, 237.5, "−1")]
    [InlineData("mm", 238, 238.2, "±0")]
    [InlineData("in", 228.6, 241.3, "+0.5")] // 25.4 mm an inch, by definition
    [InlineData("eu", 233.3333333333, 240, "+1")] // a Paris point is two thirds of a centimetre
    public void A_change_has_its_sign_and_is_told_in_the_unit_of_the_page(string unit, double from, double to, string shown) =>
        Assert.Equal(shown, ReadIn.Of(unit).ShowChange(from, to));

    [Fact]
    public void All_nine_size_systems_can_be_read_in_and_found_again_by_their_key()
    {
        Assert.Equal(11, ReadIn.All.Count);
        Assert.Equal(SizeSystem.All.Select(system => system.Id), ReadIn.All.Where(choice => choice.Unit is ReadingUnit.Size).Select(choice => choice.Key));
        Assert.All(ReadIn.All, choice => Assert.Equal(choice, ReadIn.Find(choice.Key)));
        Assert.Null(ReadIn.Find("cubits"));
    }

    [Fact]
    public void Only_the_length_of_a_foot_is_read_as_a_size()
    {
        var eu = ReadIn.Of("eu");

        Assert.Equal(eu, eu.For(Trait.Length));
        Assert.Equal(ReadIn.Millimetres, eu.For(Trait.BallBreadth));
        Assert.Equal(ReadingUnit.Degrees, eu.For(Trait.PointRange).Unit);
    }
}
