using System.Text;
using System.Text.Json.Nodes;

namespace ShopFit.Web.Features.Api;

/// <summary>Bodies that were good until one thing was broken, the same ones at every run.</summary>
internal static class MalformedBodies
{
    public const string Good = """
        {"readings":[{"foot":"left","trait":"length","value":238.5,"unit":"mm","method":"tape"},{"foot":"right","trait":"length","value":37.5,"unit":"size","sizeSystem":"eu"},
        {"foot":"left","trait":"ball-breadth","value":3.5,"unit":"in"},{"foot":"right","trait":"toe-slope","value":2,"unit":"word"}],
        "dancer":{"birthDate":"2010-05-31","sex":"female","firstPair":true},
        "tryOns":[{"sku":"S1","fits":false,"answers":[{"foot":"left","check":"toes-flat","answer":0,"by":"dancer"},{"foot":"right","check":"arch","answer":1}],"pads":[{"foot":"left","pad":"heel-cushion"}]}],
        "from":"catalogue","limit":3,"kind":"pointe","asOf":"2026-03-14"}
        """;

    private static readonly string[] NeverAllowed = ["""{"x":1}""", "[[]]", "1e999", "-1e308", "\"\\ud800\"", "\"\\u0000\""];

    public static IEnumerable<byte[]> All(int count, int seed)
    {
        var random = new Random(seed);
        for (var index = 0; index < count; index++)
        {
            yield return (index % 9) switch
            {
                0 => Encoding.UTF8.GetBytes(Good.TrimEnd()[..random.Next(Good.TrimEnd().Length - 1)]),
                1 => WithByte(random),
                2 => WithValue(random),
                3 => WithMember(random),
                4 => WithMemberTwice(random),
                5 => WithoutRequired(random),
                6 => Noise(random),
                7 => Nested(random),
                _ => OutOfRange(random),
            };
        }
    }

    private static byte[] WithByte(Random random)
    {
        var bytes = Encoding.UTF8.GetBytes(Good).ToList();
        bytes.Insert(random.Next(bytes.Count), (byte)random.Next(0x80, 0x100));
        return [.. bytes];
    }

    private static byte[] WithValue(Random random)
    {
        // A marker that no good body holds is put in place of a value, and then what never can stand there.
        const string Marker = "\"@@here@@\"";
        var root = JsonNode.Parse(Good)!;
        var places = Places(root).Where(place => place.Parent is not null).ToList();
        var place = places[random.Next(places.Count)];
        place.ReplaceWith(JsonNode.Parse(Marker));
        return Encoding.UTF8.GetBytes(root.ToJsonString().Replace(Marker, NeverAllowed[random.Next(NeverAllowed.Length)], StringComparison.Ordinal));
    }

    private static byte[] WithMember(Random random)
    {
        var root = JsonNode.Parse(Good)!;
        var objects = Places(root).OfType<JsonObject>().ToList();
        objects[random.Next(objects.Count)].Add($"extra{random.Next(1_000)}", random.Next());
        return Encoding.UTF8.GetBytes(root.ToJsonString());
    }

    private static byte[] WithMemberTwice(Random random)
    {
        string[] members = ["\"limit\":3", "\"foot\":\"left\"", "\"sex\":\"female\"", "\"sku\":\"S1\"", "\"answer\":0", "\"pad\":\"heel-cushion\"", "\"unit\":\"mm\""];
        var member = members[random.Next(members.Length)];
        return Encoding.UTF8.GetBytes(Good.Replace(member, $"{member},{member}", StringComparison.Ordinal));
    }

    private static byte[] WithoutRequired(Random random)
    {
        string[] required = ["foot", "trait", "value", "unit", "sku", "fits", "check", "answer", "pad"];
        var root = JsonNode.Parse(Good)!;
        var objects = Places(root).OfType<JsonObject>().Where(row => row.Any(member => required.Contains(member.Key))).ToList();
        var chosen = objects[random.Next(objects.Count)];
        var names = chosen.Select(member => member.Key).Where(name => required.Contains(name)).ToList();
        chosen.Remove(names[random.Next(names.Count)]);
        return Encoding.UTF8.GetBytes(root.ToJsonString());
    }

    private static byte[] Noise(Random random)
    {
        var bytes = new byte[random.Next(1, 400)];
        random.NextBytes(bytes);
        return [(byte)'{', .. bytes];
    }

    private static byte[] Nested(Random random)
    {
        var depth = random.Next(65, 3_000);
        return Encoding.UTF8.GetBytes($$"""{"readings":{{new string('[', depth)}}{{new string(']', depth)}}}""");
    }

    private static byte[] OutOfRange(Random random)
    {
        var root = JsonNode.Parse(Good)!;
        switch (random.Next(4))
        {
            case 0:
                root["readings"]![random.Next(4)]!["value"] = random.Next(1_000, 1_000_000);
                break;
            case 1:
                root["limit"] = random.Next(101, int.MaxValue);
                break;
            case 2:
                root["tryOns"]![0]!["sku"] = $"none-{random.Next()}";
                break;
            default:
                root["dancer"]!["birthDate"] = $"{random.Next(2_025, 9_999)}-01-01";
                break;
        }

        return Encoding.UTF8.GetBytes(root.ToJsonString());
    }

    private static IEnumerable<JsonNode> Places(JsonNode node) => [node, .. node switch
    {
        JsonObject members => members.Where(member => member.Value is not null).SelectMany(member => Places(member.Value!)),
        JsonArray elements => elements.Where(element => element is not null).SelectMany(element => Places(element!)),
        _ => [],
    }];
}
