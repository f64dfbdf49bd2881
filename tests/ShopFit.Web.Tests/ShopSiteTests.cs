using System.Net;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components.Endpoints;
using Microsoft.AspNetCore.Routing;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Support;

namespace ShopFit.Web;

public sealed class ShopSiteTests : IAsyncLifetime
{
    private TestSite _site = null!;
    private HttpClient _browser = null!;

    public async ValueTask InitializeAsync()
    {
        _site = await TestSite.OpenAsync();
        _browser = _site.NewBrowser();
    }

    public ValueTask DisposeAsync()
    {
        _browser.Dispose();
        return _site.DisposeAsync();
    }

    [Fact]
    public void Only_these_pages_and_endpoints_are_open_to_everybody()
    {
        var open =
            from endpoint in _site.Services.GetRequiredService<IEnumerable<EndpointDataSource>>().SelectMany(source => source.Endpoints).OfType<RouteEndpoint>()
            where endpoint.Metadata.GetMetadata<IAllowAnonymous>() is not null
            where endpoint.Metadata.GetMetadata<Microsoft.AspNetCore.StaticAssets.StaticAssetDescriptor>() is null
            select endpoint.RoutePattern.RawText!.TrimStart('/');

        Assert.Subset(
            new HashSet<string>(["sign-in", "sign-out", "first-manager", "error", "healthz", "openapi/{documentName}.json"], StringComparer.Ordinal),
            open.ToHashSet(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Every_other_page_asks_to_sign_in()
    {
        var pages = _site.Services.GetRequiredService<IEnumerable<EndpointDataSource>>()
            .SelectMany(source => source.Endpoints)
            .OfType<RouteEndpoint>()
            .Where(endpoint => endpoint.Metadata.GetMetadata<ComponentTypeMetadata>() is not null && endpoint.Metadata.GetMetadata<IAllowAnonymous>() is null)
            .Select(endpoint => string.Join('/', endpoint.RoutePattern.PathSegments.Select(segment => segment.IsSimple && segment.Parts[0] is Microsoft.AspNetCore.Routing.Patterns.RoutePatternLiteralPart literal
                ? literal.Content
                : Guid.Empty.ToString())))
            .ToList();

        Assert.NotEmpty(pages);
        foreach (var page in pages)
        {
            var answer = await GetAsync($"/{page}");
            Assert.True(answer.StatusCode == HttpStatusCode.Found && answer.Headers.Location!.AbsolutePath == "/sign-in", $"/{page} answered {answer.StatusCode}");
        }
    }

    [Theory]
    [InlineData("/sign-in")]
    [InlineData("/")]
    [InlineData("/nothing-here")]
    [InlineData("/healthz")]
    [InlineData("/theme.js")]
    public async Task Every_answer_carries_the_safe_headers(string address)
    {
        var headers = (await GetAsync(address)).Headers;

        var policy = Assert.Single(headers.GetValues("Content-Security-Policy"));
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-eval", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("same-origin", Assert.Single(headers.GetValues("Referrer-Policy")));
        Assert.False(headers.Contains("Server"));
    }

    [Fact]
    public async Task Pages_are_not_kept_by_the_browser_and_files_are()
    {
        Assert.True((await GetAsync("/sign-in")).Headers.CacheControl!.NoStore);
        Assert.True((await GetAsync("/")).Headers.CacheControl!.NoStore);

        var file = await GetAsync("/theme.js");
        Assert.Equal(HttpStatusCode.OK, file.StatusCode);
        Assert.False(file.Headers.CacheControl!.NoStore);
    }

    [Fact]
    public async Task Pages_hold_no_script_of_their_own()
    {
        var page = await TestSite.SeeAsync(_browser, "/sign-in");

        Assert.All(page.Scripts, script => Assert.NotNull(script.Source));
        Assert.Empty(page.QuerySelectorAll("[onclick], [onsubmit], [onload]"));
    }

    [Fact]
    public async Task Pages_are_sent_small()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/sign-in");
        request.Headers.Add("Accept-Encoding", "br");

        var answer = await _browser.SendAsync(request, TestContext.Current.CancellationToken);

        Assert.Equal("br", Assert.Single(answer.Content.Headers.ContentEncoding));
    }

    [Fact]
    public async Task An_address_that_is_not_there_is_404_for_those_inside()
    {
        using var browser = await _site.SignedInAsync("fitter");

        var answer = await browser.GetAsync(new Uri("/nothing-here", UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Equal("text/html", answer.Content.Headers.ContentType!.MediaType);
    }

    [Fact]
    public async Task A_shop_that_can_serve_is_healthy()
    {
        var answer = await GetAsync("/healthz");

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task A_shop_whose_database_has_another_shape_is_not_healthy()
    {
        await using (var db = _site.Shop.CreateDbContext())
        {
            await db.Database.ExecuteSqlAsync($"DELETE FROM __EFMigrationsHistory", TestContext.Current.CancellationToken);
        }

        Assert.Equal(HttpStatusCode.ServiceUnavailable, (await GetAsync("/healthz")).StatusCode);
    }

    [Fact]
    public async Task A_shop_without_its_database_is_not_healthy()
    {
        SqliteConnection.ClearAllPools();
        File.Delete(_site.Shop.Folder.DatabaseFile);

        Assert.Equal(HttpStatusCode.ServiceUnavailable, (await GetAsync("/healthz")).StatusCode);
        Assert.False(File.Exists(_site.Shop.Folder.DatabaseFile));
    }

    [Fact]
    public async Task A_restart_signs_nobody_out()
    {
        using var browser = await _site.SignedInAsync("fitter");

        await _site.RestartAsync();

        var answer = await browser.GetAsync(new Uri("/", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    private Task<HttpResponseMessage> GetAsync(string address) =>
        _browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
}
