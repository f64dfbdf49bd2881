using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Features.Fittings;

public class ShortlistNoticesTests
{
    private static readonly ShortlistFacts Plain = new(
        "pointe", 15, Sex.Female, FirstPair: false, [Reading.Of(Side.Left, Trait.Length, 238)], [], ShoesOnFile: 10, ChanceOnShelf: 0.8);

    [Fact]
    public void When_all_is_known_nothing_has_to_be_said() => Assert.Empty(ShortlistNotices.Of(Plain));

    [Fact]
    public void What_is_not_known_is_said()
    {
        var facts = Plain with { AgeYears = null, Sex = null, Readings = [], FirstPair = true };

        Assert.Equal(
            [ShortlistNotices.FirstPair, ShortlistNotices.AgeUnknown, ShortlistNotices.SexUnknown, ShortlistNotices.NothingRead],
            ShortlistNotices.Of(facts).Select(notice => notice.Code));
    }

    [Fact]
    public void A_small_chance_on_the_shelf_proposes_an_order() =>
        Assert.Contains("a pair can be ordered", Assert.Single(ShortlistNotices.Of(Plain with { ChanceOnShelf = 0.1 })).Text, StringComparison.Ordinal);

    [Fact]
    public void Without_any_shoes_of_the_kind_that_is_what_is_said() =>
        Assert.Equal(ShortlistNotices.NoSuchShoes, Assert.Single(ShortlistNotices.Of(Plain with { ShoesOnFile = 0, ChanceOnShelf = 0 })).Code);

    [Fact]
    public void A_doubtful_reading_is_named_with_its_foot()
    {
        var notice = Assert.Single(ShortlistNotices.Of(Plain with { Doubts = [new DoubtfulReading(0, 220, 3, 0.1)] }));

        Assert.Contains("left", notice.Text, StringComparison.Ordinal);
    }
}
