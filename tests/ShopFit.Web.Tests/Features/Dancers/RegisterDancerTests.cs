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
        var outcome = await RegisterAsync(new() { Name = "  Ottoline Marsh " });

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
    public async Task The_same_button_twice_keeps_her_once()
    {
        var commandId = Guid.CreateVersion7();

        await RegisterAsync(new() { Name = "Ottoline Marsh" }, commandId);
        await RegisterAsync(new() { Name = "Ottoline Marsh" }, commandId);

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
