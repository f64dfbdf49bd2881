using System.Globalization;
using System.Text.Json;

namespace ShopFit.Web.Features.Api;

/// <summary>A value in the body of a request and where it stands, so that whatever is wrong with it can be told there.</summary>
/// <remarks>A member that is null counts as left out.</remarks>
internal readonly record struct JsonPlace(JsonElement Value, string Pointer, RequestProblems Problems)
{
    /// <summary>The members of an object; reports a member that is unknown or there twice, and anything that is no object.</summary>
    public JsonMembers Members(params ReadOnlySpan<string> known)
    {
        var members = new Dictionary<string, JsonPlace>(StringComparer.Ordinal);
        if (Value.ValueKind != JsonValueKind.Object)
        {
            Refuse("an object");
            return new JsonMembers(this, members, IsObject: false);
        }

        foreach (var member in Value.EnumerateObject())
        {
            if (NameOf(member) is not { } name)
            {
                Problems.Add(Pointer, "The name of a member holds half a surrogate pair. Names are plain text.");
            }
            else if (!known.Contains(name))
            {
                Problems.Add(PointerTo(name), $"\"{Short(name)}\" is not known here. Allowed: {string.Join(", ", known.ToArray())}.");
            }
            else if (!members.TryAdd(name, new JsonPlace(member.Value, PointerTo(name), Problems)))
            {
                Problems.Add(PointerTo(name), $"\"{name}\" is given twice. Give it once.");
            }
        }

        return new JsonMembers(this, members, IsObject: true);
    }

    /// <summary>The elements of an array, none where it is no array or longer than allowed.</summary>
    public IReadOnlyList<JsonPlace> Elements(int atMost)
    {
        if (Value.ValueKind != JsonValueKind.Array)
        {
            Refuse("an array");
            return [];
        }

        var count = Value.GetArrayLength();
        if (count > atMost)
        {
            Problems.Add(Pointer, string.Create(CultureInfo.InvariantCulture, $"There are {count} elements; at most {atMost} are taken."));
            return [];
        }

        var place = this;
        return [.. Value.EnumerateArray().Select((element, index) =>
            new JsonPlace(element, string.Create(CultureInfo.InvariantCulture, $"{place.Pointer}/{index}"), place.Problems))];
    }

    /// <summary>A text, or null where it is none.</summary>
    public string? Text(int atMost)
    {
        var expected = string.Create(CultureInfo.InvariantCulture, $"a text of 1 to {atMost} characters");
        if (Value.ValueKind != JsonValueKind.String || TextOf(Value) is not { Length: > 0 } text || text.Length > atMost || text.Any(char.IsControl))
        {
            Refuse(expected);
            return null;
        }

        return text;
    }

    /// <summary>One of a few texts, or null where it is none of them.</summary>
    public string? OneOf(params IReadOnlyList<string> allowed)
    {
        if (Value.ValueKind == JsonValueKind.String && TextOf(Value) is { } text && allowed.Contains(text, StringComparer.Ordinal))
        {
            return text;
        }

        Refuse("one of " + string.Join(", ", allowed));
        return null;
    }

    public bool? TrueOrFalse()
    {
        if (Value.ValueKind is JsonValueKind.True or JsonValueKind.False)
        {
            return Value.GetBoolean();
        }

        Refuse("true or false");
        return null;
    }

    /// <summary>A number that a double can hold, or null where it is none.</summary>
    public double? Number()
    {
        if (Value.ValueKind == JsonValueKind.Number && Value.TryGetDouble(out var number) && double.IsFinite(number))
        {
            return number;
        }

        Refuse("a number");
        return null;
    }

    /// <summary>A whole number in a range, or null where it is none; 10.0 is as whole as 10.</summary>
    public int? WholeNumber(int lowest, int highest)
    {
        if (Value.ValueKind == JsonValueKind.Number && Value.TryGetDouble(out var number)
            && number >= lowest && number <= highest && number == Math.Truncate(number))
        {
            return (int)number;
        }

        Refuse(string.Create(CultureInfo.InvariantCulture, $"a whole number from {lowest} to {highest}"));
        return null;
    }

    /// <summary>A calendar date as RFC 3339 writes it, or null where it is none.</summary>
    public DateOnly? Date()
    {
        if (Value.ValueKind == JsonValueKind.String
            && DateOnly.TryParseExact(TextOf(Value), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return date;
        }

        Refuse("a date such as 2014-05-31");
        return null;
    }

    /// <summary>Says that the value is not what is allowed here.</summary>
    public void Refuse(string allowed) => Problems.Add(Pointer, $"{Shown()} is not allowed here. Allowed: {allowed}.");

    /// <summary>The pointer to a member of this object, its name escaped as RFC 6901 asks and cut to a length that can be read.</summary>
    public string PointerTo(string name) =>
        $"{Pointer}/{Short(name).Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}";

    /// <summary>The value as it was written, cut to a length that can be read.</summary>
    private string Shown() => Value.ValueKind switch
    {
        JsonValueKind.Object => "An object",
        JsonValueKind.Array => "An array",
        _ => Short(Value.GetRawText()),
    };

    private static string Short(string text)
    {
        const int Enough = 40;
        if (text.Length <= Enough)
        {
            return text;
        }

        var end = char.IsHighSurrogate(text[Enough - 1]) ? Enough - 1 : Enough;
        return string.Concat(text.AsSpan(0, end), "…");
    }

    /// <summary>The text of a string, or null where an escape in it is half a surrogate pair: such a text has no meaning.</summary>
    private static string? TextOf(JsonElement value)
    {
        try
        {
            return value.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    private static string? NameOf(JsonProperty member)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }
}

/// <summary>The known members of an object.</summary>
internal readonly record struct JsonMembers(JsonPlace Object, IReadOnlyDictionary<string, JsonPlace> ByName, bool IsObject)
{
    /// <summary>A member that may be left out; null means the same.</summary>
    public JsonPlace? Find(string name) =>
        ByName.TryGetValue(name, out var place) && place.Value.ValueKind != JsonValueKind.Null ? place : null;

    /// <summary>A member that must be there; its absence is reported.</summary>
    public JsonPlace? Need(string name)
    {
        if (ByName.TryGetValue(name, out var place))
        {
            return place;
        }

        // A value that is no object was told so once; that its members are missing adds nothing.
        if (IsObject)
        {
            Object.Problems.Add(Object.PointerTo(name), $"\"{name}\" is missing.");
        }

        return null;
    }
}
