using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Shared;

public class StripPlaceTests
{
    [Theory]
    [InlineData("length", -4, 0)]
    [InlineData("length", -1, 1.0 / 3)]
    [InlineData("length", 2, 2.0 / 3)]
    [InlineData("length", 6, 1)]
    [InlineData("length", 60, 1)]
    [InlineData("length", -60, 0)]
    public void The_ideal_band_fills_the_middle_third_and_a_dot_stops_at_the_ends(string criterion, double ease, double place) =>
        Assert.Equal(place, StripPlace.Of(Fit(criterion, ease)).At, 2);

    [Fact]
    public void Outer_toes_are_turned_round_so_that_tight_is_at_the_left()
    {
        var pressed = StripPlace.Of(Fit("taper", 9));

        Assert.True(pressed.At < 1.0 / 3);
        Assert.True(pressed.Low <= pressed.At && pressed.At <= pressed.High);
        Assert.True(StripPlace.IsTight(Fit("taper", 9)));
        Assert.True(StripPlace.IsLoose(Fit("taper", -9)));
    }

    [Fact]
    public void A_short_shoe_is_tight_and_a_long_one_loose()
    {
        Assert.True(StripPlace.IsTight(Fit("length", -3)));
        Assert.True(StripPlace.IsLoose(Fit("length", 4)));
        Assert.False(StripPlace.IsTight(Fit("length", 0)) || StripPlace.IsLoose(Fit("length", 0)));
    }

    private static CriterionFit Fit(string criterion, double ease) =>
        new(Side.Left, FitDefaults.Standard.CriteriaOf("pointe")!.Single(each => each.Id == criterion), ease, ease - 2, ease + 2, 0.5);
}
