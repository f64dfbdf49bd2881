namespace ShopFit.Web.Features.Demo;

public static class DemoFeature
{
    /// <summary>The invented shop to look round in.</summary>
    public static IServiceCollection AddDemo(this IServiceCollection services) => services
        .AddSingleton<DemoShop>()
        .AddScoped<LoadDemo>();
}
