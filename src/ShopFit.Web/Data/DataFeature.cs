using Microsoft.AspNetCore.DataProtection;
using Microsoft.EntityFrameworkCore;

namespace ShopFit.Web.Data;

public static class DataFeature
{
    /// <summary>The database of a shop and the ways to it.</summary>
    public static IServiceCollection AddData(this IServiceCollection services, ShopFolder folder)
    {
        // What protects cookies and forms lies in the database too, so that a restart signs nobody out and one file is the whole backup.
        services.AddDataProtection().SetApplicationName("ShopFit").PersistKeysToDbContext<ShopDbContext>();

        return services
            .AddSingleton(folder)
            .AddDbContextFactory<ShopDbContext>(options => ShopDatabase.Use(options, folder.DatabaseFile))
            .AddSingleton<ShopPreparation>()
            .AddSingleton<WriteLock>()
            .AddSingleton<ShopWrites>()
            .AddScoped<ShopContexts>();
    }
}
