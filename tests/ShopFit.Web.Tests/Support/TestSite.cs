using System.Net;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Support;

/// <summary>The whole site, served on a free port of this machine from the file of a <see cref="TestShop"/>.</summary>
public sealed class TestSite : IAsyncDisposable
{
    public const string Password = "twelve and more";

    private readonly Action<WebApplication>? _map;
    private WebApplication _app;

    private TestSite(TestShop shop, Action<WebApplication>? map)
    {
        Shop = shop;
        _map = map;
        _app = Build("http://127.0.0.1:0");
    }

    public TestShop Shop { get; }

    /// <summary>All that the site has logged, at the levels it logs at in the shop.</summary>
    public RecordedLogs Logs { get; } = new();

    public IServiceProvider Services => _app.Services;

    /// <summary>Opens the site of an empty shop, with a fitter "fitter" and a manager "manager" unless nobody is wanted.</summary>
    public static async Task<TestSite> OpenAsync(bool withPeople = true, Action<WebApplication>? map = null)
    {
        var site = new TestSite(await TestShop.OpenAsync(), map);
        await site._app.StartAsync();
        if (withPeople)
        {
            await site.HasPersonAsync("fitter", Roles.Fitter);
            await site.HasPersonAsync("manager", Roles.Manager);
        }

        return site;
    }

    /// <summary>Stops the site and starts it again at the same address.</summary>
    public async Task RestartAsync()
    {
        var address = _app.Urls.First();
        await _app.StopAsync();
        await _app.DisposeAsync();
        _app = Build(address);
        await _app.StartAsync();
    }

    /// <summary>Puts somebody into the shop.</summary>
    public async Task<Guid> HasPersonAsync(string userName, string role)
    {
        await using var scope = Services.CreateAsyncScope();
        var newPerson = scope.ServiceProvider.GetRequiredService<NewPerson>();
        return (await Shop.Writes.RunAsync(
            Shop.Manager,
            Guid.CreateVersion7(),
            nameof(HasPersonAsync),
            async (db, cancellationToken) =>
            {
                var id = Guid.CreateVersion7();
                await newPerson.ApplyAsync(db, id, userName, $"{userName} by name", Password, role, cancellationToken);
                return new PersonMade(id);
            },
            CancellationToken.None)).PersonId;
    }

    /// <summary>A browser of its own, which keeps cookies and follows no redirect by itself.</summary>
    public HttpClient NewBrowser()
    {
        var handler = new HttpClientHandler { AllowAutoRedirect = false, CookieContainer = new CookieContainer(), AutomaticDecompression = DecompressionMethods.None };
        return new HttpClient(handler) { BaseAddress = new Uri(_app.Urls.First()) };
    }

    /// <summary>A browser in which somebody has signed in.</summary>
    public async Task<HttpClient> SignedInAsync(string userName)
    {
        var browser = NewBrowser();
        var answer = await SendFormAsync(browser, "/sign-in", ("Form.UserName", userName), ("Form.Password", Password));
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        return browser;
    }

    /// <summary>Opens a page, fills in its form and sends it off.</summary>
    public static async Task<HttpResponseMessage> SendFormAsync(HttpClient browser, string address, params (string Name, string Value)[] typed)
    {
        var form = (await SeeAsync(browser, address)).Forms.Single();
        var fields = form.Elements.OfType<IHtmlInputElement>().ToDictionary(input => input.Name!, input => input.Value);
        foreach (var (name, value) in typed)
        {
            fields[name] = value;
        }

        using var content = new FormUrlEncodedContent(fields);
        return await browser.PostAsync(new Uri(address, UriKind.Relative), content);
    }

    /// <summary>Opens a page that is there.</summary>
    public static async Task<IHtmlDocument> SeeAsync(HttpClient browser, string address)
    {
        var answer = await browser.GetAsync(new Uri(address, UriKind.Relative));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await ReadAsync(answer);
    }

    public static async Task<IHtmlDocument> ReadAsync(HttpResponseMessage answer) =>
        await new HtmlParser().ParseDocumentAsync(await answer.Content.ReadAsStringAsync());

    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
        await Shop.DisposeAsync();
    }

    private WebApplication Build(string address)
    {
        var app = ShopSite.Build(Shop.Folder, address, builder =>
        {
            builder.Services.AddSingleton<TimeProvider>(Shop.Clock);
            builder.Logging.AddProvider(Logs);
        });
        _map?.Invoke(app);
        return app;
    }

    private sealed record PersonMade(Guid PersonId);
}
