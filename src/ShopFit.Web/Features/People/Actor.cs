namespace ShopFit.Web.Features.People;

/// <summary>Who is acting, for which shop and from where. Every record carries it.</summary>
/// <param name="PersonId">The person; empty where a program acts.</param>
/// <param name="ShopId">The shop.</param>
/// <param name="Name">The name that colleagues see.</param>
/// <param name="IsManager">Whether they may do what only managers do.</param>
/// <param name="Tablet">The device, as the shop names it; empty where it has no name.</param>
public sealed record Actor(Guid PersonId, Guid ShopId, string Name, bool IsManager, string Tablet)
{
    /// <summary>Whoever runs the program's own command line. They hold the file, so they may do everything.</summary>
    public static Actor CommandLine(Guid shopId) => new(Guid.Empty, shopId, "command line", IsManager: true, Tablet: "");
}
