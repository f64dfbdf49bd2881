using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Settings;

public sealed class ChangeShopTests : IAsyncLifetime
{
    private TestShop _shop = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private ChangeShop Change => new(_shop.Writes, _shop.Clock);

    public async ValueTask InitializeAsync() => _shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task All_of_the_form_is_saved_and_each_change_is_kept_with_who_made_it()
    {
        var seen = await SeeAsync();
        var wanted = seen.Settings with
        {
            Name = " Larch Lane ",
            TimeZone = "Europe/London",
            Currency = "GBP",
            Paper = "Letter",
            ReturnDays = 28,
            Kinds = ["pointe", "soft"],
            TaxRates = new Dictionary<string, int>(StringComparer.Ordinal) { ["shoes"] = 2000, ["ribbon"] = 550 },
        };

        var saved = Assert.IsType<ChangeShopOutcome.Saved>(await RunAsync(seen.Version, wanted));

        var now = await SeeAsync();
        Assert.Equal((saved.Version, 8), (now.Version, saved.Changes));
        Assert.Equal(("Larch Lane", "Europe/London", "GBP", "Letter", 28), (now.Settings.Name, now.Settings.TimeZone, now.Settings.Currency, now.Settings.Paper, now.Settings.ReturnDays));
        Assert.Equal(["pointe", "soft"], now.Settings.Kinds);
        Assert.Equal(wanted.TaxRates, now.Settings.TaxRates);
        await using var db = _shop.CreateDbContext();
        var rows = await db.SettingChanges.ToListAsync(Stop);
        Assert.All(rows, row => Assert.Equal((_shop.Manager.PersonId, _shop.Manager.Tablet, _shop.Clock.GetUtcNow()), (row.PersonId, row.Tablet, row.At)));
        Assert.Contains(rows, row => (row.Path, row.Before, row.After) == ("shop.currency", "EUR", "GBP"));
        Assert.Contains(rows, row => (row.Path, row.Before, row.After) == ("shop.tax.ribbon", null, "5.5"));
    }

    [Fact]
    public async Task The_second_of_two_managers_is_told_and_changes_nothing()
    {
        var first = await SeeAsync();
        var second = await SeeAsync();
        await RunAsync(first.Version, first.Settings with { Name = "The first" });

        Assert.IsType<ChangeShopOutcome.ChangedMeanwhile>(await RunAsync(second.Version, second.Settings with { Name = "The second" }));

        var now = await SeeAsync();
        Assert.Equal("The first", now.Settings.Name);
        Assert.IsType<ChangeShopOutcome.Saved>(await RunAsync(now.Version, now.Settings with { Name = "The second" }));
        Assert.Equal("The second", (await SeeAsync()).Settings.Name);
    }

    [Fact]
    public async Task Two_managers_at_the_same_moment_do_not_both_win()
    {
        var seen = await SeeAsync();

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 6).Select(i => Task.Run(() => RunAsync(seen.Version, seen.Settings with { Name = $"Manager {i}" }))));

        Assert.Single(outcomes.OfType<ChangeShopOutcome.Saved>());
        Assert.Equal(5, outcomes.OfType<ChangeShopOutcome.ChangedMeanwhile>().Count());
    }

    [Fact]
    public async Task Saving_what_stands_there_changes_nothing()
    {
        var seen = await SeeAsync();

        Assert.Equal(new ChangeShopOutcome.Saved(seen.Version, 0), await RunAsync(seen.Version, seen.Settings));

        await using var db = _shop.CreateDbContext();
        Assert.False(await db.SettingChanges.AnyAsync(Stop));
    }

    [Fact]
    public async Task Everything_that_is_wrong_is_told_at_once_and_nothing_is_saved()
    {
        var seen = await SeeAsync();
        var wrong = seen.Settings with
        {
            Name = "  ",
            Address = new string('a', 501),
            Contact = new string('a', 201),
            TimeZone = "Mars/Olympus",
            Currency = "XYZ",
            Paper = "A5",
            Units = "ft",
            SizeSystemShown = "moon",
            ReturnDays = -1,
            Kinds = ["boots"],
            TaxRates = new Dictionary<string, int>(StringComparer.Ordinal) { ["shoes"] = 10_001 },
        };

        var invalid = Assert.IsType<ChangeShopOutcome.Invalid>(await RunAsync(seen.Version, wrong));

        Assert.Equal(Enum.GetValues<ShopField>(), invalid.Problems.Select(problem => problem.Field));
        Assert.Equal(seen.Settings.Name, (await SeeAsync()).Settings.Name);
    }

    [Fact]
    public async Task Once_something_was_sold_the_currency_stays()
    {
        await _shop.HasAsync(Sale.Of(Guid.CreateVersion7(), _shop.Fitter, fittingId: null, dancerId: null, _shop.Clock.GetUtcNow(), "EUR", 0, 0));
        var seen = await SeeAsync();

        var invalid = Assert.IsType<ChangeShopOutcome.Invalid>(await RunAsync(seen.Version, seen.Settings with { Currency = "GBP" }));

        Assert.Equal(new ShopProblem(ShopField.Currency, ShopProblemCode.SalesExist, "EUR"), Assert.Single(invalid.Problems));
        Assert.True(seen.HasSold);
    }

    // ISO 4217: the euro has two decimals, the yen none, the Bahraini dinar three.
    [Theory]
    [InlineData("GBP", true)]
    [InlineData("JPY", false)]
    [InlineData("BHD", false)]
    public async Task Prices_on_file_keep_the_shop_to_currencies_of_as_many_decimals(string currency, bool allowed)
    {
        await _shop.HasAsync(Item.Of(Guid.CreateVersion7(), _shop.ShopId, "R1", "Ribbon", ItemCategories.Ribbon, 450, gtin: null, tracksStock: true, padId: null));
        var seen = await SeeAsync();

        Assert.Equal(allowed, await RunAsync(seen.Version, seen.Settings with { Currency = currency }) is ChangeShopOutcome.Saved);
    }

    [Fact]
    public async Task A_fitter_may_not()
    {
        var seen = await SeeAsync();
        await Assert.ThrowsAsync<NotPermittedException>(() => Change.RunAsync(_shop.Fitter, Guid.CreateVersion7(), seen.Version, seen.Settings, Stop));
    }

    private Task<SeenShop> SeeAsync() => new SettingsQueries(_shop.ReadsOf(_shop.Manager)).ShopAsync(Stop);

    private Task<ChangeShopOutcome> RunAsync(long version, ShopSettings wanted) => Change.RunAsync(_shop.Manager, Guid.CreateVersion7(), version, wanted, Stop);
}
