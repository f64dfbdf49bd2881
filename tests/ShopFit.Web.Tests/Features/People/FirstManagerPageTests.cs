using System.Net;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.People;

public sealed class FirstManagerPageTests : IAsyncLifetime
{
    private TestSite _site = null!;
    private HttpClient _browser = null!;

    public async ValueTask InitializeAsync()
    {
        _site = await TestSite.OpenAsync(withPeople: false);
        _browser = _site.NewBrowser();
    }

    public ValueTask DisposeAsync()
    {
        _browser.Dispose();
        return _site.DisposeAsync();
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/sign-in")]
    public async Task While_nobody_is_here_every_page_leads_to_the_first_manager(string address)
    {
        var answer = await GetAsync(address);

        Assert.Equal("/first-manager", answer.Headers.Location!.OriginalString);
    }

    [Fact]
    public async Task The_first_manager_is_made_signed_in_and_led_to_the_shop()
    {
        var answer = await SendAsync();

        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await GetAsync("/")).StatusCode);
        await using var db = _site.Shop.CreateDbContext();
        var person = await db.Users.SingleAsync(TestContext.Current.CancellationToken);
        var role = await db.UserRoles
            .Join(db.Roles, has => has.RoleId, role => role.Id, (has, role) => new { has.UserId, role.Name })
            .SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal(("ines", "Ines", _site.Shop.ShopId), (person.UserName, person.DisplayName, person.ShopId));
        Assert.Equal((person.Id, Roles.Manager), (role.UserId, role.Name!));
    }

    [Fact]
    public async Task A_second_first_manager_is_refused_with_a_sentence()
    {
        await SendAsync();

        var page = await TestSite.SeeAsync(_browser, "/first-manager");

        Assert.Empty(page.Forms);
        Assert.Contains("has a manager already", page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_several_who_set_the_shop_up_at_once_one_becomes_its_manager()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 6).Select(number => Task.Run(async () =>
        {
            await using var scope = _site.Services.CreateAsyncScope();
            return await scope.ServiceProvider.GetRequiredService<MakeFirstManager>()
                .RunAsync(Guid.CreateVersion7(), $"name{number}", "Somebody", TestSite.Password, CancellationToken.None);
        })));

        Assert.Single(outcomes.OfType<FirstManagerOutcome.Made>());
        Assert.Equal(5, outcomes.OfType<FirstManagerOutcome.SomebodyIsHere>().Count());
        await using var db = _site.Shop.CreateDbContext();
        Assert.Equal(1, await db.Users.CountAsync(TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("Form.Password", "elevenchars", "#password-problem", "This password has 11 characters; it needs at least 12.")]
    [InlineData("Form.PasswordAgain", "something else", "#password-again-problem", "The two passwords differ. Type the same one twice.")]
    [InlineData("Form.UserName", " ", "#user-name-problem", "The name to sign in with has 1 to 200 characters.")]
    [InlineData("Form.DisplayName", " ", "#display-name-problem", "Your name has 1 to 200 characters.")]
    public async Task What_is_not_allowed_is_explained_and_nobody_is_made(string field, string value, string place, string sentence)
    {
        var page = await TestSite.ReadAsync(await SendAsync((field, value)));

        Assert.Equal(sentence, page.QuerySelector(place)!.TextContent);
        await using var db = _site.Shop.CreateDbContext();
        Assert.False(await db.Users.AnyAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task No_mixture_of_signs_is_asked_of_a_password()
    {
        var answer = await SendAsync(("Form.Password", "aaaaaaaaaaaa"), ("Form.PasswordAgain", "aaaaaaaaaaaa"));

        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
    }

    private Task<HttpResponseMessage> SendAsync(params (string Name, string Value)[] changes) => TestSite.SendFormAsync(
        _browser,
        "/first-manager",
        [
            ("Form.UserName", "ines"),
            ("Form.DisplayName", "Ines"),
            ("Form.Password", TestSite.Password),
            ("Form.PasswordAgain", TestSite.Password),
            .. changes,
        ]);

    private Task<HttpResponseMessage> GetAsync(string address) =>
        _browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
}
