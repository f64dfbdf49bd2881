using Microsoft.Net.Http.Headers;

namespace ShopFit.Web.Features.Papers;

/// <summary>Papers, drawn for whoever works in their shop.</summary>
public static class PapersFeature
{
    public static IServiceCollection AddPapers(this IServiceCollection services) => services
        .AddScoped<PaperQueries>();

    public static void MapPapers(this IEndpointRouteBuilder routes) => routes
        .MapGet("/papers/{id:guid}.pdf", DrawAsync)
        .ExcludeFromDescription();

    private static async Task<IResult> DrawAsync(Guid id, HttpContext http, PaperQueries papers, CancellationToken cancellationToken)
    {
        if (await papers.DrawAsync(id, cancellationToken) is not { } paper)
        {
            return Results.NotFound();
        }

        // A child's feet and name: no proxy and no shared tablet keeps a copy.
        http.Response.Headers.CacheControl = "private, no-store";
        http.Response.Headers.ContentDisposition = new ContentDispositionHeaderValue("inline") { FileName = paper.FileName }.ToString();
        return Results.Bytes(paper.Pdf, "application/pdf");
    }
}
