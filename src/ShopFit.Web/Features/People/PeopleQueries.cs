using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.People;

/// <summary>Whether the shop has anybody yet. Remembers a yes, since nobody can be the last to leave.</summary>
public sealed class PeopleQueries(IDbContextFactory<ShopDbContext> contexts)
{
    private bool _somebody;

    public async Task<bool> IsAnybodyHereAsync(CancellationToken cancellationToken)
    {
        if (!_somebody)
        {
            await using var db = await contexts.CreateDbContextAsync(cancellationToken);
            _somebody = await db.Users.AnyAsync(cancellationToken);
        }

        return _somebody;
    }
}
