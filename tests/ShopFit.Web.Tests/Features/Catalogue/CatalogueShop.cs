using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>A small catalogue: a maker whose words say nothing yet, and one who gives data.</summary>
internal static class CatalogueShop
{
    public const string File = """
        sku,maker,model,kind,sizeSystem,size,width,option,shankName,lengthMm,formSource,priceMinor,currency,gtin,onHand
        W37,Aldergate,Wren,pointe,eu,37,slender,,reed,,,8950,EUR,,0
        W38,Aldergate,Wren,pointe,eu,38,slender,,reed,,,8950,EUR,6291041500213,2
        W38B,Aldergate,Wren,pointe,eu,38,wide,,oak,,,8950,EUR,,1
        W39,Aldergate,Wren,pointe,eu,39,slender,,reed,,,9150,EUR,,0
        R38,Brackwater,Robin,jazz,eu,38,,,,240,maker,,,,0
        """;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public static async Task<ImportOutcome> ImportAsync(TestShop shop, string text = File)
    {
        var file = CatalogueFileReader.Read(Encoding.UTF8.GetBytes(text), new CatalogueRules("EUR", ["pointe", "jazz"]));
        return await new ImportCatalogue(shop.Writes, shop.Clock).RunAsync(shop.Manager, Guid.CreateVersion7(), file, skipBad: false, Stop);
    }

    public static async Task<Guid> IdOfAsync(TestShop shop, string code)
    {
        await using var db = shop.CreateDbContext();
        return await db.Items.Where(item => item.Code == code).Select(item => item.Id).SingleAsync(Stop);
    }

    public static async Task<Guid> ModelOfAsync(TestShop shop, string code)
    {
        await using var db = shop.CreateDbContext();
        var id = await IdOfAsync(shop, code);
        return await db.ShoeSizes.Where(size => size.Id == id).Select(size => size.ModelId).SingleAsync(Stop);
    }

    public static async Task<Guid> MakerAsync(TestShop shop, string name)
    {
        await using var db = shop.CreateDbContext();
        return await db.Makers.Where(maker => maker.Name == name).Select(maker => maker.Id).SingleAsync(Stop);
    }

    /// <summary>The form of a size as the shortlist sees it.</summary>
    public static async Task<ShoeForm> FormAsync(TestShop shop, ShoesInMemory shoes, string code) =>
        (await new CatalogueQueries(shop.Reads, shoes).ShoesOnFileAsync(Stop)).Find(code)!.OnFile.Form;
}
