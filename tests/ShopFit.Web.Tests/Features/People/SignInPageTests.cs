using System.Net;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.People;

public sealed class SignInPageTests : IAsyncLifetime
{
    private const string NotTogether = "This name and password do not belong together. Look at both and try again; after five wrong passwords wait 15 minutes.";

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
    public async Task Signing_in_leads_to_the_page_that_was_asked_for()
    {
        var asked = await GetAsync("/dancers?page=2");
        var answer = await SignInAsync(asked.Headers.Location!.PathAndQuery);

        Assert.Equal("/sign-in?returnUrl=%2Fdancers%3Fpage%3D2", asked.Headers.Location.PathAndQuery);
        Assert.Equal("/dancers?page=2", PathOf(answer));
        Assert.Equal(HttpStatusCode.OK, (await GetAsync("/")).StatusCode);
    }

    [Theory]
    [InlineData("https://elsewhere.example/")]
    [InlineData("//elsewhere.example/")]
    [InlineData("/\\elsewhere.example/")]
    [InlineData("\\\\elsewhere.example/")]
    [InlineData("javascript:alert(1)")]
    [InlineData("")]
    public async Task Signing_in_never_leads_to_another_site(string returnUrl)
    {
        var answer = await SignInAsync($"/sign-in?returnUrl={Uri.EscapeDataString(returnUrl)}");

        Assert.Equal("/", PathOf(answer));
    }

    [Theory]
    [InlineData("fitter", "a wrong password")]
    [InlineData("no such name", TestSite.Password)]
    public async Task A_wrong_password_and_an_unknown_name_get_the_same_sentence(string userName, string password)
    {
        var page = await TestSite.ReadAsync(await SignInAsync("/sign-in", userName, password));

        Assert.Equal(NotTogether, page.QuerySelector("[role=alert]")!.TextContent);
        Assert.Equal(userName, page.QuerySelector("#user-name")!.GetAttribute("value"));
        Assert.Null(page.QuerySelector("#password")!.GetAttribute("value"));
        Assert.Equal(HttpStatusCode.Found, (await GetAsync("/")).StatusCode);
    }

    [Fact]
    public async Task Five_wrong_passwords_shut_a_name_out_for_a_quarter_of_an_hour()
    {
        for (var attempt = 0; attempt < 5; attempt++)
        {
            await SignInAsync("/sign-in", "fitter", "a wrong password");
        }

        var page = await TestSite.ReadAsync(await SignInAsync("/sign-in"));

        Assert.Equal(NotTogether, page.QuerySelector("[role=alert]")!.TextContent);
        Assert.Equal(HttpStatusCode.Found, (await GetAsync("/")).StatusCode);
    }

    [Fact]
    public async Task A_name_that_is_shut_out_and_a_name_that_nobody_has_get_the_same_sentence()
    {
        for (var attempt = 0; attempt < 6; attempt++)
        {
            var known = await TestSite.ReadAsync(await SignInAsync("/sign-in", "fitter", "a wrong password"));
            var unknown = await TestSite.ReadAsync(await SignInAsync("/sign-in", "no such name", "a wrong password"));

            Assert.Equal(unknown.QuerySelector("[role=alert]")!.TextContent, known.QuerySelector("[role=alert]")!.TextContent);
        }
    }

    [Fact]
    public async Task The_cookie_is_out_of_reach_of_scripts_and_other_sites()
    {
        var answer = await SignInAsync("/sign-in");

        var cookie = Assert.Single(answer.Headers.GetValues("Set-Cookie"), cookie => cookie.StartsWith("shopfit=", StringComparison.Ordinal));
        Assert.Contains("httponly", cookie, StringComparison.Ordinal);
        Assert.Contains("samesite=lax", cookie, StringComparison.Ordinal);
        Assert.DoesNotContain("expires", cookie, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Signing_out_ends_it()
    {
        await SignInAsync("/sign-in");

        var answer = await TestSite.SendFormAsync(_browser, "/sign-out");

        Assert.Equal("/sign-in", PathOf(answer));
        Assert.Equal(HttpStatusCode.Found, (await GetAsync("/")).StatusCode);
    }

    [Fact]
    public async Task A_form_that_another_site_sends_is_refused()
    {
        await SignInAsync("/sign-in");
        using var forged = new FormUrlEncodedContent([new("_handler", "sign-out")]);

        var answer = await _browser.PostAsync(new Uri("/sign-out", UriKind.Relative), forged, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await GetAsync("/")).StatusCode);
    }

    [Fact]
    public async Task Somebody_shut_out_is_out_within_a_minute()
    {
        await SignInAsync("/sign-in");
        await using (var scope = _site.Services.CreateAsyncScope())
        {
            var people = scope.ServiceProvider.GetRequiredService<UserManager<Person>>();
            await people.UpdateSecurityStampAsync((await people.FindByNameAsync("fitter"))!);
        }

        _site.Shop.Clock.Advance(PeopleFeature.StampInterval + TimeSpan.FromSeconds(1));

        Assert.Equal(HttpStatusCode.Found, (await GetAsync("/")).StatusCode);
        Assert.InRange(PeopleFeature.StampInterval, TimeSpan.FromSeconds(1), TimeSpan.FromMinutes(1));
    }

    [Fact]
    public async Task Somebody_without_a_role_sees_nothing()
    {
        await using (var db = _site.Shop.CreateDbContext())
        {
            await db.UserRoles.ExecuteDeleteAsync(TestContext.Current.CancellationToken);
        }

        await SignInAsync("/sign-in");

        Assert.Equal("/not-permitted", (await GetAsync("/")).Headers.Location!.AbsolutePath);
    }

    [Fact]
    public async Task The_tablet_keeps_its_name_and_hands_it_to_whoever_signs_in()
    {
        await TestSite.SendFormAsync(_browser, "/sign-in", ("Form.UserName", "fitter"), ("Form.Password", TestSite.Password), ("Form.Tablet", " by the window "));
        await TestSite.SendFormAsync(_browser, "/sign-out");

        var page = await TestSite.SeeAsync(_browser, "/sign-in");

        Assert.Equal("by the window", page.QuerySelector("#tablet")!.GetAttribute("value"));
    }

    [Fact]
    public async Task Every_field_has_a_label_of_its_own()
    {
        var page = await TestSite.SeeAsync(_browser, "/sign-in");

        Assert.All(page.QuerySelectorAll("input:not([type=hidden])"), input => Assert.NotNull(page.QuerySelector($"label[for={input.Id}]")));
    }

    [Fact]
    public async Task No_name_and_no_password_reach_the_log()
    {
        await SignInAsync("/sign-in?returnUrl=%2Fdancers%2Fcanary-address", "canary-unknown", "canary-password");
        await SignInAsync("/sign-in", "fitter", "canary-password");
        await SignInAsync("/sign-in");
        await GetAsync("/dancers?name=canary-searched");

        Assert.DoesNotContain(_site.Logs.Lines, line => line.Contains("canary", StringComparison.Ordinal) || line.Contains("fitter", StringComparison.Ordinal));
    }

    private Task<HttpResponseMessage> SignInAsync(string address, string userName = "fitter", string password = TestSite.Password) =>
        TestSite.SendFormAsync(_browser, address, ("Form.UserName", userName), ("Form.Password", password));

    private Task<HttpResponseMessage> GetAsync(string address) =>
        _browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);

    private static string PathOf(HttpResponseMessage answer) =>
        new Uri(new Uri("http://shop.example"), answer.Headers.Location!).PathAndQuery;
}
