namespace ShopFit.Web.Features.Studios;

/// <summary>Studios and what their teachers ask for.</summary>
public static class StudiosFeature
{
    public static IServiceCollection AddStudios(this IServiceCollection services) => services
        .AddScoped<AddStudio>()
        .AddScoped<DescribeStudio>()
        .AddScoped<StudioQueries>();
}
