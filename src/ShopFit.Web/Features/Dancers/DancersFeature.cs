namespace ShopFit.Web.Features.Dancers;

/// <summary>Dancers and whoever answers for them.</summary>
public static class DancersFeature
{
    public static IServiceCollection AddDancers(this IServiceCollection services) => services
        .AddScoped<RegisterDancer>()
        .AddScoped<RecordConsent>()
        .AddScoped<DancerQueries>();
}
