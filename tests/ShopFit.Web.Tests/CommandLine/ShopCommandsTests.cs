using System.Net;
using System.Net.Sockets;
using Microsoft.Data.Sqlite;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Support;

namespace ShopFit.Web.CommandLine;

[Collection(Alone.Name)]
public sealed class ShopCommandsTests : IDisposable
{
    private const string AnyPort = "http://127.0.0.1:0";

    private readonly string _folder = Directory.CreateTempSubdirectory("shopfit-test-").FullName;

    [Theory]
    [InlineData("--demo", "--help")]
    [InlineData("--urls", "--help")]
    [InlineData("--data", "--help")]
    [InlineData("add-api-key", "--help")]
    [InlineData("http://127.0.0.1:5080", "--help")]
    [InlineData("NAME", "add-api-key", "--help")]
    [InlineData("--data", "add-api-key", "--help")]
    public async Task Help_names_everything_that_can_be_asked(string word, params string[] args)
    {
        var ended = await ShopProgram.RunAsync(args);

        Assert.Equal((0, ""), (ended.Code, ended.Errors));
        Assert.Contains(word, ended.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Serving_prints_the_address_answers_there_and_stops_when_told()
    {
        using var program = ShopProgram.Start("--data", _folder, "--urls", AnyPort);
        var address = await AddressAsync(program);
        using var browser = new HttpClient { BaseAddress = address };

        var health = await browser.GetAsync(new Uri("/healthz", UriKind.Relative), TestContext.Current.CancellationToken);
        var ended = await program.StopAsync();

        Assert.Equal(HttpStatusCode.OK, health.StatusCode);
        Assert.True(address.IsLoopback);
        Assert.Equal((0, ""), (ended.Code, ended.Errors));
        Assert.True(File.Exists(Path.Combine(_folder, "shop.db")));
    }

    [Fact]
    public async Task The_demo_says_how_to_sign_in_and_takes_a_key_made_for_its_folder()
    {
        var key = (await ShopProgram.RunAsync("add-api-key", "till", "--data", _folder)).Output.TrimEnd('\n').Split('\n')[^1];

        using var program = ShopProgram.Start("--demo", "--data", _folder, "--urls", AnyPort);
        var address = await AddressAsync(program);
        var words = (await program.ReadLineAsync()).Split('"');
        using var handler = new HttpClientHandler { AllowAutoRedirect = false };
        using var browser = new HttpClient(handler) { BaseAddress = address };
        var asFitter = await TestSite.SendFormAsync(browser, "/sign-in", ("Form.UserName", words[1]), ("Form.Password", words[3]));
        var asManager = await TestSite.SendFormAsync(browser, "/sign-in", ("Form.UserName", words[5]), ("Form.Password", words[7]));
        using var question = new HttpRequestMessage(HttpMethod.Post, "/api/v1/shortlist") { Content = new StringContent("{}", System.Text.Encoding.UTF8, "application/json") };
        question.Headers.Add("X-Api-Key", key);
        var answer = await browser.SendAsync(question, TestContext.Current.CancellationToken);
        await program.StopAsync();

        Assert.Equal((HttpStatusCode.Found, HttpStatusCode.Found), (asFitter.StatusCode, asManager.StatusCode));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task The_demo_leaves_a_real_shop_alone()
    {
        var catalogue = Path.Combine(_folder, "catalogue.csv");
        await File.WriteAllTextAsync(catalogue, "sku,maker,model,kind,sizeSystem,size\nA1,Aldergate,Wren,pointe,eu,38\n", TestContext.Current.CancellationToken);
        Assert.Equal(0, (await ShopProgram.RunAsync("import-catalogue", catalogue, "--data", _folder)).Code);
        var real = await File.ReadAllBytesAsync(Path.Combine(_folder, "shop.db"), TestContext.Current.CancellationToken);

        var ended = await ShopProgram.RunAsync("--demo", "--data", _folder, "--urls", AnyPort);

        AssertOneLine($"\"{_folder}\" holds a real shop. The demo needs a folder of its own: leave out --data, or name another.", ended);
        Assert.Equal(real, await File.ReadAllBytesAsync(Path.Combine(_folder, "shop.db"), TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_demo_that_is_there_is_kept()
    {
        await ServeDemoAsync();
        await MarkAsync(Path.Combine(_folder, "shop.db"));

        await ServeDemoAsync();

        Assert.True(await IsMarkedAsync(Path.Combine(_folder, "shop.db")));
    }

    [Theory]
    [InlineData("this is no database at all, though it is long enough to be taken for one by somebody in a hurry")]
    [InlineData(null)]
    public async Task A_demo_that_cannot_be_opened_any_more_is_made_afresh(string? content)
    {
        var file = Path.Combine(_folder, "shop.db");
        await File.WriteAllTextAsync(new ShopFolder(_folder).DemoMark, "", TestContext.Current.CancellationToken);
        if (content is null)
        {
            await MarkAsync(file, table: "Shops");
        }
        else
        {
            await File.WriteAllTextAsync(file, content, TestContext.Current.CancellationToken);
        }

        await ServeDemoAsync();

        Assert.True(await ShopDatabase.IsReadyAsync(new ShopFolder(_folder, IsDemo: true), TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_key_is_printed_once_alone_on_the_last_line()
    {
        var added = await ShopProgram.RunAsync("add-api-key", "till", "--data", _folder);
        var again = await ShopProgram.RunAsync("add-api-key", "till", "--data", _folder);

        var key = added.Output.TrimEnd('\n').Split('\n')[^1];
        Assert.Equal((0, ""), (added.Code, added.Errors));
        Assert.Matches("^[A-Za-z0-9_-]{43}$", key);
        await using var db = new ShopDbContext(ShopDatabase.Options<ShopDbContext>(Path.Combine(_folder, "shop.db")));
        db.ShopId = db.Shops.Single().Id;
        Assert.Equal(ApiKeyScheme.HashOf(key), db.ApiKeys.Single().KeyHash);
        AssertOneLine("There is a key called \"till\" already. Choose another name.", again);
    }

    [Fact]
    public async Task A_port_in_use_is_said_in_one_line()
    {
        using var other = new TcpListener(IPAddress.Loopback, 0);
        other.Start();

        var ended = await ShopProgram.RunAsync("--data", _folder, "--urls", $"http://{other.LocalEndpoint}");

        AssertOneLine("That address is in use already: another program listens there. Choose another with --urls.", ended);
    }

    [Theory]
    [InlineData("nonsense")]
    [InlineData("127.0.0.1:5080")]
    [InlineData("")]
    public async Task An_address_that_is_none_is_said_in_one_line(string urls)
    {
        var ended = await ShopProgram.RunAsync("--data", _folder, "--urls", urls);

        AssertOneLine($"\"{urls}\" is no address to listen on. One looks like http://127.0.0.1:5080.", ended);
    }

    [Fact]
    public async Task A_folder_that_cannot_be_one_is_said_in_one_line()
    {
        var file = Path.Combine(_folder, "a file");
        await File.WriteAllTextAsync(file, "", TestContext.Current.CancellationToken);

        AssertOneLine("The file or folder cannot be used:", await ShopProgram.RunAsync("--data", file, "--urls", AnyPort));
        AssertOneLine("The file or folder cannot be used:", await ShopProgram.RunAsync("add-api-key", "till", "--data", Path.Combine(file, "below")));
    }

    [Fact]
    public async Task A_damaged_database_is_said_in_one_line_and_left_alone()
    {
        var file = Path.Combine(_folder, "shop.db");
        var content = string.Concat(Enumerable.Repeat("not a database ", 100));
        await File.WriteAllTextAsync(file, content, TestContext.Current.CancellationToken);

        var ended = await ShopProgram.RunAsync("--data", _folder, "--urls", AnyPort);

        AssertOneLine("The database file is damaged or is no database.", ended);
        Assert.Equal(content, await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_database_that_another_program_holds_is_said_in_one_line()
    {
        await ShopProgram.RunAsync("add-api-key", "till", "--data", _folder);
        await using var other = new SqliteConnection($"Data Source={Path.Combine(_folder, "shop.db")};Pooling=False");
        await other.OpenAsync(TestContext.Current.CancellationToken);
        await using var hold = other.CreateCommand();
        hold.CommandText = "BEGIN IMMEDIATE;";
        await hold.ExecuteNonQueryAsync(TestContext.Current.CancellationToken);

        var ended = await ShopProgram.RunAsync("add-api-key", "second", "--data", _folder);

        AssertOneLine("Another program holds the database. Close it and try again.", ended);
    }

    [Theory]
    [InlineData("--nonsense")]
    [InlineData("nonsense")]
    [InlineData("add-api-key")]
    [InlineData("--data")]
    public async Task What_is_not_understood_is_said_in_one_line(string argument)
    {
        var ended = await ShopProgram.RunAsync(argument);

        AssertOneLine("", ended);
        Assert.EndsWith("Try --help.\n", ended.Errors, StringComparison.Ordinal);
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }

    private static void AssertOneLine(string beginning, ShopProgram.Ended ended)
    {
        Assert.Equal((1, ""), (ended.Code, ended.Output));
        Assert.StartsWith(beginning, ended.Errors, StringComparison.Ordinal);
        Assert.Equal(1, ended.Errors.Count(sign => sign == '\n'));
    }

    private static async Task<Uri> AddressAsync(ShopProgram program)
    {
        const string before = "The shop is open at ";
        var line = await program.ReadLineAsync();
        Assert.StartsWith(before, line, StringComparison.Ordinal);
        return new Uri(line[before.Length..]);
    }

    private async Task ServeDemoAsync()
    {
        using var program = ShopProgram.Start("--demo", "--data", _folder, "--urls", AnyPort);
        await AddressAsync(program);
        Assert.Equal(0, (await program.StopAsync()).Code);
    }

    private static async Task MarkAsync(string file, string table = "Mark") => await ExecuteAsync(file, $"CREATE TABLE {table} (Word TEXT);");

    private static async Task<bool> IsMarkedAsync(string file) => await ExecuteAsync(file, "SELECT COUNT(*) FROM sqlite_master WHERE name = 'Mark';") is 1L;

    private static async Task<object?> ExecuteAsync(string file, string sql)
    {
        await using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        await connection.OpenAsync(TestContext.Current.CancellationToken);
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        return await command.ExecuteScalarAsync(TestContext.Current.CancellationToken);
    }
}
