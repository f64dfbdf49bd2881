using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Support;

namespace ShopFit.Web.CommandLine;

public sealed class ImportCatalogueCommandTests : IAsyncLifetime
{
    private const string Header = "sku,maker,model,kind,sizeSystem,size,onHand\n";
    private const string Good = "A1,Aldergate,Wren,pointe,eu,38,2\n";
    private const string Bad = "A2,Aldergate,Wren,pointe,eu,99,1\n";

    private TestShop _shop = null!;
    private string _file = "";

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        _file = Path.Combine(_shop.Folder.Path, "catalogue.csv");
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Theory]
    [InlineData(Header + Good, "", 0, 1)]
    [InlineData(Header + Good, "--dry-run", 0, 0)]
    [InlineData(Header + Good + Bad, "", 1, 0)]
    [InlineData(Header + Good + Bad, "--dry-run", 1, 0)]
    [InlineData(Header + Good + Bad, "--dry-run --skip-bad", 0, 0)]
    [InlineData(Header + Good + Bad, "--skip-bad", 0, 1)]
    [InlineData(Header + Bad, "--skip-bad", 1, 0)]
    [InlineData("sku;maker\n", "--skip-bad", 1, 0)]
    public async Task The_file_is_taken_as_asked(string text, string options, int exitCode, int items)
    {
        await File.WriteAllTextAsync(_file, text, TestContext.Current.CancellationToken);

        var code = await ShopCommands.RunAsync(["import-catalogue", _file, "--data", _shop.Folder.Path, .. options.Split(' ', StringSplitOptions.RemoveEmptyEntries)]);

        Assert.Equal(exitCode, code);
        await using var db = _shop.CreateDbContext();
        Assert.Equal(items, await db.Items.CountAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_named() =>
        Assert.Equal(1, await ShopCommands.RunAsync(["import-catalogue", _file + "x", "--data", _shop.Folder.Path]));
}
