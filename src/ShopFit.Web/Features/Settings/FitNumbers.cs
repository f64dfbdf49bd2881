using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Settings;

/// <summary>The fit numbers of the shop: the standard ones, and over them what the shop has changed.</summary>
public sealed class FitNumbers(ShopContexts contexts)
{
    private static readonly JsonSerializerOptions Format = new(JsonSerializerDefaults.Web)
    {
        NumberHandling = System.Text.Json.Serialization.JsonNumberHandling.AllowNamedFloatingPointLiterals,
    };

    /// <summary>The numbers in force now.</summary>
    public async Task<FitDefaults> SeeAsync(CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var overrides = await db.Shops.Where(shop => shop.Id == db.ShopId).Select(shop => shop.FitOverridesJson).SingleAsync(cancellationToken);
        return Over(FitDefaults.Standard, overrides);
    }

    /// <summary>Numbers with some of them changed; a changed object is changed member by member, a list as a whole.</summary>
    internal static T Over<T>(T standard, string? overridesJson)
    {
        if (overridesJson is null)
        {
            return standard;
        }

        var numbers = JsonSerializer.SerializeToNode(standard, Format)!.AsObject();
        Lay(JsonNode.Parse(overridesJson)!.AsObject(), numbers);
        return numbers.Deserialize<T>(Format)!;
    }

    private static void Lay(JsonObject changes, JsonObject onto)
    {
        foreach (var (name, change) in changes)
        {
            if (change is JsonObject inner && onto[name] is JsonObject below)
            {
                Lay(inner, below);
            }
            else
            {
                onto[name] = change?.DeepClone();
            }
        }
    }
}
