namespace ShopFit.Web.App.Layout;

/// <summary>The sections of the shop, in the order of the bar at the top. A section stands here once its page exists.</summary>
internal static class ShopSections
{
    public static IReadOnlyList<(string Name, string Address)> All { get; } =
    [
        ("Today", "/"),
        ("Dancers", "/dancers"),
        ("Shelf", "/shelf"),
        ("Catalogue", "/catalogue"),
        ("Sales", "/sales"),
    ];

    /// <summary>The sections for managers only, after the others.</summary>
    public static IReadOnlyList<(string Name, string Address)> OfManagers { get; } = [("Shop", "/shop")];
}
