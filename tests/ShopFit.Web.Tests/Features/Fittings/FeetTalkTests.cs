using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Fittings;

public class FeetTalkTests
{
    private static readonly DateTimeOffset Now = new(2026, 3, 14, 15, 9, 0, TimeSpan.Zero);

    [Fact]
    public void It_asks_for_the_length_first_then_for_the_other_foot()
    {
        Assert.IsType<FeetTalk.NothingYet>(Talk(A()));
        Assert.Equal(new FeetTalk.OneFoot(Side.Right), Talk(A(Reading.Of(Side.Left, Trait.Length, 238))));
        Assert.IsType<FeetTalk.Enough>(Talk(A(Reading.Of(Side.Left, Trait.Length, 238), Reading.Of(Side.Right, Trait.Length, 237))));
    }

    [Fact]
    public void A_reading_that_is_hard_to_believe_is_asked_for_again()
    {
        var talk = Talk(A(
            Reading.Of(Side.Left, Trait.Length, 238), Reading.Of(Side.Left, Trait.Length, 238.5), Reading.Of(Side.Right, Trait.Length, 237), Reading.Of(Side.Right, Trait.Length, 283)));

        Assert.Equal(283, Assert.IsType<FeetTalk.Again>(talk).Doubted.Reading.Reading.Value);
    }

    [Fact]
    public void What_can_hurt_comes_before_everything_else()
    {
        var both = A(Reading.Of(Side.Left, Trait.Length, 238), Reading.Of(Side.Right, Trait.Length, 237));

        Assert.IsType<FeetTalk.SkinBroken>(Talk(both with { SkinBroken = true, FirstPair = true }));
        Assert.IsType<FeetTalk.ForLater>(Talk(both with { Evidence = both.Evidence with { AgeYears = 11.9 } }));
        Assert.IsType<FeetTalk.TeacherNotAsked>(Talk(both with { FirstPair = true }));
        Assert.Equal(new FeetTalk.Sore(true, false), Talk(both with { SoreLeft = true }));
    }

    [Fact]
    public void A_word_that_waits_for_its_foot_is_asked_about_at_once() =>
        Assert.Equal(new FeetTalk.ForWhichFoot(Trait.ToeSlope, 2), FeetTalk.Of(A() with { SkinBroken = true }, Believe(A()), new(Trait.ToeSlope, 2), second: null));

    private static FeetTalk Talk(SeenFitting fitting) => FeetTalk.Of(fitting, Believe(fitting), asked: null, second: null);

    private static FittingBelief Believe(SeenFitting fitting) => FittingBelief.Of(fitting.Evidence, FitDefaults.Standard);

    private static SeenFitting A(params Reading[] readings) => new()
    {
        Id = Guid.Empty,
        DancerId = null,
        DancerName = "Tilly Fernsby",
        KnownAs = "Tilly",
        Studio = "Larch",
        Kind = "pointe",
        FirstPair = false,
        SoreLeft = false,
        SoreRight = false,
        SkinBroken = false,
        TeacherAgreedOn = null,
        Version = 1,
        OpenedAt = Now,
        ClosedAt = null,
        SavedAt = Now,
        PairsBefore = 1,
        Readings = [.. readings.Select(reading => new SeenReading(Guid.CreateVersion7(), Now, reading))],
        Evidence = new(Sex.Female, 12.5, Now, readings, []),
        Choice = null,
        Decision = null,
        Time = new ShopTime(TimeZoneInfo.Utc),
        Units = "mm",
        SizeSystem = "eu",
    };
}
