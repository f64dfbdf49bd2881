using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Dancers;

public sealed class RecordConsentTests : IAsyncLifetime
{
    private TestShop _shop = null!;
    private Dancer _dancer = null!;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        _dancer = await _shop.HasAsync(Dancer.Of(Guid.CreateVersion7(), _shop.ShopId, "Tilly Fernsby"));
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task A_yes_is_kept_with_whoever_gave_it()
    {
        Assert.IsType<RecordConsentOutcome.Recorded>(await RecordAsync(new string('n', 200), new string('c', 200)));

        await using var db = _shop.CreateDbContext();
        Assert.Equal(_dancer.Id, (await db.Consents.SingleAsync(TestContext.Current.CancellationToken)).DancerId);
        Assert.Equal(200, (await db.Guardians.SingleAsync(TestContext.Current.CancellationToken)).Name.Length);
    }

    [Theory]
    [InlineData(201, 0)]
    [InlineData(1, 10_000)]
    public async Task What_the_file_cannot_hold_is_refused_and_changes_nothing(int name, int contact)
    {
        Assert.IsType<RecordConsentOutcome.TooLong>(await RecordAsync(new string('n', name), new string('c', contact)));

        await using var db = _shop.CreateDbContext();
        Assert.False(await db.Guardians.AnyAsync(TestContext.Current.CancellationToken) || await db.Consents.AnyAsync(TestContext.Current.CancellationToken));
    }

    private Task<RecordConsentOutcome> RecordAsync(string guardianName, string guardianContact) =>
        new RecordConsent(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), _dancer.Id, guardianName, guardianContact, TestContext.Current.CancellationToken);
}
