using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Settings;

public sealed class ShopKindsTests
{
    [Fact]
    public async Task A_shop_fits_every_kind_until_some_are_left_out()
    {
        await using var shop = await TestShop.OpenAsync();
        await using (var db = shop.CreateDbContext())
        {
            var row = await db.Shops.SingleAsync(TestContext.Current.CancellationToken);
            Assert.Equal(["pointe", "demi-pointe", "soft", "jazz", "tap", "character"], row.Kinds);

            row.FitKinds(["tap", "pointe"]);
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        await using var fresh = shop.CreateDbContext();
        Assert.Equal(["pointe", "tap"], (await fresh.Shops.SingleAsync(TestContext.Current.CancellationToken)).Kinds);
    }

    [Fact]
    public void A_shop_that_fits_nothing_is_refused() =>
        Assert.Throws<ArgumentException>(() => Shop.Of(Guid.CreateVersion7(), "Larch Lane").FitKinds(["boots"]));
}
