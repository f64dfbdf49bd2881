using System.Globalization;
using System.Text;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Api;

/// <summary>What another program may ask of the fit: which pairs are likely, and which to try next. Nothing is kept of what it says.</summary>
internal static class FitEndpoints
{
    public const string Json = "application/json";
    public const string ShortlistPath = "/api/v1/shortlist";
    public const string NextPairPath = "/api/v1/next-pair";
    private const string Problem = "application/problem+json";
    private const string Stateless = "Stateless: nothing of the request is kept, and the same request gives the same answer, byte for byte, while catalogue, stock, fit numbers, what the shop has learnt and the day stand still.";

    /// <summary>The questions, by their ids in the OpenAPI document.</summary>
    public static IReadOnlyList<string> OperationIds { get; } = ["shortlist", "nextPair"];

    public static void MapFit(this IEndpointRouteBuilder routes)
    {
        Map(routes, ShortlistPath, OperationIds[0], "Which pairs are likely to fit both feet", Stateless, ShortlistAnswer.Of);
        Map(routes, NextPairPath, OperationIds[1], "Which pair to try next", $"The pairs that were not tried yet, the one to try next first; each says how it differs from the one tried last. {Stateless}", ShortlistAnswer.NextOf);
    }

    private static void Map(
        IEndpointRouteBuilder routes, string path, string id, string summary, string description, Func<ShortlistAsked, ShoesOnFile, CancellationToken, ShortlistResponse> answer) => routes
        .MapPost(path, (HttpContext http, ShopContexts contexts, ShoesInMemory shoes, TimeProvider clock) => AnswerAsync(http, contexts, shoes, clock, answer))
        .RequireAuthorization(ApiKeyScheme.Name)
        .RequireRateLimiting(ApiFeature.RateLimit)
        .DisableAntiforgery()
        .WithName(id)
        .WithTags("Fit")
        .WithSummary(summary)
        .WithDescription(description)
        .Produces<ShortlistResponse>(StatusCodes.Status200OK, Json)
        .Produces<HttpValidationProblemDetails>(StatusCodes.Status400BadRequest, Problem)
        .ProducesProblem(StatusCodes.Status401Unauthorized)
        .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
        .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
        .ProducesProblem(StatusCodes.Status429TooManyRequests);

    private static async Task<IResult> AnswerAsync(
        HttpContext http, ShopContexts contexts, ShoesInMemory shoesInMemory, TimeProvider clock, Func<ShortlistAsked, ShoesOnFile, CancellationToken, ShortlistResponse> answer)
    {
        var stop = http.RequestAborted;
        if (!IsJson(http.Request.ContentType) || !IsPlain(http.Request.Headers.ContentEncoding))
        {
            return ApiProblems.NotJson();
        }

        if (await ReadAsync(http.Request, stop) is not { } body)
        {
            return ApiProblems.TooLarge();
        }

        ShoesOnFile shoes;
        DateOnly today;
        await using (var db = await contexts.OpenAsync(stop))
        {
            shoes = await shoesInMemory.SeeAsync(db, stop);
            today = ShopTime.Of(await db.Shops.AsNoTracking().SingleAsync(shop => shop.Id == db.ShopId, stop)).Day(clock.GetUtcNow());
        }

        // Programs are answered in English, whoever runs this shop.
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");
        var problems = new RequestProblems();
        var terms = new ShortlistTerms(
            [.. shoes.Numbers.Kinds.Select(kind => kind.Id)],
            [.. shoes.Numbers.Checks.Select(check => check.Id)],
            [.. shoes.Numbers.Pads.Select(pad => pad.Id)]);
        var asked = new ShortlistRequestReader(terms, today).Read(body, problems);
        if (asked is not null)
        {
            ShortlistAnswer.CheckTryOns(asked, shoes, problems);
        }

        return problems.Any ? ApiProblems.Invalid(problems) : Results.Json(answer(asked!, shoes, stop), JsonSerializerOptions.Web);
    }

    /// <summary>Whether the body says that it is JSON in UTF-8, the only encoding that JSON travels in (RFC 8259).</summary>
    private static bool IsJson(string? contentType) =>
        MediaTypeHeaderValue.TryParse(contentType, out var type)
        && type.MediaType.Equals(Json, StringComparison.OrdinalIgnoreCase)
        && (!type.Charset.HasValue || HeaderUtilities.RemoveQuotes(type.Charset).Equals(Encoding.UTF8.WebName, StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether the body travels as it is: nothing is unpacked here (RFC 9110, 15.5.16).</summary>
    private static bool IsPlain(StringValues contentEncoding) =>
        contentEncoding.All(coding => string.IsNullOrWhiteSpace(coding) || coding.Trim().Equals("identity", StringComparison.OrdinalIgnoreCase));

    /// <summary>The whole body, or null where it is larger than allowed, whatever it says of its length.</summary>
    private static async Task<ReadOnlyMemory<byte>?> ReadAsync(HttpRequest request, CancellationToken cancellationToken)
    {
        if (request.ContentLength > ShortlistRequestReader.MostBytes)
        {
            return null;
        }

        var body = new byte[ShortlistRequestReader.MostBytes + 1];
        var length = await request.Body.ReadAtLeastAsync(body, body.Length, throwOnEndOfStream: false, cancellationToken);
        if (length > ShortlistRequestReader.MostBytes)
        {
            return null;
        }

        return body.AsMemory(0, length);
    }
}
