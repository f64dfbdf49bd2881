using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.People;

/// <summary>Who works here, and which programs may ask, as the manager sees them. Reads only.</summary>
public sealed class StaffQueries(ShopContexts contexts)
{
    /// <summary>Everybody, those who may sign in first, and every key that was not revoked.</summary>
    public async Task<SeenStaff> SeeAsync(CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var people = await (
            from person in db.Users
            where person.ShopId == db.ShopId
            orderby person.SignInOffAt != null, person.DisplayName, person.Id
            select new SeenPerson(
                person.Id,
                person.UserName!,
                person.DisplayName,
                db.UserRoles.Any(link => link.UserId == person.Id && db.Roles.Any(role => role.Id == link.RoleId && role.Name == Roles.Manager)),
                person.SignInOffAt)).ToListAsync(cancellationToken);
        var keys = await db.ApiKeys.Where(key => key.RevokedAt == null).OrderBy(key => key.Name).Select(key => new SeenKey(key.Id, key.Name, key.CreatedAt)).ToListAsync(cancellationToken);
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        return new SeenStaff(people, keys, ShopTime.Of(shop));
    }
}

/// <summary>People and keys of the shop.</summary>
public sealed record SeenStaff(IReadOnlyList<SeenPerson> People, IReadOnlyList<SeenKey> Keys, ShopTime Time);

/// <summary>Somebody who works or worked here.</summary>
/// <param name="Id">Key.</param>
/// <param name="UserName">The name to sign in with.</param>
/// <param name="DisplayName">The name that colleagues see.</param>
/// <param name="IsManager">Manager or fitter.</param>
/// <param name="SignInOffAt">Since when they may not sign in; null: they may.</param>
public sealed record SeenPerson(Guid Id, string UserName, string DisplayName, bool IsManager, DateTimeOffset? SignInOffAt);

/// <summary>The key of another program.</summary>
public sealed record SeenKey(Guid Id, string Name, DateTimeOffset MadeAt);
