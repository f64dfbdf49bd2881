using System.Text;
using System.Text.Json;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Features.Api;

public class ShortlistRequestReaderTests
{
    private static readonly DateOnly Today = new(2026, 3, 14);
    private static readonly ShortlistTerms Terms = new(["pointe", "jazz"], ["toes-flat", "arch"], ["heel-cushion", "loose-wool"]);

    [Theory]
    [InlineData("{}")]
    [InlineData("""{"readings":null,"dancer":null,"tryOns":null,"from":null,"limit":null,"kind":null,"asOf":null}""")]
    [InlineData("""{"readings":[],"dancer":{},"tryOns":[]}""")]
    public void Nothing_has_to_be_said(string body)
    {
        var asked = Good(body);

        Assert.Empty(asked.Readings);
        Assert.Equal((ShortlistFrom.Shelf, 10, "pointe", Today), (asked.From, asked.Limit, asked.Kind, asked.AsOf));
    }

    [Fact]
    public void All_that_can_be_said_is_read()
    {
        var asked = Good("""
            {
              "readings": [
                {"foot":"left","trait":"length","value":238.5,"unit":"mm","method":"tape"},
                {"foot":"right","trait":"length","value":7.5,"unit":"size","sizeSystem":"us-women"},
                {"foot":"right","trait":"ball-breadth","value":3.5,"unit":"in"},
                {"foot":"left","trait":"toe-slope","value":2,"unit":"word"},
                {"foot":"left","trait":"point-range","value":85,"unit":"deg"},
                {"foot":"left","trait":"strength","value":6,"unit":"points"}
              ],
              "dancer": {"birthDate":"2012-05-31","sex":"female","firstPair":true},
              "tryOns": [
                {"sku":"A1","fits":false,"answers":[{"foot":"left","check":"toes-flat","answer":0,"by":"dancer"},{"foot":"right","check":"toes-flat","answer":1}],
                 "pads":[{"foot":"left","pad":"heel-cushion"},{"foot":"right","pad":"heel-cushion"}]}
              ],
              "from": "catalogue", "limit": 3, "kind": "jazz", "asOf": "2026-01-02"
            }
            """);

        Assert.Equal(6, asked.Readings.Count);
        Assert.Equal(new Reading(Side.Right, Trait.Length, 7.5, ReadingUnit.Size, SizeSystem.Find("us-women")), asked.Readings[1]);
        Assert.Equal((new DateOnly(2012, 5, 31), Sex.Female, true), (asked.BirthDate, asked.Sex, asked.FirstPair));
        var tryOn = Assert.Single(asked.TryOns);
        Assert.Equal(("A1", false, 2, 2), (tryOn.Sku, tryOn.Fits, tryOn.Answers.Count, tryOn.Pads.Count));
        Assert.True(tryOn.Answers[0].ByDancer);
        Assert.Equal((ShortlistFrom.Catalogue, 3, "jazz", new DateOnly(2026, 1, 2)), (asked.From, asked.Limit, asked.Kind, asked.AsOf));
    }

