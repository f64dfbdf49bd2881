using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Web.Features.Sales;

namespace ShopFit.Web.Features.Settings;

public sealed class FitNumbersOfClosedFittingsTests
{
    private const string FitsFrom = "score.fits-from.value";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_closed_fitting_keeps_the_hash_of_the_numbers_that_it_was_closed_with()
    {
        await using var selling = await SellingShop.OpenAsync();
        await ChangeAsync(selling, new FitNumberChange(FitsFrom, null, 0.4));
        var request = await selling.RequestAsync("W-38");
        Assert.IsType<SellFittingOutcome.Sold>(await selling.SellAsync(request with { OverruleReason = "She stood best in these." }));
        string then = AdjustableNumbers.Find(FitsFrom)!.Set(FitDefaults.Standard, 0.4).Fingerprint();

        await ChangeAsync(selling, new FitNumberChange(FitsFrom, 0.4, null));

        await using var db = selling.Shop.CreateDbContext();
        Assert.Equal(then, (await db.FittingSnapshots.SingleAsync(Stop)).DefaultsFingerprint);
        Assert.NotEqual(FitDefaults.Standard.Fingerprint(), then);
    }

    private static async Task ChangeAsync(SellingShop selling, FitNumberChange change) =>
        Assert.IsType<ChangeFitNumbersOutcome.Changed>(await new ChangeFitNumbers(selling.Shop.Writes, selling.Shop.Clock)
            .RunAsync(selling.Shop.Manager, Guid.CreateVersion7(), [change], "to see it", Stop));
}
