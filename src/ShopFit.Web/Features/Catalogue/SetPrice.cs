using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Sets the price of one size, or of all sizes of a model, by hand.</summary>
/// <remarks>Such a price stays until the catalogue gives a new one; a file that says what it said before leaves it.</remarks>
public sealed class SetPrice(ShopWrites writes, TimeProvider clock)
{
    /// <summary>The highest price, in minor units: beyond it somebody typed a nought too many.</summary>
    public const long DearestMinor = 100_000_000;

    /// <param name="actor">Who sets it.</param>
    /// <param name="commandId">Key of the command, by which the price can be taken back.</param>
    /// <param name="modelOrSizeId">A model, and all its sizes get the price; or one size.</param>
    /// <param name="priceMinor">The price in minor units of the shop's currency.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    /// <exception cref="NotPermittedException">The actor is no manager.</exception>
    public Task<SetPriceOutcome> RunAsync(Actor actor, Guid commandId, Guid modelOrSizeId, long priceMinor, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<SetPriceOutcome>(actor, commandId, nameof(SetPrice), async (db, ct) =>
        {
            if (priceMinor is < 0 or > DearestMinor)
            {
                return new SetPriceOutcome.OutOfRange(DearestMinor);
            }

            var sizes = db.ShoeSizes.Where(size => size.Id == modelOrSizeId || size.ModelId == modelOrSizeId).Select(size => size.Id);
            var items = await db.Items.Where(item => sizes.Contains(item.Id)).ToListAsync(ct);
            if (items.Count == 0)
            {
                return new SetPriceOutcome.Gone();
            }

            var now = clock.GetUtcNow();
            var changed = items.Where(item => item.PriceMinor != priceMinor).ToList();
            foreach (var item in changed)
            {
                db.PriceChanges.Add(PriceChange.Of(Guid.CreateVersion7(), actor, commandId, item.Id, item.PriceMinor, priceMinor, now));
                item.PriceByHand(priceMinor);
            }

            await CatalogueVersion.RaiseAsync(db, ct);
            return new SetPriceOutcome.Priced(changed.Count);
        }, cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Priced), "priced")]
[JsonDerivedType(typeof(OutOfRange), "out-of-range")]
[JsonDerivedType(typeof(Gone), "gone")]
public abstract record SetPriceOutcome
{
    private SetPriceOutcome()
    {
    }

    /// <summary>So many sizes have a new price.</summary>
    public sealed record Priced(int Sizes) : SetPriceOutcome;

    /// <summary>It is below nought or higher than any price.</summary>
    public sealed record OutOfRange(long DearestMinor) : SetPriceOutcome, IRefusal;

    /// <summary>There is no such model or size.</summary>
    public sealed record Gone : SetPriceOutcome, IRefusal;
}
