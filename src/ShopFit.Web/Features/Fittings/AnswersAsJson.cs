using System.Text.Json;
using System.Text.Json.Serialization;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Answers to the checks as they are kept: <c>[{"foot":"left","check":"drop","answer":1,"byDancer":false}]</c>.</summary>
public static class AnswersAsJson
{
    private static readonly JsonSerializerOptions Format = new(JsonSerializerDefaults.Web)
    {
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    public static string Write(IReadOnlyList<CheckAnswer> answers) => JsonSerializer.Serialize(answers, Format);

    public static IReadOnlyList<CheckAnswer> Read(string json) => JsonSerializer.Deserialize<List<CheckAnswer>>(json, Format) ?? [];
}
