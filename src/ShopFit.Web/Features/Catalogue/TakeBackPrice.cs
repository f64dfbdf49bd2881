using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Takes a price back that was set by hand: each size costs what it did before, unless it was priced anew meanwhile.</summary>
public sealed class TakeBackPrice(ShopWrites writes, TimeProvider clock)
{
    /// <param name="actor">Who takes it back.</param>
    /// <param name="commandId">Key of this command.</param>
    /// <param name="priceCommandId">Key of the command that set the price.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    /// <exception cref="NotPermittedException">The actor is no manager.</exception>
    public Task<TakeBackPriceOutcome> RunAsync(Actor actor, Guid commandId, Guid priceCommandId, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<TakeBackPriceOutcome>(actor, commandId, nameof(TakeBackPrice), async (db, ct) =>
        {
            var changes = await db.PriceChanges.Where(change => change.CommandId == priceCommandId && change.WithdrawnAt == null).ToListAsync(ct);
            var ids = changes.Select(change => change.ItemId).ToList();
            var items = await db.Items.Where(item => ids.Contains(item.Id)).ToDictionaryAsync(item => item.Id, ct);
            var takenBack = 0;
            foreach (var change in changes.Where(change => items[change.ItemId].PriceMinor == change.ToMinor))
            {
                change.Withdraw(clock.GetUtcNow());
                items[change.ItemId].PriceAsBefore(change.FromMinor);
                takenBack++;
            }

            if (takenBack == 0)
            {
                return new TakeBackPriceOutcome.NotInForce();
            }

            await CatalogueVersion.RaiseAsync(db, ct);
            return new TakeBackPriceOutcome.TakenBack(takenBack);
        }, cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(TakenBack), "taken-back")]
[JsonDerivedType(typeof(NotInForce), "not-in-force")]
public abstract record TakeBackPriceOutcome
{
    private TakeBackPriceOutcome()
    {
    }

    /// <summary>So many sizes cost again what they did.</summary>
    public sealed record TakenBack(int Sizes) : TakeBackPriceOutcome;

    /// <summary>Nothing costs that any more.</summary>
    public sealed record NotInForce : TakeBackPriceOutcome, IRefusal;
}
