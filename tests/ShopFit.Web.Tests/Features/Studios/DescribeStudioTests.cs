using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Studios;

public sealed class DescribeStudioTests : IAsyncLifetime
{
    private TestShop _shop = null!;
    private Guid _studioId;
    private Guid _asked;
    private Guid _unwanted;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        var maker = await _shop.HasAsync(Maker.Of(Guid.CreateVersion7(), _shop.ShopId, "Oriel"));
        _asked = (await _shop.HasAsync(ShoeModel.Of(Guid.CreateVersion7(), _shop.ShopId, maker.Id, "Wren", "pointe"))).Id;
        _unwanted = (await _shop.HasAsync(ShoeModel.Of(Guid.CreateVersion7(), _shop.ShopId, maker.Id, "Finch", "pointe"))).Id;
        _studioId = Assert.IsType<AddStudioOutcome.Added>(await AddAsync("Larch")).StudioId;
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task What_the_teacher_asks_for_reaches_the_fittings_of_her_dancers()
    {
        Assert.IsType<DescribeStudioOutcome.Kept>(await DescribeAsync(1, [_asked], [_unwanted]));
        var dancer = Dancer.Of(Guid.CreateVersion7(), _shop.ShopId, "Tilly Fernsby");
        dancer.DancesAt(_studioId);
        await _shop.HasAsync(dancer);
        var fitting = await _shop.HasAsync(FittingRecord.Of(Guid.CreateVersion7(), _shop.Fitter, dancer.Id, "pointe", _shop.Clock.GetUtcNow(), 13, null));

        var seen = (await new FittingQueries(_shop.Reads).SeeAsync(fitting.Id, TestContext.Current.CancellationToken))!;

        Assert.Equal("Larch", seen.Studio);
        Assert.Equal("pale pink · stitched ribbon", seen.Asked.Words);
        Assert.Equal([_asked], seen.Asked.AskedModelIds);
        Assert.Equal([_unwanted], seen.Asked.UnwantedModelIds);
        Assert.Equal(["Odette Marrable", "Ines Larkin"], seen.Arrival.TeachersOfStudio);
    }

    [Fact]
    public async Task A_model_is_asked_for_or_not_wanted_but_not_both() =>
        Assert.Equal(StudioProblem.NoSuchModel, Assert.IsType<DescribeStudioOutcome.Invalid>(await DescribeAsync(1, [_asked], [_asked])).Problem);

    [Fact]
    public async Task A_wish_can_be_taken_back()
    {
        await DescribeAsync(1, [_asked], [_unwanted]);
        Assert.IsType<DescribeStudioOutcome.Kept>(await DescribeAsync(2, [_unwanted], []));

        await using var db = _shop.CreateDbContext();
        var wish = await db.StudioModelWishes.SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal((_unwanted, true), (wish.ModelId, wish.IsAsked));
    }

    [Fact]
    public async Task What_another_tablet_changed_meanwhile_is_not_overwritten()
    {
        await DescribeAsync(1, [], []);

        Assert.IsType<DescribeStudioOutcome.ChangedMeanwhile>(await DescribeAsync(1, [], []));
    }

    [Theory]
    [InlineData("", StudioProblem.NameMissing)]
    [InlineData("LÁRCH", StudioProblem.NameTaken)]
    public async Task A_studio_has_a_name_of_its_own(string name, StudioProblem problem) =>
        Assert.Equal(problem, Assert.IsType<AddStudioOutcome.Invalid>(await AddAsync(name)).Problem);

    private Task<AddStudioOutcome> AddAsync(string name) =>
        new AddStudio(_shop.Writes).RunAsync(_shop.Fitter, Guid.CreateVersion7(), name, TestContext.Current.CancellationToken);

    private Task<DescribeStudioOutcome> DescribeAsync(int version, Guid[] asked, Guid[] unwanted) =>
        new DescribeStudio(_shop.Writes, _shop.Clock).RunAsync(
            _shop.Fitter,
            Guid.CreateVersion7(),
            new DescribeStudioRequest(_studioId, version, "Larch", "Odette Marrable, Ines Larkin", "pale pink", "stitched ribbon", "", asked, unwanted),
            TestContext.Current.CancellationToken);
}
