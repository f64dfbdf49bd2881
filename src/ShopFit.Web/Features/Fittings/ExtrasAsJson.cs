using System.Text.Json;
using ShopFit.Web.Features.Sales;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What goes into the bag beside shoes and pads, as it is kept: <c>[{"itemId":"...","quantity":1}]</c>.</summary>
internal static class ExtrasAsJson
{
    public static string Write(IReadOnlyList<SaleExtra> extras) => JsonSerializer.Serialize(extras, JsonSerializerOptions.Web);

    public static IReadOnlyList<SaleExtra> Read(string json) => JsonSerializer.Deserialize<List<SaleExtra>>(json, JsonSerializerOptions.Web) ?? [];
}
