using System.Globalization;

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
        title: "The body must be application/json in UTF-8.");

    public static IResult TooMany() => Results.Problem(
        statusCode: StatusCodes.Status429TooManyRequests,
        title: string.Create(CultureInfo.InvariantCulture, $"A key may ask {ApiFeature.RequestsAMinute} times a minute. Wait, then ask again."));
}
