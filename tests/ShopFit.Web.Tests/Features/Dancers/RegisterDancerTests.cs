using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Dancers;

public sealed class RegisterDancerTests : IAsyncLifetime
{
    // The test shop's clock stands on 14 March 2026.
    private static readonly DateOnly AtTwelve = new(2014, 3, 1);

    private TestShop _shop = null!;

    public async ValueTask InitializeAsync() => _shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task A_grown_dancer_needs_no_more_than_a_name()
    {
        var outcome = await RegisterAsync(new() { Name = "  Ottoline Marsh ", UnderAge = false });

        var registered = Assert.IsType<RegisterDancerOutcome.Registered>(outcome);
        await using var db = _shop.CreateDbContext();
        var dancer = await db.Dancers.SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal((registered.DancerId, "Ottoline Marsh", null), (dancer.Id, dancer.Name, dancer.GuardianId));
    }

    [Fact]
    public async Task A_child_is_kept_with_her_guardian_and_their_yes()
    {
        await RegisterAsync(new() { Name = "Tilly Fernsby", BirthDate = AtTwelve, GuardianName = "Rowan Fernsby", ConsentGiven = true });

        await using var db = _shop.CreateDbContext();
        var guardian = await db.Guardians.SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal("Rowan Fernsby", guardian.Name);
        Assert.Equal(guardian.Id, (await db.Dancers.SingleAsync(TestContext.Current.CancellationToken)).GuardianId);
        var consent = await db.Consents.SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal(("guardian", _shop.Fitter.PersonId, _shop.Clock.GetUtcNow()), (consent.GivenBy, consent.PersonId, consent.GivenAt));
    }

    [Fact]
    public async Task A_child_without_a_guardian_and_a_yes_is_not_kept()
    {
        var outcome = await RegisterAsync(new() { Name = "Tilly Fernsby", BirthDate = AtTwelve });

        Assert.Equal(
            [DancerProblem.GuardianMissing, DancerProblem.ConsentMissing],
            Assert.IsType<RegisterDancerOutcome.Invalid>(outcome).Problems);
        await using var db = _shop.CreateDbContext();
        Assert.False(await db.Dancers.AnyAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Without_a_day_of_birth_it_must_be_said_whether_somebody_answers_for_her()
    {
        Assert.Equal([DancerProblem.AgeNotSaid], Assert.IsType<RegisterDancerOutcome.Invalid>(await RegisterAsync(new() { Name = "Ottoline Marsh" })).Problems);
        Assert.Equal(
            [DancerProblem.GuardianMissing, DancerProblem.ConsentMissing],
            Assert.IsType<RegisterDancerOutcome.Invalid>(await RegisterAsync(new() { Name = "Ottoline Marsh", UnderAge = true })).Problems);
    }

    [Fact]
    public async Task Sisters_share_the_one_who_answers_for_them_and_each_has_a_yes_of_her_own()
    {
        await RegisterAsync(new() { Name = "Tilly Fernsby", BirthDate = AtTwelve, GuardianName = "Rowan Fernsby", GuardianContact = "1", ConsentGiven = true });
        Guid guardianId;
        await using (var db = _shop.CreateDbContext())
        {
            guardianId = (await db.Guardians.SingleAsync(TestContext.Current.CancellationToken)).Id;
        }

        await RegisterAsync(new() { Name = "Bo Fernsby", BirthDate = AtTwelve, GuardianId = guardianId, GuardianName = "Rowan Fernsby", GuardianContact = "2", ConsentGiven = true });

        await using var fresh = _shop.CreateDbContext();
        Assert.Equal("2", (await fresh.Guardians.SingleAsync(TestContext.Current.CancellationToken)).Contact);
        Assert.All(await fresh.Dancers.ToListAsync(TestContext.Current.CancellationToken), dancer => Assert.Equal(guardianId, dancer.GuardianId));
        Assert.Equal(2, await fresh.Consents.CountAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_studio_is_on_file_once_however_it_is_written()
    {
        await RegisterAsync(new() { Name = "Tilly Fernsby", UnderAge = false, Studio = "École Larch" });
        await RegisterAsync(new() { Name = "Bo Fernsby", UnderAge = false, Studio = " ecole  larch" });

        await using var db = _shop.CreateDbContext();
        Assert.Equal("École Larch", (await db.Studios.SingleAsync(TestContext.Current.CancellationToken)).Name);
        Assert.Equal(1, await db.Dancers.Select(dancer => dancer.StudioId).Distinct().CountAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task The_same_button_twice_keeps_her_once()
    {
        var commandId = Guid.CreateVersion7();

        await RegisterAsync(new() { Name = "Ottoline Marsh", UnderAge = false }, commandId);
        await RegisterAsync(new() { Name = "Ottoline Marsh", UnderAge = false }, commandId);

        await using var db = _shop.CreateDbContext();
        Assert.Equal(1, await db.Dancers.CountAsync(TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("2026-03-15", DancerProblem.BornInFuture)]
    [InlineData("1911-01-01", DancerProblem.BornTooLongAgo)]
    public async Task A_slip_in_the_year_of_birth_is_named(string born, DancerProblem problem)
    {
        var outcome = await RegisterAsync(new() { Name = "Ottoline Marsh", BirthDate = DateOnly.ParseExact(born, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture) });

        Assert.Equal([problem], Assert.IsType<RegisterDancerOutcome.Invalid>(outcome).Problems);
    }

    private Task<RegisterDancerOutcome> RegisterAsync(RegisterDancerRequest request, Guid? commandId = null) =>
        new RegisterDancer(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, commandId ?? Guid.CreateVersion7(), request, TestContext.Current.CancellationToken);
}
