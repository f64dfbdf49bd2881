namespace ShopFit.Web.Features.Shelf;

public static class ShelfFeature
{
    /// <summary>What stands where, and how it came and went.</summary>
    public static IServiceCollection AddShelf(this IServiceCollection services) => services
        .AddScoped<ShelfQueries>();
}
