using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Studios;

/// <summary>Finds the studio that somebody named, and puts one on file that was not. Called from inside an action.</summary>
public static class StudiosByName
{
    /// <summary>The key of the studio of that name; null where none was named.</summary>
    /// <param name="db">The context of the action.</param>
    /// <param name="name">As it was written; accents and capitals do not matter.</param>
    /// <param name="now">The moment of the action.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public static async Task<Guid?> FindOrAddAsync(ShopDbContext db, string name, DateTimeOffset now, CancellationToken cancellationToken)
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            return null;
        }

        var key = Studio.KeyOf(name);
        var known = db.Studios.Local.FirstOrDefault(row => row.NameKey == key)?.Id
            ?? await db.Studios.Where(row => row.NameKey == key).Select(row => (Guid?)row.Id).SingleOrDefaultAsync(cancellationToken);
        if (known is not null)
        {
            return known;
        }

        var studio = Studio.Of(Guid.CreateVersion7(now), db.ShopId, name);
        db.Studios.Add(studio);
        return studio.Id;
    }
}
