using System.Globalization;
using System.Net.Http.Headers;
using System.Text;
using Microsoft.AspNetCore.Builder;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Api;

/// <summary>The whole site on a port of its own, with 2,500 sizes on file.</summary>
public sealed class ApiSite : IAsyncLifetime
{
    private readonly HttpClient _client = new();
    private WebApplication _app = null!;

    public TestShop Shop { get; private set; } = null!;

    public Uri Address { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Shop = await TestShop.OpenAsync();
        var rows = new StringBuilder("sku,maker,model,kind,sizeSystem,size,width,widthStep,formSource,lengthMm,onHand\n");
        for (var row = 0; row < 2_500; row++)
        {
            var (size, width) = (33 + (row % 20 * 0.5), (row / 20 % 5) - 2);
            var length = ((size - 2) * 20 / 3) + (row / 100 % 5);
            rows.Append(CultureInfo.InvariantCulture, $"S{row},Maker {row / 500},Model {row / 100},{(row < 2_400 ? "pointe" : "jazz")},eu,{size},w{width},{width},{(row % 3 == 0 ? "label," : $"maker,{length:0.0}")},{row % 4 % 3}\n");
        }

        var file = CatalogueFileReader.Read(Encoding.UTF8.GetBytes(rows.ToString()), new CatalogueRules("EUR", ["pointe", "jazz"]));
        Assert.IsType<ImportOutcome.Imported>(await new ImportCatalogue(Shop.Writes, Shop.Clock)
            .RunAsync(Shop.Manager, Guid.CreateVersion7(), file, skipBad: false, CancellationToken.None));

        _app = ShopSite.Build(Shop.Folder, "http://127.0.0.1:0");
        await _app.StartAsync();
        Address = new Uri(_app.Urls.First());
    }

    /// <summary>A key of its own for each test, since each may ask so often in a minute.</summary>
    public async Task<string> KeyAsync()
    {
        var added = await new AddApiKey(Shop.Writes, Shop.Clock).RunAsync(Shop.Manager, Guid.CreateVersion7(), Guid.CreateVersion7().ToString(), CancellationToken.None);
        return Assert.IsType<AddApiKeyOutcome.Added>(added).Key!;
    }

    public Task<HttpResponseMessage> AskAsync(string? key, string body, string path = FitEndpoints.ShortlistPath) => AskAsync(key, Encoding.UTF8.GetBytes(body), path: path);

    public Task<HttpResponseMessage> AskAsync(string? key, byte[] body, string contentType = "application/json", string path = FitEndpoints.ShortlistPath)
    {
        var content = new ByteArrayContent(body);
        content.Headers.ContentType = contentType.Length == 0 ? null : MediaTypeHeaderValue.Parse(contentType);
        return SendAsync(HttpMethod.Post, path, key, content);
    }

    public Task<HttpResponseMessage> SendAsync(HttpMethod method, string path, string? key, HttpContent? content = null)
    {
        var request = new HttpRequestMessage(method, new Uri(Address, path)) { Content = content };
        if (key is not null)
        {
            request.Headers.Add(ApiKeyScheme.Header, key);
        }

        return _client.SendAsync(request, TestContext.Current.CancellationToken);
    }

    public Task<HttpResponseMessage> GetAsync(string path) => _client.GetAsync(new Uri(Address, path), TestContext.Current.CancellationToken);

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _app.StopAsync();
        await _app.DisposeAsync();
        await Shop.DisposeAsync();
    }
}
