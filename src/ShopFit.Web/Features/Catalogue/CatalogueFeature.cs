namespace ShopFit.Web.Features.Catalogue;

public static class CatalogueFeature
{
    /// <summary>What the shop can sell, and how it comes on file.</summary>
    public static IServiceCollection AddCatalogue(this IServiceCollection services) => services
        .AddSingleton<ShoesInMemory>()
        .AddScoped<CatalogueQueries>()
        .AddScoped<CheckCatalogue>()
        .AddScoped<ImportCatalogue>();
}
