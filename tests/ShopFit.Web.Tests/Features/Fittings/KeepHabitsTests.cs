using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Fittings;

public sealed class KeepHabitsTests : IAsyncLifetime
{
    private TestShop _shop = null!;

    public async ValueTask InitializeAsync() => _shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Each_habit_is_kept_by_itself_in_one_row_for_a_person_on_a_tablet()
    {
        Assert.IsType<KeepHabitsOutcome.Kept>(await KeepAsync(new(FacesDancer: true)));
        Assert.IsType<KeepHabitsOutcome.Kept>(await KeepAsync(new(LengthsIn: "eu")));

        await using var db = _shop.CreateDbContext();
        var row = await db.FitterHabits.SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal((_shop.Fitter.PersonId, _shop.Fitter.Tablet, true, "eu"), (row.PersonId, row.Tablet, row.FacesDancer, row.LengthsIn));
    }

    [Fact]
    public async Task Somebody_else_and_another_tablet_have_their_own()
    {
        await KeepAsync(new(FacesDancer: true));

        Assert.Equal(SeenHabits.Usual, await SeeAsync(_shop.Manager));
        Assert.Equal(SeenHabits.Usual, await SeeAsync(_shop.Fitter with { Tablet = "tablet 9" }));
        Assert.Equal(new SeenHabits(true, null), await SeeAsync(_shop.Fitter));
    }

    [Fact]
    public async Task A_unit_that_nobody_reads_in_changes_nothing()
    {
        Assert.IsType<KeepHabitsOutcome.UnknownUnit>(await KeepAsync(new(FacesDancer: true, LengthsIn: "cubits")));

        Assert.Equal(SeenHabits.Usual, await SeeAsync(_shop.Fitter));
    }

    private Task<KeepHabitsOutcome> KeepAsync(KeepHabitsRequest request) =>
        new KeepHabits(_shop.Writes).RunAsync(_shop.Fitter, Guid.CreateVersion7(), request, TestContext.Current.CancellationToken);

    private Task<SeenHabits> SeeAsync(People.Actor actor) =>
        new HabitQueries(_shop.ReadsOf(actor)).SeeAsync(actor, TestContext.Current.CancellationToken);
}
