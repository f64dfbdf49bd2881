using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Features.Fittings;

/// <summary>The one thing that the talk line says while feet are read: what hurts comes first, then what is asked, then what is next.</summary>
public abstract record FeetTalk
{
    private FeetTalk()
    {
    }

    /// <summary>What is to be said now.</summary>
    /// <param name="fitting">The fitting.</param>
    /// <param name="belief">What is believed of the feet.</param>
    /// <param name="asked">A word that waits for its foot.</param>
    /// <param name="second">A number that was just kept beside another.</param>
    public static FeetTalk Of(SeenFitting fitting, FittingBelief belief, AskedWord? asked, KeptNumber? second) =>
        !fitting.IsOpen ? new Closed()
        : asked is not null ? new ForWhichFoot(asked.Trait, asked.Word)
        : fitting.SkinBroken ? new SkinBroken()
        : fitting.IsForLater ? new ForLater()
        : belief.Doubts(fitting) is [.., var doubted] ? new Again(doubted)
        : second is not null && fitting.NumbersOf(second.Foot, second.Trait).Count > 1 ? new Second(second.Foot, second.Trait, second.ReadingId)
        : fitting is { FirstPair: true, TeacherAgreedOn: null } ? new TeacherNotAsked()
        : fitting.SoreLeft || fitting.SoreRight ? new Sore(fitting.SoreLeft, fitting.SoreRight)
        : (fitting.NumbersOf(Side.Left, Trait.Length).Count, fitting.NumbersOf(Side.Right, Trait.Length).Count) switch
        {
            (0, 0) => new NothingYet(),
            (0, _) => new OneFoot(Side.Left),
            (_, 0) => new OneFoot(Side.Right),
            _ => new Enough(),
        };

    public sealed record Closed : FeetTalk;

    public sealed record ForWhichFoot(Trait Trait, int Word) : FeetTalk;

    public sealed record Second(Side Foot, Trait Trait, Guid ReadingId) : FeetTalk;

    /// <summary>Nothing is tried on with broken skin.</summary>
    public sealed record SkinBroken : FeetTalk;

    /// <summary>Too young for a pointe shoe.</summary>
    public sealed record ForLater : FeetTalk;

    /// <summary>A reading that is hard to believe; the latest, if there are several.</summary>
    public sealed record Again(DoubtedReading Doubted) : FeetTalk;

    public sealed record TeacherNotAsked : FeetTalk;

    public sealed record Sore(bool Left, bool Right) : FeetTalk
    {
        public bool Both => Left && Right;
    }

    public sealed record NothingYet : FeetTalk;

    public sealed record OneFoot(Side Missing) : FeetTalk;

    public sealed record Enough : FeetTalk;
}
