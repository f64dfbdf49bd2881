using System.Text.Json;
using ShopFit.Fitting.Defaults;

namespace ShopFit.Web.Features.Settings;

/// <summary>The fit numbers that a shop has set itself, as they are kept: a JSON object of values by path.</summary>
/// <param name="Values">The values that can be read, by path.</param>
/// <param name="Problems">What stands there and is no number.</param>
public sealed record OwnFitNumbers(IReadOnlyDictionary<string, double> Values, IReadOnlyList<FitProblem> Problems)
{
    private static readonly JsonSerializerOptions Format = new(JsonSerializerDefaults.Web)
    {
        // A band without an upper end is kept as "Infinity".
        NumberHandling = System.Text.Json.Serialization.JsonNumberHandling.AllowNamedFloatingPointLiterals,
    };

    /// <summary>Reads what is kept. Whatever somebody wrote there by hand, this answers.</summary>
    public static OwnFitNumbers Read(string? json)
    {
        var values = new Dictionary<string, double>(StringComparer.Ordinal);
        var problems = new List<FitProblem>();
        if (json is null)
        {
            return new OwnFitNumbers(values, problems);
        }

        try
        {
            using var document = JsonDocument.Parse(json);
            foreach (var member in document.RootElement.EnumerateObject())
            {
                if (member.Value.ValueKind is JsonValueKind.Number or JsonValueKind.String && TryRead(member.Value, out var value))
                {
                    values[member.Name] = value;
                }
                else
                {
                    problems.Add(new FitProblem(FitProblemCode.NotANumber, [member.Name]));
                }
            }
        }
        catch (Exception exception) when (exception is JsonException or InvalidOperationException)
        {
            return new OwnFitNumbers(new Dictionary<string, double>(StringComparer.Ordinal), [new FitProblem(FitProblemCode.NotANumber, [])]);
        }

        return new OwnFitNumbers(values, problems);
    }

    /// <summary>The same values always as the same text; none as null.</summary>
    public static string? Write(IReadOnlyDictionary<string, double> values) => values.Count == 0
        ? null
        : JsonSerializer.Serialize(new SortedDictionary<string, double>(values.ToDictionary(), StringComparer.Ordinal), Format);

    private static bool TryRead(JsonElement element, out double value)
    {
        try
        {
            value = element.Deserialize<double>(Format);
            return true;
        }
        catch (JsonException)
        {
            value = 0;
            return false;
        }
    }
}
