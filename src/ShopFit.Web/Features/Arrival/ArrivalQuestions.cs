namespace ShopFit.Web.Features.Arrival;

/// <summary>All that is asked before the first reading. Nothing is asked about weight or body, and nothing is tested in the shop.</summary>
public static class ArrivalQuestions
{
    public const string Yes = "yes";

    public const string No = "no";

    public const string NotKnown = "not-known";

    /// <summary>The teacher was asked and would rather wait.</summary>
    public const string NotYet = "not-yet";

    /// <summary>Nothing was wrong with the last pair, or nothing is sore.</summary>
    public const string Nothing = "nothing";

    /// <summary>Skin is broken on that foot: nothing is tried on.</summary>
    public const string SkinBroken = "skin-broken";

    /// <summary>Sore in a way that none of the other words says.</summary>
    public const string SoreOtherwise = "other";

    /// <summary>Whether this is the first pair of its kind.</summary>
    public static ArrivalQuestion FirstPair { get; } = new("first-pair", [Yes, No]);

    /// <summary>What the last pair did wrong, in the trade's words.</summary>
    public static ArrivalQuestion LastPair { get; } = new(
        "last-pair",
        [
            "sank", "knuckled", "pressed-big-toe", "pinched", "loose", "too-short", "too-long",
            "heel-slipped", "heel-bagged", "not-up", "over-box", "twisted", "soft-early", Nothing,
        ],
        Several: true);

    /// <summary>What else is to be said of the last pair.</summary>
    public static ArrivalQuestion LastPairNote { get; } = new("last-pair-note", []);

    /// <summary>Who the teacher is that was asked.</summary>
    public static ArrivalQuestion TeacherName { get; } = new("teacher-name", []);

    /// <summary>The day on which the teacher said yes, or <see cref="NotYet"/>.</summary>
    public static ArrivalQuestion TeacherYes { get; } = new("teacher-yes", []);

    /// <summary>What is sore today.</summary>
    public static ArrivalQuestion Sore { get; } = new("sore", ["nail", "blister", "bunion", SoreOtherwise, SkinBroken], EachFoot: true, Several: true);

    /// <summary>It was asked, and nothing is sore.</summary>
    public static ArrivalQuestion NothingSore { get; } = new("nothing-sore", [Yes]);

    /// <summary>What a published guideline asks before a first pair, in our words, asked of the teacher and the family.</summary>
    /// <remarks>
    /// Weiss, Rist and Grossman 2009, J Dance Med Sci 13(3): 90-92, rules 2 to 7; rule 1 is the age. Each is put so that a
    /// "yes" is what the guideline hopes for. A "no" speaks for waiting; a "yes" clears nobody.
    /// </remarks>
    public static IReadOnlyList<ArrivalQuestion> Readiness { get; } =
    [
        Asked("class-twice-a-week"),
        Asked("fourth-year"),
        Asked("in-earnest"),
        Asked("point-and-line"),
        Asked("steady"),
        Asked("firm-ankles"),
    ];

    /// <summary>The question of that name; null where there is none.</summary>
    public static ArrivalQuestion? Find(string id) =>
        All.FirstOrDefault(question => question.Id == id);

    private static IEnumerable<ArrivalQuestion> All => [FirstPair, LastPair, LastPairNote, TeacherName, TeacherYes, Sore, NothingSore, .. Readiness];

    private static ArrivalQuestion Asked(string id) => new(id, [Yes, No, NotKnown]);
}
