using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Fittings;

namespace ShopFit.Web.Features.Arrival;

/// <summary>The one thing that the talk line says at arrival: what could hurt comes first, then what speaks for waiting, then what is still to be asked.</summary>
public abstract record ArrivalTalk
{
    private ArrivalTalk()
    {
    }

    /// <summary>What is to be said now.</summary>
    public static ArrivalTalk Of(SeenFitting fitting)
    {
        var arrival = fitting.Arrival;
        var firstPointe = fitting.FirstPair && fitting.Kind is FootwearKinds.Pointe;
        return !fitting.IsOpen ? new Closed()
            : fitting.SkinBroken ? new SkinBroken()
            : fitting.IsForLater ? new ForLater()
            : arrival.AgeToAsk && fitting.Kind is FootwearKinds.Pointe ? new AgeToAsk()
            : firstPointe && arrival.Of(ArrivalQuestions.TeacherYes) is ArrivalQuestions.NotYet ? new TeacherWouldWait()
            : firstPointe && arrival.SpeaksForWaiting.Count > 0 ? new SpeaksForWaiting(arrival.SpeaksForWaiting)
            : !IsKnown(fitting) ? new FirstPairToAsk()
            : firstPointe && fitting.TeacherAgreedOn is null ? new TeacherToAsk()
            : firstPointe && arrival.ToAskTheTeacher.Count > 0 ? new AskTheTeacher(arrival.ToAskTheTeacher)
            : fitting.SoreLeft || fitting.SoreRight ? new Sore()
            : new GoOn();
    }

    // Whoever bought a pair here before is known not to buy the first.
    private static bool IsKnown(SeenFitting fitting) => fitting.FirstPair || fitting.PairsBefore > 0 || fitting.Arrival.Of(ArrivalQuestions.FirstPair) is not null;

    public sealed record Closed : ArrivalTalk;

    /// <summary>Nothing is tried on with broken skin.</summary>
    public sealed record SkinBroken : ArrivalTalk;

    /// <summary>Too young for a pointe shoe.</summary>
    public sealed record ForLater : ArrivalTalk;

    /// <summary>Under age, and nobody said how young.</summary>
    public sealed record AgeToAsk : ArrivalTalk;

    public sealed record TeacherWouldWait : ArrivalTalk;

    /// <summary>Answers that speak for waiting.</summary>
    public sealed record SpeaksForWaiting(IReadOnlyList<ArrivalQuestion> Questions) : ArrivalTalk;

    public sealed record FirstPairToAsk : ArrivalTalk;

    public sealed record TeacherToAsk : ArrivalTalk;

    /// <summary>Questions that only the teacher can answer.</summary>
    public sealed record AskTheTeacher(IReadOnlyList<ArrivalQuestion> Questions) : ArrivalTalk;

    public sealed record Sore : ArrivalTalk;

    public sealed record GoOn : ArrivalTalk;
}
