using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.People;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Catalogue;

public sealed class SetPriceTests : IAsyncLifetime
{
    private TestShop _shop = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        await CatalogueShop.ImportAsync(_shop);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task All_sizes_of_a_model_get_one_price_and_each_goes_back_to_its_own()
    {
        var command = Guid.CreateVersion7();

        Assert.Equal(new SetPriceOutcome.Priced(4), await SetAsync(command, await CatalogueShop.ModelOfAsync(_shop, "W38"), 9900));
        Assert.Equal([null, 9900, 9900, 9900, 9900], await PricesAsync());

        Assert.Equal(new TakeBackPriceOutcome.TakenBack(4), await TakeBackAsync(command));
        Assert.Equal([null, 8950, 8950, 8950, 9150], await PricesAsync());
        Assert.IsType<TakeBackPriceOutcome.NotInForce>(await TakeBackAsync(command));
    }

    [Fact]
    public async Task One_size_is_priced_alone_and_what_it_cost_is_kept()
    {
        await SetAsync(Guid.CreateVersion7(), await CatalogueShop.IdOfAsync(_shop, "R38"), 4500);

        await using var db = _shop.CreateDbContext();
        var change = await db.PriceChanges.SingleAsync(Stop);
        Assert.Equal((null, 4500L, _shop.Manager.PersonId), (change.FromMinor, change.ToMinor, change.PersonId));
        var model = await new ModelQueries(_shop.Reads, new ShoesInMemory()).SeeAsync(await CatalogueShop.ModelOfAsync(_shop, "R38"), Stop);
        Assert.Equal((1, null, 4500L, false), Assert.Single(model!.Prices) is var seen ? (seen.Sizes, seen.FromMinor, seen.ToMinor, seen.Withdrawn) : default);
        Assert.Equal(4500, Assert.Single(model.Sizes).PriceMinor);
    }

    [Fact]
    public async Task A_price_that_was_changed_meanwhile_is_not_taken_back()
    {
        var (first, size) = (Guid.CreateVersion7(), await CatalogueShop.IdOfAsync(_shop, "W38"));
        await SetAsync(first, size, 9900);
        await SetAsync(Guid.CreateVersion7(), size, 9950);

        Assert.IsType<TakeBackPriceOutcome.NotInForce>(await TakeBackAsync(first));
        Assert.Contains(9950, await PricesAsync());
    }

    [Fact]
    public async Task What_no_pair_can_cost_is_refused_and_fitters_set_no_prices()
    {
        var size = await CatalogueShop.IdOfAsync(_shop, "W38");

        Assert.IsType<SetPriceOutcome.OutOfRange>(await SetAsync(Guid.CreateVersion7(), size, -1));
        Assert.IsType<SetPriceOutcome.OutOfRange>(await SetAsync(Guid.CreateVersion7(), size, SetPrice.DearestMinor + 1));
        Assert.IsType<SetPriceOutcome.Gone>(await SetAsync(Guid.CreateVersion7(), Guid.CreateVersion7(), 100));
        Assert.Equal(new SetPriceOutcome.Priced(0), await SetAsync(Guid.CreateVersion7(), size, 8950));
        await Assert.ThrowsAsync<NotPermittedException>(() => new SetPrice(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), size, 100, Stop));
    }

    [Theory]
    [InlineData("62.50", "EUR", 6250)]
    [InlineData("62,5", "GBP", 6250)]
    [InlineData("0.07", "EUR", 7)]
    [InlineData("1.1", "EUR", 110)]
    [InlineData("7500", "JPY", 7500)]
    [InlineData("7.125", "KWD", 7125)]
    public void A_price_is_read_with_the_digits_of_its_currency(string typed, string currency, long minor)
    {
        // Decimals by ISO 4217, list one: two for EUR and GBP, none for JPY, three for KWD.
        Assert.True(TypedPrice.TryRead(typed, currency, out var read));
        Assert.Equal(minor, read);
        Assert.True(TypedPrice.TryRead(TypedPrice.Write(read, currency), currency, out var again));
        Assert.Equal(minor, again);
    }

    [Theory]
    [InlineData("62.505", "EUR")]
    [InlineData("7500.5", "JPY")]
    [InlineData("", "EUR")]
    [InlineData("dear", "EUR")]
    [InlineData("99999999999999999999", "EUR")]
    public void What_is_no_price_in_that_currency_is_not_read(string typed, string currency) =>
        Assert.False(TypedPrice.TryRead(typed, currency, out _));

    [Fact]
    public async Task A_model_says_how_it_is_made_and_whether_it_still_is()
    {
        var model = await CatalogueShop.ModelOfAsync(_shop, "R38");
        var describe = new DescribeModel(_shop.Writes);
        var shoes = new ShoesInMemory();
        var queries = new CatalogueQueries(_shop.Reads, shoes);
        Assert.Single((await queries.ShoesOnFileAsync(Stop)).OfKind("jazz"));

        Assert.IsType<DescribeModelOutcome.Described>(await describe.RunAsync(_shop.Manager, Guid.CreateVersion7(), model, "soft", discontinued: true, Stop));

        var seen = await new ModelQueries(_shop.Reads, shoes).SeeAsync(model, Stop);
        Assert.Equal(("soft", true), (seen!.Construction, seen.Discontinued));
        Assert.Empty((await queries.ShoesOnFileAsync(Stop)).OfKind("jazz"));
        Assert.IsType<DescribeModelOutcome.UnknownConstruction>(await describe.RunAsync(_shop.Manager, Guid.CreateVersion7(), model, "glass", discontinued: false, Stop));
        Assert.IsType<DescribeModelOutcome.Gone>(await describe.RunAsync(_shop.Manager, Guid.CreateVersion7(), Guid.CreateVersion7(), null, discontinued: false, Stop));
        await Assert.ThrowsAsync<NotPermittedException>(() => describe.RunAsync(_shop.Fitter, Guid.CreateVersion7(), model, null, discontinued: false, Stop));
    }

    private async Task<IReadOnlyList<long?>> PricesAsync()
    {
        await using var db = _shop.CreateDbContext();
        return await db.Items.OrderBy(item => item.PriceMinor == null ? 0 : 1).ThenBy(item => item.Code).Select(item => item.PriceMinor).ToListAsync(Stop);
    }

    private Task<SetPriceOutcome> SetAsync(Guid command, Guid modelOrSize, long price) =>
        new SetPrice(_shop.Writes, _shop.Clock).RunAsync(_shop.Manager, command, modelOrSize, price, Stop);

    private Task<TakeBackPriceOutcome> TakeBackAsync(Guid command) =>
        new TakeBackPrice(_shop.Writes, _shop.Clock).RunAsync(_shop.Manager, Guid.CreateVersion7(), command, Stop);
}
