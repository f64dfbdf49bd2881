using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Data;

/// <summary>Opens contexts for reading that see the rows of one shop and no other.</summary>
public sealed class ShopContexts(IDbContextFactory<ShopDbContext> contexts, CurrentActor currentActor)
{
    /// <summary>A context for the shop of whoever is acting. The caller disposes it.</summary>
    /// <exception cref="NotPermittedException">Nobody has signed in.</exception>
    public async Task<ShopDbContext> OpenAsync(CancellationToken cancellationToken) =>
        await OpenAsync((await currentActor.GetAsync()).ShopId, cancellationToken);

    /// <summary>A context for a shop that is known by other means, as on the command line. The caller disposes it.</summary>
    public async Task<ShopDbContext> OpenAsync(Guid shopId, CancellationToken cancellationToken)
    {
        var db = await contexts.CreateDbContextAsync(cancellationToken);
        db.ShopId = shopId;
        return db;
    }
}
