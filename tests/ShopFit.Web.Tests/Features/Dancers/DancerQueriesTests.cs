using ShopFit.Web.Features.Studios;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Dancers;

public sealed class DancerQueriesTests : IAsyncLifetime
{
    private TestShop _shop = null!;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        await HasAsync("Tilly Fernsby-Quoin", "Til", "Larch", new(2014, 3, 14));
        await HasAsync("Ottoline Marsh", "", "Larch", null);
        await HasAsync("Bo 100% Swift", "", "Harrow", null);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Theory]
    [InlineData("", 3)]
    [InlineData("larch", 2)]
    [InlineData("LARCH til", 1)]
    [InlineData("quoin", 1)]
    [InlineData("100%", 1)]
    [InlineData("%", 0)]
    [InlineData("_", 0)]
    [InlineData("nobody", 0)]
    public async Task Every_word_of_a_search_must_be_like_one_of_the_dancer(string search, int found) =>
        Assert.Equal(found, (await QueriesOf().FindAsync(search, 50, TestContext.Current.CancellationToken)).Count);

    [Fact]
    public async Task Ages_are_whole_years_by_the_calendar_of_the_shop()
    {
        var rows = await QueriesOf().FindAsync("Tilly", 50, TestContext.Current.CancellationToken);

        Assert.Equal(12, rows.Single().AgeYears);
    }

    [Fact]
    public async Task Another_shop_sees_none_of_them()
    {
        var elsewhere = _shop.Fitter with { ShopId = Guid.CreateVersion7() };
        await using var db = await _shop.ReadsOf(elsewhere).OpenAsync(TestContext.Current.CancellationToken);

        Assert.Empty(db.Dancers);
    }

    private DancerQueries QueriesOf() => new(_shop.Reads, new DancersInMemory(), _shop.Clock);

    private async Task HasAsync(string name, string knownAs, string studio, DateOnly? born)
    {
        var dancer = Dancer.Of(Guid.CreateVersion7(), _shop.ShopId, name);
        dancer.Describe(name, knownAs, born, sex: null, teacher: "");
        await using var db = _shop.CreateDbContext();
        dancer.DancesAt(await StudiosByName.FindOrAddAsync(db, studio, _shop.Clock.GetUtcNow(), TestContext.Current.CancellationToken));
        db.Add(dancer);
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
    }
}
