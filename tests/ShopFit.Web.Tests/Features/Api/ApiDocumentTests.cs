using System.Net;
using System.Text.Json.Nodes;
using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Features.Api;

public sealed class ApiDocumentTests(ApiSite site) : IClassFixture<ApiSite>
{
    [Fact]
    public async Task Everybody_may_read_what_can_be_asked()
    {
        var document = await ReadAsync();

        var question = document["paths"]!["/api/v1/shortlist"]!["post"]!;
        Assert.Equal(["/api/v1/shortlist", "/api/v1/next-pair"], document["paths"]!.AsObject().Select(path => path.Key));
        Assert.NotNull(document["paths"]!["/api/v1/next-pair"]!["post"]!["requestBody"]!["content"]!["application/json"]);
        Assert.NotNull(question["requestBody"]!["content"]!["application/json"]);
        Assert.Equal(["200", "400", "401", "413", "415", "429"], question["responses"]!.AsObject().Select(response => response.Key));
        Assert.NotNull(question["responses"]!["400"]!["content"]!["application/problem+json"]);
        Assert.Equal("X-Api-Key", document["components"]!["securitySchemes"]!["ApiKey"]!["name"]!.GetValue<string>());
        Assert.NotEmpty(document["security"]!.AsArray());
    }

    [Fact]
    public async Task It_names_the_ranges_and_ids_that_the_reader_allows()
    {
        var schemas = (await ReadAsync())["components"]!["schemas"]!;

        var request = schemas["ShortlistRequest"]!;
        var reading = request["properties"]!["readings"]!["items"]!;
        Assert.False(request["additionalProperties"]!.GetValue<bool>());
        Assert.Equal(("integer", 1, 100, 10), (
            request["properties"]!["limit"]!["type"]!.GetValue<string>(),
            request["properties"]!["limit"]!["minimum"]!.GetValue<int>(),
            request["properties"]!["limit"]!["maximum"]!.GetValue<int>(),
            request["properties"]!["limit"]!["default"]!.GetValue<int>()));
        Assert.Equal(200, request["properties"]!["readings"]!["maxItems"]!.GetValue<int>());
        Assert.Equal("date", request["properties"]!["asOf"]!["format"]!.GetValue<string>());
        Assert.Null(request["required"]);
        Assert.Equal(["foot", "trait", "unit", "value"], reading["required"]!.AsArray().Select(name => name!.GetValue<string>()).Order(StringComparer.Ordinal));
        Assert.Equal(Traits.All.Select(row => row.Id), reading["properties"]!["trait"]!["enum"]!.AsArray().Select(id => id!.GetValue<string>()));
        Assert.Equal("number", reading["properties"]!["value"]!["type"]!.GetValue<string>());
        Assert.Contains("toe-line", schemas["AnsweredCriterion"]!["properties"]!["criterion"]!["enum"]!.AsArray().Select(id => id!.GetValue<string>()));
    }

    private async Task<JsonNode> ReadAsync()
    {
        var response = await site.GetAsync("/openapi/v1.json");
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return JsonNode.Parse(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))!;
    }
}
