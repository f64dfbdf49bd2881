using Microsoft.AspNetCore.Identity;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.People;

public static class PeopleFeature
{
    /// <summary>Who works here, and how they sign in.</summary>
    public static IServiceCollection AddPeople(this IServiceCollection services)
    {
        services.AddCascadingAuthenticationState();
        services.AddAuthentication(IdentityConstants.ApplicationScheme).AddIdentityCookies();
        services.AddIdentityCore<Person>(options => options.Stores.SchemaVersion = ShopDatabase.IdentitySchema)
            .AddRoles<IdentityRole<Guid>>()
            .AddEntityFrameworkStores<ShopDbContext>()
            .AddSignInManager();
        services.AddAuthorization();
        return services.AddScoped<CurrentActor>();
    }
}
