using System.Security.Claims;
using System.Text.Json.Serialization;
using System.Threading.RateLimiting;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Api;

public static class ApiFeature
{
    /// <summary>What a key may ask in a minute: more than a person clicks, less than would slow the tablets down.</summary>
    public const int RequestsAMinute = 1_200;

    internal const string RateLimit = "api";

    private const int Segments = 6;

    /// <summary>What other programs may ask, and the document that describes it.</summary>
    public static IServiceCollection AddApi(this IServiceCollection services) => services
        .AddProblemDetails()
        .ConfigureHttpJsonOptions(options => options.SerializerOptions.NumberHandling = JsonNumberHandling.Strict)
        .AddOpenApi("v1", ApiDocument.Describe)
        .AddRateLimiter(options =>
        {
            options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
            options.OnRejected = async (rejected, _) =>
            {
                rejected.HttpContext.Response.Headers.RetryAfter = "10";
                await ApiProblems.TooMany().ExecuteAsync(rejected.HttpContext);
            };
            options.AddPolicy(RateLimit, http => RateLimitPartition.GetSlidingWindowLimiter(
                http.User.FindFirstValue(ShopClaims.ApiKeyId) ?? "",
                _ => new SlidingWindowRateLimiterOptions { PermitLimit = RequestsAMinute, Window = TimeSpan.FromMinutes(1), SegmentsPerWindow = Segments, QueueLimit = 0 }));
        });

    /// <summary>Gives other programs problem details where a person gets a page. Goes before routing.</summary>
    public static void UseApiProblems(this IApplicationBuilder app) => app.UseWhen(
        context => context.Request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase),
        api => api
            .UseExceptionHandler(new ExceptionHandlerOptions
            {
                StatusCodeSelector = exception => exception is BadHttpRequestException bad ? bad.StatusCode : StatusCodes.Status500InternalServerError,
            })
            .UseStatusCodePages());

    /// <summary>The questions, and their description for everybody.</summary>
    public static void MapApi(this IEndpointRouteBuilder routes)
    {
        routes.MapFit();
        // Without these a program with a good key would be told that it has none: only an endpoint asks for a key.
        foreach (var path in new[] { FitEndpoints.ShortlistPath, FitEndpoints.NextPairPath })
        {
            routes.Map(path, ApiProblems.NotPost).RequireAuthorization(ApiKeyScheme.Name).ExcludeFromDescription();
        }

        routes.Map("/api/{**rest}", ApiProblems.NotFound).RequireAuthorization(ApiKeyScheme.Name).ExcludeFromDescription();
        routes.MapOpenApi("/openapi/{documentName}.json").AllowAnonymous();
    }
}
