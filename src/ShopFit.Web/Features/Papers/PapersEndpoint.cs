using System.Globalization;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Net.Http.Headers;
using ShopFit.Sheets.TakeHome;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Papers;

/// <summary>Draws a paper again from its facts for whoever works in its shop.</summary>
internal static class PapersEndpoint
{
    public static void MapPapers(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/papers/{id:guid}.pdf", DrawAsync).ExcludeFromDescription();

    private static async Task<IResult> DrawAsync(Guid id, HttpContext http, ShopContexts contexts, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var paper = await db.Papers.AsNoTracking().SingleOrDefaultAsync(row => row.Id == id && row.Kind == PaperKinds.TakeHomeSheet, cancellationToken);
        if (paper is null)
        {
            return Results.NotFound();
        }

        var sheet = JsonSerializer.Deserialize<TakeHomeSheet>(paper.FactsJson)!;
        var pdf = TakeHomeSheetPdf.Draw(sheet, CultureInfo.GetCultureInfo(sheet.Language));

        // A child's feet and name: no proxy and no shared tablet keeps a copy.
        http.Response.Headers.CacheControl = "private, no-store";
        http.Response.Headers.ContentDisposition = new ContentDispositionHeaderValue("inline") { FileName = "take-home-sheet.pdf" }.ToString();
        return Results.Bytes(pdf, "application/pdf");
    }
}
