using Microsoft.AspNetCore.HttpOverrides;
using Microsoft.AspNetCore.ResponseCompression;
using MudBlazor.Services;
using ShopFit.Web.App;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Api;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Demo;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Shelf;
using ShopFit.Web.Features.Studios;
using ShopFit.Web.Shared;

namespace ShopFit.Web;

/// <summary>What the shop is made of, and the order in which a request passes through it.</summary>
public static class ShopSite
{
    /// <summary>Everything that works without the web, for the command line too.</summary>
    public static IServiceCollection AddShop(this IServiceCollection services, ShopFolder folder) => services
        .AddSingleton(TimeProvider.System)
        .AddLogging(ShopLogs.Keep)
        .AddLocalization()
        .AddData(folder)
        .AddPeople()
        .AddCatalogue()
        .AddShelf()
        .AddPapers()
        .AddSales()
        .AddDemo()
        .AddSettings()
        .AddDancers()
        .AddStudios()
        .AddFittings();

    /// <summary>The web site of one shop, ready to be started. Starting it brings the database up to date first.</summary>
    /// <param name="folder">Where the shop is kept.</param>
    /// <param name="urls">Addresses to listen on, parted by semicolons.</param>
    /// <param name="change">What a test puts in place of the real thing.</param>
    public static WebApplication Build(ShopFolder folder, string urls, Action<WebApplicationBuilder>? change = null)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(ShopSite).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
        });
        builder.WebHost.UseUrls(urls).UseStaticWebAssets().ConfigureKestrel(kestrel => kestrel.AddServerHeader = false);
        builder.Services.AddShop(folder);
        builder.Services.AddMudServices();
        builder.Services.AddScoped<UndoOffer>();
        builder.Services.AddApi();
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.AddResponseCompression(options => options.MimeTypes = ResponseCompressionDefaults.MimeTypes);
        builder.Services.Configure<ForwardedHeadersOptions>(options => options.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto);
        builder.Services.AddAntiforgery(options => options.Cookie.Name = "shopfit-form");
        builder.Services.AddHostedService<PrepareBeforeServing>();
        change?.Invoke(builder);

        var app = builder.Build();
        app.UseForwardedHeaders();
        app.UseMiddleware<SafeHeaders>();
        app.UseResponseCompression();
        app.UseExceptionHandler("/error", createScopeForErrors: true);
        // Another program wants the status alone.
        app.UseWhen(
            context => !context.Request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase),
            pages => pages.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true));
        app.UseApiProblems();
        app.UseRouting();
        app.UseMiddleware<FirstStart>();
        app.UseAuthentication();
        app.UseAuthorization();
        app.UseMiddleware<ActorOfRequest>();
        app.UseRateLimiter();
        app.UseAntiforgery();
        app.MapStaticAssets().AllowAnonymous();
        app.MapHealth();
        app.MapPapers();
        app.MapApi();
        app.MapRazorComponents<App.App>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null);
        return app;
    }
}
