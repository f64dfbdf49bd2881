namespace ShopFit.Web.Features.Fittings;

/// <summary>Why nothing was bought today. It is what the manager most needs to know, so it is chosen, not typed.</summary>
public static class NotTodayReasons
{
    /// <summary>What she needs does not stand on the shelf.</summary>
    public const string NotOnShelf = "not-on-shelf";

    public const string Price = "price";

    /// <summary>Not ready for it yet: a good outcome, and never a lost sale.</summary>
    public const string NotReady = "not-ready";

    public const string Sore = "sore";

    public const string Undecided = "undecided";

    /// <summary>All of them, in the order in which they are offered.</summary>
    public static IReadOnlyList<string> All { get; } = [NotOnShelf, Price, NotReady, Sore, Undecided];
}
