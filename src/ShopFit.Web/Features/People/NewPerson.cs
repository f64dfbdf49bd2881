using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.People;

/// <summary>Puts somebody on the list of people who work here. Used only inside the write path.</summary>
public sealed class NewPerson(IPasswordHasher<Person> passwords, ILookupNormalizer names)
{
    /// <summary>Fewest characters of a password. Length is what protects; no mixture of signs is asked for.</summary>
    public const int ShortestPassword = 12;

    /// <summary>Adds them with a role. The name must not be taken.</summary>
    public async Task ApplyAsync(ShopDbContext db, Guid id, string userName, string displayName, string password, string role, CancellationToken cancellationToken)
    {
        var person = Person.Of(id, db.ShopId, userName, displayName);
        person.NormalizedUserName = names.NormalizeName(person.UserName);
        person.PasswordHash = passwords.HashPassword(person, password);
        db.Users.Add(person);

        var roleId = await db.Roles.Where(known => known.Name == role).Select(known => known.Id).SingleAsync(cancellationToken);
        db.UserRoles.Add(new IdentityUserRole<Guid> { UserId = id, RoleId = roleId });
    }
}
