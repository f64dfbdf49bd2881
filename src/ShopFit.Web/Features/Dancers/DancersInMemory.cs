using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Keeps the names of each shop's dancers in memory for searching, until one of them changes, here or in another program.</summary>
public sealed class DancersInMemory
{
    private readonly ConcurrentDictionary<Guid, (long Version, DancerIndex Index)> _byShop = new();

    /// <summary>The dancers as they are on file now.</summary>
    public async Task<DancerIndex> SeeAsync(ShopDbContext db, CancellationToken cancellationToken)
    {
        var version = await db.Shops.Where(row => row.Id == db.ShopId).Select(row => row.DancersVersion).SingleAsync(cancellationToken);
        if (_byShop.TryGetValue(db.ShopId, out var kept) && kept.Version == version)
        {
            return kept.Index;
        }

        var rows = await (
            from dancer in db.Dancers
            join studio in db.Studios on dancer.StudioId equals studio.Id into studios
            from studio in studios.DefaultIfEmpty()
            join guardian in db.Guardians on dancer.GuardianId equals guardian.Id into guardians
            from guardian in guardians.DefaultIfEmpty()
            orderby dancer.Name, dancer.Id
            select new DancerOnFile(dancer.Id, dancer.Name, dancer.KnownAs, dancer.BirthDate, studio == null ? "" : studio.Name, guardian == null ? "" : guardian.Name))
            .ToListAsync(cancellationToken);
        var index = new DancerIndex(rows);
        _byShop[db.ShopId] = (version, index);
        return index;
    }

    /// <summary>Says that a dancer, a guardian or a studio changed. Called from inside the action that changes one.</summary>
    public static Task<int> RaiseVersionAsync(ShopDbContext db, CancellationToken cancellationToken) => db.Shops
        .Where(shop => shop.Id == db.ShopId)
        .ExecuteUpdateAsync(row => row.SetProperty(shop => shop.DancersVersion, shop => shop.DancersVersion + 1), cancellationToken);
}
