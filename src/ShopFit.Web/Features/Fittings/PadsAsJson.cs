using System.Text.Json;
using System.Text.Json.Serialization;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Pads and the feet they go under as they are kept: <c>[{"foot":"left","pad":"heel-cushion"}]</c>.</summary>
public static class PadsAsJson
{
    private static readonly JsonSerializerOptions Format = new(JsonSerializerDefaults.Web)
    {
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    public static string Write(IReadOnlyList<PadUnderFoot> pads) => JsonSerializer.Serialize(pads, Format);

    public static IReadOnlyList<PadUnderFoot> Read(string json) => JsonSerializer.Deserialize<List<PadUnderFoot>>(json, Format) ?? [];
}
