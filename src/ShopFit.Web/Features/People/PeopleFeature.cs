using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Identity;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.People;

public static class PeopleFeature
{
    /// <summary>How long somebody who was shut out can still be on an open page.</summary>
    public static readonly TimeSpan StampInterval = TimeSpan.FromMinutes(1);

    // A shop's day: who signs in at opening is still signed in at closing, and not the next morning.
    private static readonly TimeSpan SignedInFor = TimeSpan.FromHours(12);

    private static readonly TimeSpan LockedFor = TimeSpan.FromMinutes(15);

    /// <summary>Who works here, how they sign in, and that nothing is shown to anybody else.</summary>
    public static IServiceCollection AddPeople(this IServiceCollection services)
    {
        services.AddCascadingAuthenticationState();
        services.AddAuthentication(IdentityConstants.ApplicationScheme)
            .AddScheme<AuthenticationSchemeOptions, ApiKeyScheme>(ApiKeyScheme.Name, configureOptions: null)
            .AddIdentityCookies(cookies => cookies.ApplicationCookie!.Configure(HardenCookie));
        services.AddIdentityCore<Person>(options =>
            {
                options.Stores.SchemaVersion = ShopDatabase.IdentitySchema;
                options.Password = new PasswordOptions
                {
                    RequiredLength = NewPerson.ShortestPassword,
                    RequireDigit = false,
                    RequireLowercase = false,
                    RequireNonAlphanumeric = false,
                    RequireUppercase = false,
                };
                options.Lockout = new LockoutOptions { AllowedForNewUsers = true, MaxFailedAccessAttempts = 5, DefaultLockoutTimeSpan = LockedFor };
            })
            .AddRoles<IdentityRole<Guid>>()
            .AddEntityFrameworkStores<ShopDbContext>()
            .AddClaimsPrincipalFactory<PersonClaims>()
            .AddSignInManager();
        services.Configure<SecurityStampValidatorOptions>(options =>
        {
            options.ValidationInterval = StampInterval;
            options.OnRefreshingPrincipal = KeepTablet;
        });

        var people = new AuthorizationPolicyBuilder(IdentityConstants.ApplicationScheme).RequireRole(Roles.All).Build();
        services.AddAuthorizationBuilder()
            .SetDefaultPolicy(people)
            .SetFallbackPolicy(people)
            .AddPolicy(ApiKeyScheme.Name, policy => policy.AddAuthenticationSchemes(ApiKeyScheme.Name).RequireClaim(ShopClaims.ApiKeyId));

        return services
            .AddScoped<AuthenticationStateProvider, CircuitSignIn>()
            .AddScoped<CurrentActor>()
            .AddScoped<NewPerson>()
            .AddScoped<MakeFirstManager>()
            .AddScoped<AddApiKey>()
            .AddScoped<AddPerson>()
            .AddScoped<RenamePerson>()
            .AddScoped<ResetPassword>()
            .AddScoped<RestoreApiKey>()
            .AddScoped<RevokeApiKey>()
            .AddScoped<SwitchSignIn>()
            .AddScoped<StaffQueries>()
            .AddScoped<SignIn>()
            .AddSingleton<PeopleQueries>();
    }

    private static void HardenCookie(CookieAuthenticationOptions options)
    {
        options.Cookie.Name = "shopfit";
        options.Cookie.HttpOnly = true;
        options.Cookie.SameSite = SameSiteMode.Lax;
        options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        options.ExpireTimeSpan = SignedInFor;
        options.SlidingExpiration = true;
        options.LoginPath = PeoplePaths.SignIn;
        options.AccessDeniedPath = PeoplePaths.NotPermitted;
        options.ReturnUrlParameter = "returnUrl";
        options.Events.OnRedirectToLogin = context => AnswerAsync(context, StatusCodes.Status401Unauthorized);
        options.Events.OnRedirectToAccessDenied = context => AnswerAsync(context, StatusCodes.Status403Forbidden);
    }

    // Another program has no use for a page to sign in on.
    private static Task AnswerAsync(RedirectContext<CookieAuthenticationOptions> context, int statusCode)
    {
        if (context.Request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase))
        {
            context.Response.StatusCode = statusCode;
        }
        else
        {
            context.Response.Redirect(context.RedirectUri);
        }

        return Task.CompletedTask;
    }

    // The tablet is no property of the person, so a fresh look at the person would lose it.
    private static Task KeepTablet(SecurityStampRefreshingPrincipalContext context)
    {
        if (context.CurrentPrincipal?.FindFirst(ShopClaims.Tablet) is { } tablet)
        {
            context.NewPrincipal!.Identities.First().AddClaim(tablet.Clone());
        }

        return Task.CompletedTask;
    }
}