    [Theory]
    [InlineData("", "", "not JSON")]
    [InlineData("{", "", "line 1, byte 2")]
    [InlineData("[]", "", "An array is not allowed here. Allowed: an object.")]
    [InlineData("null", "", "null is not allowed here.")]
    [InlineData("""{"colour":1}""", "/colour", "\"colour\" is not known here. Allowed: readings, dancer,")]
    [InlineData("""{"a/b~c":1}""", "/a~1b~0c", "is not known here.")]
    [InlineData("""{"limit":5,"limit":6}""", "/limit", "\"limit\" is given twice.")]
    [InlineData("""{"limit":0}""", "/limit", "0 is not allowed here. Allowed: a whole number from 1 to 100.")]
    [InlineData("""{"limit":101}""", "/limit", "101 is not allowed here.")]
    [InlineData("""{"limit":1.5}""", "/limit", "1.5 is not allowed here.")]
    [InlineData("""{"limit":1e999}""", "/limit", "1e999 is not allowed here.")]
    [InlineData("""{"limit":"5"}""", "/limit", "\"5\" is not allowed here.")]
    [InlineData("""{"from":"attic"}""", "/from", "\"attic\" is not allowed here. Allowed: one of shelf, catalogue.")]
    [InlineData("""{"from":"Shelf"}""", "/from", "is not allowed here.")]
    [InlineData("""{"kind":"clog"}""", "/kind", "Allowed: one of pointe, jazz.")]
    [InlineData("""{"kind":"\ud800"}""", "/kind", "is not allowed here.")]
    [InlineData("""{"\ud800":1}""", "", "half a surrogate pair")]
    [InlineData("""{"asOf":"14.03.2026"}""", "/asOf", "Allowed: a date such as 2014-05-31.")]
    [InlineData("""{"asOf":"1999-12-31"}""", "/asOf", "Allowed: a date from 2000-01-01 to 2100-12-31.")]
    [InlineData("""{"asOf":"2026-02-30"}""", "/asOf", "Allowed: a date such as")]
    [InlineData("""{"dancer":[]}""", "/dancer", "An array is not allowed here.")]
    [InlineData("""{"dancer":{"name":"x"}}""", "/dancer/name", "Allowed: birthDate, sex, firstPair.")]
    [InlineData("""{"dancer":{"birthDate":"2026-03-01"}}""", "/dancer/birthDate", "an age of 2 to 110")]
    [InlineData("""{"dancer":{"birthDate":"1900-03-01"}}""", "/dancer/birthDate", "an age of 2 to 110")]
    [InlineData("""{"dancer":{"sex":"girl"}}""", "/dancer/sex", "Allowed: one of female, male.")]
    [InlineData("""{"dancer":{"firstPair":"yes"}}""", "/dancer/firstPair", "Allowed: true or false.")]
    [InlineData("""{"readings":{}}""", "/readings", "An object is not allowed here. Allowed: an array.")]
    [InlineData("""{"readings":[1]}""", "/readings/0", "1 is not allowed here. Allowed: an object.")]
    [InlineData("""{"readings":[{"foot":"left","trait":"length","unit":"mm"}]}""", "/readings/0/value", "\"value\" is missing.")]
    [InlineData("""{"readings":[{"foot":"up","trait":"length","value":240,"unit":"mm"}]}""", "/readings/0/foot", "Allowed: one of left, right.")]
    [InlineData("""{"readings":[{"foot":"left","trait":"girth","value":240,"unit":"mm"}]}""", "/readings/0/trait", "Allowed: one of length, heel-to-ball,")]
    [InlineData("""{"readings":[{"foot":"left","trait":"length","value":24,"unit":"mm"}]}""", "/readings/0/value", "24 is not allowed here. Allowed: for length in mm: 100 to 350.")]
    [InlineData("""{"readings":[{"foot":"left","trait":"length","value":-1e300,"unit":"in"}]}""", "/readings/0/value", "for length in in: 3.94 to 13.77")]
    [InlineData("""{"readings":[{"foot":"left","trait":"length","value":85,"unit":"deg"}]}""", "/readings/0/unit", "Allowed: for length: mm, in, size.")]
    [InlineData("""{"readings":[{"foot":"left","trait":"length","value":2,"unit":"word"}]}""", "/readings/0/unit", "Allowed: for length: mm, in, size.")]
    [InlineData("""{"readings":[{"foot":"left","trait":"squeeze","value":3,"unit":"word"}]}""", "/readings/0/value", "Allowed: for a word: 0, 1 or 2.")]
    [InlineData("""{"readings":[{"foot":"left","trait":"length","value":38,"unit":"size"}]}""", "/readings/0/sizeSystem", "\"sizeSystem\" is missing.")]
    [InlineData("""{"readings":[{"foot":"left","trait":"length","value":380,"unit":"size","sizeSystem":"eu"}]}""", "/readings/0/value", "for length in size: 17 to 50")]
    [InlineData("""{"readings":[{"foot":"left","trait":"length","value":240,"unit":"mm","sizeSystem":"eu"}]}""", "/readings/0/sizeSystem", "only with the unit")]
    [InlineData("""{"readings":[{"foot":"left","trait":"length","value":240,"unit":"mm","sizeSystem":"fr"}]}""", "/readings/0/sizeSystem", "Allowed: one of eu, uk-adult,")]
    [InlineData("""{"readings":[{"foot":"left","trait":"length","value":240,"unit":"mm","method":7}]}""", "/readings/0/method", "a text of 1 to 40 characters")]
    [InlineData("""{"tryOns":[{"fits":true}]}""", "/tryOns/0/sku", "\"sku\" is missing.")]
    [InlineData("""{"tryOns":[{"sku":"A1"}]}""", "/tryOns/0/fits", "\"fits\" is missing.")]
    [InlineData("""{"tryOns":[{"sku":"","fits":true}]}""", "/tryOns/0/sku", "a text of 1 to 100 characters")]
    [InlineData("""{"tryOns":[{"sku":"A1","fits":true,"answers":[{"foot":"left","check":"arch","answer":3}]}]}""", "/tryOns/0/answers/0/answer", "a whole number from 0 to 2")]
    [InlineData("""{"tryOns":[{"sku":"A1","fits":true,"answers":[{"foot":"left","check":"arch","answer":1},{"foot":"left","check":"arch","answer":2}]}]}""", "/tryOns/0/answers", "answered twice")]
    [InlineData("""{"tryOns":[{"sku":"A1","fits":true,"pads":[{"foot":"left","pad":"brick"}]}]}""", "/tryOns/0/pads/0/pad", "Allowed: one of heel-cushion, loose-wool.")]
    [InlineData("""{"tryOns":[{"sku":"A1","fits":true,"pads":[{"foot":"left","pad":"loose-wool"},{"foot":"left","pad":"loose-wool"}]}]}""", "/tryOns/0/pads", "A pad goes once under a foot.")]
    public void What_is_wrong_is_told_where_it_stands(string body, string at, string sentence)
    {
        var problems = Bad(Encoding.UTF8.GetBytes(body));

        Assert.Contains(sentence, string.Join(' ', Assert.Contains(at, problems)), StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_wrong_is_told_at_once()
    {
        var problems = Bad("""{"limit":0,"from":1,"readings":[{"foot":"left"},{"foot":1,"trait":"length","value":9,"unit":"mm"}]}"""u8.ToArray());

        Assert.Equal(
            ["/from", "/limit", "/readings/0/trait", "/readings/0/unit", "/readings/0/value", "/readings/1/foot"],
            problems.Keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Bytes_that_are_not_UTF8_are_refused() => Assert.Contains("not UTF-8", Bad([(byte)'"', 0xC3, (byte)'"'])[""][0], StringComparison.Ordinal);

    [Fact]
    public void Depth_without_end_is_refused() => Assert.Contains("not JSON", Bad(Encoding.UTF8.GetBytes(new string('[', 5_000)))[""][0], StringComparison.Ordinal);

    [Theory]
    [InlineData(200, 0, true)]
    [InlineData(201, 0, false)]
    [InlineData(0, 20, true)]
    [InlineData(0, 21, false)]
    public void So_many_readings_and_try_ons_and_no_more(int readings, int tryOns, bool good)
    {
        var body = JsonSerializer.SerializeToUtf8Bytes(new
        {
            readings = Enumerable.Repeat(new { foot = "left", trait = "length", value = 240, unit = "mm" }, readings),
            tryOns = Enumerable.Repeat(new { sku = "A1", fits = true }, tryOns),
        });

        Assert.Equal(good, new ShortlistRequestReader(Terms, Today).Read(body, new RequestProblems()) is not null);
    }

    [Fact]
    public void A_body_wrong_throughout_gets_a_list_that_ends()
    {
        var body = $"[{string.Join(',', Enumerable.Repeat("1", 150))}]";

        Assert.Equal(RequestProblems.MostTold, Bad(Encoding.UTF8.GetBytes($$"""{"readings":{{body}}}""")).Values.Sum(sentences => sentences.Length));
    }

    private static ShortlistAsked Good(string body)
    {
        var problems = new RequestProblems();
        var asked = new ShortlistRequestReader(Terms, Today).Read(Encoding.UTF8.GetBytes(body), problems);
        Assert.Empty(problems.ToDictionary());
        Assert.NotNull(asked);
        return asked;
    }

    private static IDictionary<string, string[]> Bad(byte[] body)
    {
        var problems = new RequestProblems();
        Assert.Null(new ShortlistRequestReader(Terms, Today).Read(body, problems));
        return problems.ToDictionary();
    }
}
