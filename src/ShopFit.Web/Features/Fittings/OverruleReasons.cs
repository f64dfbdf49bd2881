namespace ShopFit.Web.Features.Fittings;

/// <summary>Why a pair was taken that was not the first of the proposals. It is chosen, so that the shop can count it.</summary>
public static class OverruleReasons
{
    /// <summary>The dancer preferred it.</summary>
    public const string Preferred = "preferred";

    /// <summary>It felt better on the foot than the pair that was proposed.</summary>
    public const string FeltBetter = "felt-better";

    /// <summary>The teacher asks for it.</summary>
    public const string Teacher = "teacher";

    public const string Price = "price";

    /// <summary>It is here now; the other would have to be waited for.</summary>
    public const string HereNow = "here-now";

    /// <summary>All of them, in the order in which they are offered.</summary>
    public static IReadOnlyList<string> All { get; } = [FeltBetter, Preferred, Teacher, Price, HereNow];
}
