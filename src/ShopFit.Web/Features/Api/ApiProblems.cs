using System.Globalization;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Api;

/// <summary>Errors as other programs get them: RFC 9457 problem details.</summary>
internal static class ApiProblems
{
    public static IResult Invalid(RequestProblems problems) => Results.Problem(new HttpValidationProblemDetails(problems.ToDictionary())
    {
        Status = StatusCodes.Status400BadRequest,
        Title = "The request cannot be answered. Each error stands under the JSON pointer of what it is about.",
    });

    public static IResult TooLarge() => Results.Problem(
        statusCode: StatusCodes.Status413PayloadTooLarge,
        title: string.Create(CultureInfo.InvariantCulture, $"The body is larger than {ShortlistRequestReader.MostBytes / 1024} KB."));

    public static IResult NotJson() => Results.Problem(
        statusCode: StatusCodes.Status415UnsupportedMediaType,
        title: "The body must be application/json in UTF-8, not compressed.");

    public static IResult NoKey() => Results.Problem(
        statusCode: StatusCodes.Status401Unauthorized,
        title: $"A key that is known here must stand in the header {ApiKeyScheme.Header}.");

    public static IResult NotFound() => Results.Problem(
        statusCode: StatusCodes.Status404NotFound,
        title: "Nothing is asked at this address. /openapi/v1.json says what can be.");

    public static IResult NotPost(HttpContext http)
    {
        http.Response.Headers.Allow = HttpMethods.Post;
        return Results.Problem(
            statusCode: StatusCodes.Status405MethodNotAllowed,
            title: "This question is asked with POST.");
    }

    public static IResult TooMany() => Results.Problem(
        statusCode: StatusCodes.Status429TooManyRequests,
        title: string.Create(CultureInfo.InvariantCulture, $"A key may ask {ApiFeature.RequestsAMinute} times a minute. Wait, then ask again."));
}
