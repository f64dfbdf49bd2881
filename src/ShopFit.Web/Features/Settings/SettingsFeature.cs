namespace ShopFit.Web.Features.Settings;

public static class SettingsFeature
{
    /// <summary>How the shop counts, and its fit numbers.</summary>
    public static IServiceCollection AddSettings(this IServiceCollection services) => services
        .AddScoped<ChangeFitNumbers>()
        .AddScoped<ChangeShop>()
        .AddScoped<FitNumberNames>()
        .AddScoped<FitNumbers>()
        .AddScoped<FitPreview>()
        .AddScoped<SettingNames>()
        .AddScoped<SettingsQueries>();
}
