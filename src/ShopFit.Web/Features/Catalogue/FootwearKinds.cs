namespace ShopFit.Web.Features.Catalogue;

/// <summary>The kinds of footwear that are fitted, by the id that files and requests use.</summary>
public static class FootwearKinds
{
    public const string Pointe = "pointe";

    public const string Soft = "soft";

    public static IReadOnlyList<string> All { get; } = [Pointe, "demi-pointe", Soft, "jazz", "tap", "character"];
}
