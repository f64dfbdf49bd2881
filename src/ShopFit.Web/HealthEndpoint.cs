using ShopFit.Web.Data;

namespace ShopFit.Web;

/// <summary>Says whether the shop can serve: its database is there and has the right shape.</summary>
internal static class HealthEndpoint
{
    public static void MapHealth(this WebApplication app) => app
        .MapGet("/healthz", async (ShopFolder folder, CancellationToken cancellationToken) =>
            await ShopDatabase.IsReadyAsync(folder, cancellationToken)
                ? Results.Text("ready")
                : Results.Text("the database cannot be used", statusCode: StatusCodes.Status503ServiceUnavailable))
        .AllowAnonymous()
        .ExcludeFromDescription();
}
