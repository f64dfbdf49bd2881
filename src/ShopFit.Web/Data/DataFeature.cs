using Microsoft.EntityFrameworkCore;

namespace ShopFit.Web.Data;

public static class DataFeature
{
    /// <summary>The database of a shop and the ways to it.</summary>
    public static IServiceCollection AddData(this IServiceCollection services, ShopFolder folder) => services
        .AddSingleton(folder)
        .AddDbContextFactory<ShopDbContext>(options => ShopDatabase.Use(options, folder.DatabaseFile))
        .AddSingleton<WriteLock>()
        .AddSingleton<ShopWrites>()
        .AddScoped<ShopContexts>();
}
