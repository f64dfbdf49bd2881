using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ShopFit.Web.Features.Fittings;

namespace ShopFit.Web.Features.Api;

public sealed class FitEndpointsTests(ApiSite site) : IClassFixture<ApiSite>
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_question_is_answered_and_the_same_question_the_same_way()
    {
        var key = await site.KeyAsync();

        var first = await site.AskAsync(key, MalformedBodies.Good);
        var text = await first.Content.ReadAsByteArrayAsync(Stop);
        var second = await (await site.AskAsync(key, MalformedBodies.Good)).Content.ReadAsByteArrayAsync(Stop);

        Assert.Equal(HttpStatusCode.OK, first.StatusCode);
        Assert.Equal("application/json; charset=utf-8", first.Content.Headers.ContentType!.ToString());
        Assert.Equal(text, second);
        var answer = JsonSerializer.Deserialize<ShortlistResponse>(text, JsonSerializerOptions.Web)!;
        Assert.Equal(3, answer.Pairs.Count);
        Assert.Equal(answer.Pairs.OrderByDescending(pair => pair.ChanceOfFit).Select(pair => pair.Sku), answer.Pairs.Select(pair => pair.Sku));
        Assert.All(answer.Pairs, pair => Assert.Equal(18, pair.Criteria.Count));
        Assert.All(answer.Pairs, pair => Assert.EndsWith(".", pair.Reason, StringComparison.Ordinal));
        Assert.Contains(answer.Notices, notice => notice.Code == ShortlistNotices.FirstPair);
    }

    [Fact]
    public async Task From_the_shelf_only_what_stands_there_is_answered()
    {
        var answer = await AnswerAsync("""{"readings":[{"foot":"left","trait":"length","value":238,"unit":"mm"}],"limit":100}""");

        Assert.Equal(100, answer.Pairs.Count);
        Assert.All(answer.Pairs, pair => Assert.True(pair.OnShelf));
        Assert.Equal(["age-unknown", "sex-unknown"], answer.Notices.Select(notice => notice.Code).Where(code => code.EndsWith("unknown", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Nothing_read_is_valid_and_said() =>
        Assert.Contains((await AnswerAsync("{}")).Notices, notice => notice.Code == ShortlistNotices.NothingRead);

    [Fact]
    public async Task Feet_that_no_pair_on_the_shelf_fits_are_told_of_an_order()
    {
        var answer = await AnswerAsync("""{"readings":[{"foot":"left","trait":"length","value":330,"unit":"mm"},{"foot":"right","trait":"length","value":330,"unit":"mm"}]}""");

        Assert.InRange(answer.ChanceOnShelf, 0, 0.1);
        Assert.Contains(answer.Notices, notice => notice.Code == ShortlistNotices.FewOnShelf);
    }

    // Weiss, Rist and Grossman 2009: not before the age of 12.
    [Theory]
    [InlineData("2014-03-15", "pointe", true)]
    [InlineData("2014-03-14", "pointe", false)]
    [InlineData("2014-03-15", "jazz", false)]
    public async Task Under_twelve_no_pointe_shoe_is_proposed(string birthDate, string kind, bool later)
    {
        var answer = await AnswerAsync($$"""{"dancer":{"birthDate":"{{birthDate}}"},"kind":"{{kind}}","asOf":"2026-03-14"}""");

        Assert.Equal(later, answer.Pairs.Count == 0);
        Assert.Equal(later, answer.Notices.Any(notice => notice.Code == ShortlistNotices.ForLater));
    }

    [Fact]
    public async Task The_next_pair_was_not_tried_yet_and_says_how_it_differs_from_the_last()
    {
        const string Question = """{"readings":[{"foot":"left","trait":"length","value":238,"unit":"mm"},{"foot":"right","trait":"length","value":238,"unit":"mm"}],"limit":5@}""";
        var first = (await AnswerAsync(Question.Replace("@", "", StringComparison.Ordinal), FitEndpoints.NextPairPath)).Pairs[0].Sku;
        var tried = $$""","tryOns":[{"sku":"{{first}}","fits":false,"answers":[{"foot":"left","check":"toes-flat","answer":2},{"foot":"right","check":"toes-flat","answer":2,"by":"dancer"}],"pads":[{"foot":"left","pad":"heel-cushion"}]}]""";

        var next = await AnswerAsync(Question.Replace("@", tried, StringComparison.Ordinal), FitEndpoints.NextPairPath);

        Assert.DoesNotContain(first, next.Pairs.Select(pair => pair.Sku));
        Assert.Contains("the last one was long", next.Pairs[0].Reason, StringComparison.Ordinal);
        Assert.Equal(next.Pairs.OrderByDescending(pair => pair.ChanceOfFit).Select(pair => pair.Sku), next.Pairs.Select(pair => pair.Sku));
    }

    [Theory]
    [InlineData("""{"tryOns":[{"sku":"@","answers":[{"foot":"left","check":"wiggle","answer":1}]}]}""", "/tryOns/0/answers/0/check")]
    [InlineData("""{"tryOns":[{"sku":"@","answers":[{"foot":"left","check":"arch","answer":3}]}]}""", "/tryOns/0/answers/0/answer")]
    [InlineData("""{"tryOns":[{"sku":"not-on-file","fits":false}]}""", "/tryOns/0/sku")]
    [InlineData("""{"tryOns":[{"sku":"@","pads":[{"foot":"left","pad":"cork"}]}]}""", "/tryOns/0/pads/0/pad")]
    public async Task The_next_pair_is_not_answered_where_a_try_on_makes_no_sense(string body, string place)
    {
        var sku = (await AnswerAsync("{}")).Pairs[0].Sku;

        var response = await site.AskAsync(await site.KeyAsync(), body.Replace("@", sku, StringComparison.Ordinal), FitEndpoints.NextPairPath);

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        var problem = JsonNode.Parse(await response.Content.ReadAsStringAsync(Stop))!;
        Assert.Contains(place, problem["errors"]!.AsObject().Select(error => error.Key));
    }

    [Fact]
    public async Task Without_a_key_no_next_pair_is_answered()
    {
        Assert.Equal(HttpStatusCode.Unauthorized, (await site.AskAsync(null, "{}", FitEndpoints.NextPairPath)).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await site.AskAsync("wrong", "{}", FitEndpoints.NextPairPath)).StatusCode);
    }

    // A pad is proposed only where its purpose is asked about: none over the toes of a soft shoe.
    [Fact]
    public async Task Pads_of_a_box_are_not_counted_where_there_is_none()
    {
        var answer = await AnswerAsync("""{"kind":"soft","readings":[{"foot":"left","trait":"length","value":238,"unit":"mm"}],"limit":100}""");

        Assert.DoesNotContain(answer.Pairs.SelectMany(pair => pair.Pads), pad => pad.Pad is "toe-cap" or "toe-cushion" or "loose-wool" or "second-toe-hollow");
    }

    [Fact]
    public async Task What_was_tried_changes_the_answer()
    {
        const string Question = """{"readings":[{"foot":"left","trait":"length","value":238,"unit":"mm"}],"from":"catalogue","limit":1@}""";
        var before = await AnswerAsync(Question.Replace("@", "", StringComparison.Ordinal));
        var sku = before.Pairs[0].Sku;

        var after = await AnswerAsync(Question.Replace("@", $$""","tryOns":[{"sku":"{{sku}}","fits":false}]""", StringComparison.Ordinal));

        Assert.NotEqual(sku, after.Pairs[0].Sku);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("not-a-key")]
    public async Task Without_a_known_key_nothing_is_answered(string? key)
    {
        var response = await site.AskAsync(key, "{}");

        Assert.Equal(HttpStatusCode.Unauthorized, response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType!.MediaType);
        Assert.Null(response.Headers.Location);
        Assert.Equal("ApiKey", Assert.Single(response.Headers.WwwAuthenticate).Scheme);
        Assert.Contains("X-Api-Key", await response.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text/plain", false)]
    [InlineData("application/json; charset=utf-16", false)]
    [InlineData("application/x-www-form-urlencoded", false)]
    [InlineData("", false)]
    [InlineData("application/json; charset=UTF-8", true)]
    public async Task Only_JSON_in_UTF8_is_read(string contentType, bool read)
    {
        var response = await site.AskAsync(await site.KeyAsync(), "{}"u8.ToArray(), contentType);

        Assert.Equal(read ? HttpStatusCode.OK : HttpStatusCode.UnsupportedMediaType, response.StatusCode);
    }

    [Theory]
    [InlineData(64 * 1024, HttpStatusCode.OK)]
    [InlineData((64 * 1024) + 1, HttpStatusCode.RequestEntityTooLarge)]
    public async Task A_body_has_64_KB_at_most(int length, HttpStatusCode status)
    {
        var response = await site.AskAsync(await site.KeyAsync(), "{}".PadRight(length));

        Assert.Equal(status, response.StatusCode);
    }

    [Fact]
    public async Task A_body_that_does_not_say_how_long_it_is_has_64_KB_at_most_too()
    {
        var response = await site.SendAsync(HttpMethod.Post, "/api/v1/shortlist", await site.KeyAsync(), new UnmeasuredContent("{}".PadRight((64 * 1024) + 1)));

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, response.StatusCode);
    }

    // RFC 9110, 15.5.16: an encoding of the content that is not read is told from a content that is wrong.
    [Theory]
    [InlineData("gzip", HttpStatusCode.UnsupportedMediaType)]
    [InlineData("identity", HttpStatusCode.OK)]
    public async Task A_compressed_body_is_not_read(string encoding, HttpStatusCode status)
    {
        using var content = new ByteArrayContent("{}"u8.ToArray());
        content.Headers.ContentType = new("application/json");
        content.Headers.ContentEncoding.Add(encoding);

        var response = await site.SendAsync(HttpMethod.Post, "/api/v1/shortlist", await site.KeyAsync(), content);

        Assert.Equal(status, response.StatusCode);
    }

    [Theory]
    [InlineData("GET")]
    [InlineData("PUT")]
    [InlineData("OPTIONS")]
    public async Task Another_method_is_not_allowed_and_the_allowed_one_is_named(string method)
    {
        var response = await site.SendAsync(new HttpMethod(method), "/api/v1/shortlist", await site.KeyAsync());

        Assert.Equal((HttpStatusCode.MethodNotAllowed, "application/problem+json"), (response.StatusCode, response.Content.Headers.ContentType!.MediaType));
        Assert.Equal(["POST"], response.Content.Headers.Allow);
    }

    [Fact]
    public async Task A_good_key_at_a_wrong_address_is_told_that_the_address_is_wrong()
    {
        var response = await site.SendAsync(HttpMethod.Post, "/api/v2/shortlist", await site.KeyAsync());

        Assert.Equal((HttpStatusCode.NotFound, "application/problem+json"), (response.StatusCode, response.Content.Headers.ContentType!.MediaType));
        Assert.Equal(HttpStatusCode.Unauthorized, (await site.SendAsync(HttpMethod.Post, "/api/v2/shortlist", key: null)).StatusCode);
    }

    [Fact]
    public async Task Errors_stand_under_the_pointer_of_what_they_are_about()
    {
        var response = await site.AskAsync(await site.KeyAsync(), """{"limit":0,"tryOns":[{"sku":"S1","fits":true}],"kind":"jazz"}""");
        var problem = JsonNode.Parse(await response.Content.ReadAsStringAsync(Stop))!;
        var unknown = JsonNode.Parse(await (await site.AskAsync(await site.KeyAsync(), """{"tryOns":[{"sku":"S1","fits":true},{"sku":"none","fits":true}],"kind":"jazz"}""")).Content.ReadAsStringAsync(Stop))!;

        Assert.Equal((HttpStatusCode.BadRequest, "application/problem+json"), (response.StatusCode, response.Content.Headers.ContentType!.MediaType));
        Assert.Contains("a whole number from 1 to 100", problem["errors"]!["/limit"]![0]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Contains("Allowed: pairs of the kind jazz.", unknown["errors"]!["/tryOns/0/sku"]![0]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Contains("No pair with the code \"none\"", unknown["errors"]!["/tryOns/1/sku"]![0]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_thousand_malformed_bodies_are_refused_and_break_nothing()
    {
        var key = await site.KeyAsync();
        var unexpected = new List<string>();
        foreach (var body in MalformedBodies.All(1_000, seed: 20_260_314))
        {
            var response = await site.AskAsync(key, body);
            if (response.StatusCode is not (HttpStatusCode.BadRequest or HttpStatusCode.RequestEntityTooLarge))
            {
                unexpected.Add($"{response.StatusCode}: {Encoding.UTF8.GetString(body)}");
            }
        }

        Assert.Empty(unexpected);
        Assert.Equal(HttpStatusCode.OK, (await site.AskAsync(key, MalformedBodies.Good)).StatusCode);
    }

    [Fact]
    public async Task A_key_that_asks_without_end_is_told_to_wait()
    {
        var key = await site.KeyAsync();
        HttpResponseMessage response = null!;
        for (var asked = 0; asked <= ApiFeature.RequestsAMinute && response?.StatusCode != HttpStatusCode.TooManyRequests; asked++)
        {
            response = await site.AskAsync(key, "[]");
        }

        Assert.Equal((HttpStatusCode.TooManyRequests, "application/problem+json"), (response.StatusCode, response.Content.Headers.ContentType!.MediaType));
        Assert.NotNull(response.Headers.RetryAfter);
        Assert.Equal(HttpStatusCode.OK, (await site.AskAsync(await site.KeyAsync(), "{}")).StatusCode);
    }

    private async Task<ShortlistResponse> AnswerAsync(string body, string path = FitEndpoints.ShortlistPath)
    {
        var response = await site.AskAsync(await site.KeyAsync(), body, path);
        var text = await response.Content.ReadAsStringAsync(Stop);
        Assert.True(response.StatusCode == HttpStatusCode.OK, text);
        return JsonSerializer.Deserialize<ShortlistResponse>(text, JsonSerializerOptions.Web)!;
    }
}
