using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.People;

public sealed class ApiKeySchemeTests : IAsyncLifetime
{
    private const string Address = "/api/who";

    private TestSite _site = null!;
    private string _key = null!;

    public async ValueTask InitializeAsync()
    {
        _site = await TestSite.OpenAsync(map: app => app
            .MapGet(Address, async (CurrentActor actor) => await actor.GetAsync())
            .RequireAuthorization(ApiKeyScheme.Name));
        var outcome = await AddAsync("till");
        _key = Assert.IsType<AddApiKeyOutcome.Added>(outcome).Key!;
    }

    public ValueTask DisposeAsync() => _site.DisposeAsync();

    [Fact]
    public async Task A_key_opens_the_interface_for_its_shop()
    {
        var answer = await AskAsync(_site.NewBrowser(), _key);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains(_site.Shop.ShopId.ToString(), await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("not a key")]
    public async Task Without_a_known_key_the_answer_is_401_and_no_page(string? key)
    {
        var answer = await AskAsync(_site.NewBrowser(), key);

        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        Assert.Null(answer.Headers.Location);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
    }

    [Fact]
    public async Task A_person_who_has_signed_in_has_no_key()
    {
        var answer = await AskAsync(await _site.SignedInAsync("manager"), key: null);

        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
    }

    [Fact]
    public async Task A_key_opens_no_page()
    {
        using var browser = _site.NewBrowser();
        browser.DefaultRequestHeaders.Add(ApiKeyScheme.Header, _key);

        var answer = await browser.GetAsync(new Uri("/", UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
    }

    [Fact]
    public async Task A_revoked_key_opens_nothing()
    {
        await using (var db = _site.Shop.CreateDbContext())
        {
            (await db.ApiKeys.SingleAsync(TestContext.Current.CancellationToken)).Revoke(_site.Shop.Clock.GetUtcNow());
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        Assert.Equal(HttpStatusCode.Unauthorized, (await AskAsync(_site.NewBrowser(), _key)).StatusCode);
    }

    [Fact]
    public async Task The_key_itself_is_kept_nowhere()
    {
        await using var db = _site.Shop.CreateDbContext();
        var kept = await db.ApiKeys.SingleAsync(TestContext.Current.CancellationToken);
        var command = await db.Commands.SingleAsync(command => command.Action == nameof(AddApiKey), TestContext.Current.CancellationToken);

        Assert.Equal(ApiKeyScheme.HashOf(_key), kept.KeyHash);
        Assert.DoesNotContain(_key, command.OutcomeJson, StringComparison.Ordinal);
        Assert.Equal(43, _key.Length);
    }

    [Fact]
    public async Task Two_keys_cannot_share_a_name()
    {
        Assert.IsType<AddApiKeyOutcome.NameTaken>(await AddAsync(" till "));
        Assert.IsType<AddApiKeyOutcome.NameNotAllowed>(await AddAsync(" "));
    }

    private async Task<AddApiKeyOutcome> AddAsync(string name)
    {
        await using var scope = _site.Services.CreateAsyncScope();
        return await scope.ServiceProvider.GetRequiredService<AddApiKey>()
            .RunAsync(Actor.CommandLine(_site.Shop.ShopId), Guid.CreateVersion7(), name, TestContext.Current.CancellationToken);
    }

    private static async Task<HttpResponseMessage> AskAsync(HttpClient browser, string? key)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, Address);
        if (key is not null)
        {
            request.Headers.TryAddWithoutValidation(ApiKeyScheme.Header, key);
        }

        return await browser.SendAsync(request, TestContext.Current.CancellationToken);
    }
}
