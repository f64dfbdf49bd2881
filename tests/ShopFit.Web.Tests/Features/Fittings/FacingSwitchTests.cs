using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class FacingSwitchTests : PageTest
{
    private readonly List<bool> _turned = [];

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddLocalization();
        Services.AddScoped<KeepHabits>();
    }

    [Theory]
    [InlineData(false, "As they stand")]
    [InlineData(true, "As I face them")]
    public void The_way_the_feet_are_turned_is_the_one_key_that_is_pressed(bool facing, string pressed)
    {
        var ways = Open(facing);

        Assert.Equal(pressed, Assert.Single(ways.FindAll("[aria-pressed=true]")).TextContent);
        Assert.Equal("How the drawing is turned", ways.Find("[role=group]").GetAttribute("aria-label"));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Turning_them_is_told_and_kept_for_this_fitter_on_this_tablet(bool faced)
    {
        var ways = Open(faced);

        await ways.InvokeAsync(() => ways.Find("[aria-pressed=false]").Click());

        Assert.Equal([!faced], _turned);
        await using var db = Shop.CreateDbContext();
        var kept = await db.FitterHabits.SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal((Shop.Fitter.PersonId, Shop.Fitter.Tablet, !faced), (kept.PersonId, kept.Tablet, kept.FacesDancer));
    }

    [Fact]
    public async Task A_tap_on_the_way_they_are_turned_already_writes_nothing()
    {
        var ways = Open(facing: true);

        await ways.InvokeAsync(() => ways.Find("[aria-pressed=true]").Click());

        Assert.Empty(_turned);
        await using var db = Shop.CreateDbContext();
        Assert.False(await db.FitterHabits.AnyAsync(TestContext.Current.CancellationToken));
    }

    private IRenderedComponent<FacingSwitch> Open(bool facing) => Render<FacingSwitch>(parameters => parameters
        .Add(it => it.Facing, facing)
        .Add(it => it.FacingChanged, EventCallback.Factory.Create<bool>(this, _turned.Add)));
}
