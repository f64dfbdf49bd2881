using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.People;

/// <summary>What is allowed in names and passwords, and that a shop always has a manager who can sign in.</summary>
internal static class PersonRules
{
    // Hashing takes longer the longer a password is; nobody types more than this.
    private const int LongestPassword = 200;

    public static IEnumerable<PersonProblem> Look(string userName, string displayName)
    {
        if (userName.Trim().Length is 0 or > Person.LongestName || userName.Any(char.IsControl))
        {
            yield return PersonProblem.UserNameNotAllowed;
        }

        if (displayName.Trim().Length is 0 or > Person.LongestName || displayName.Any(char.IsControl))
        {
            yield return PersonProblem.DisplayNameNotAllowed;
        }
    }

    public static bool IsPassword(string password) => password.Length is >= NewPerson.ShortestPassword and <= LongestPassword;

    /// <summary>Whether somebody else signs in with that name, however it is written.</summary>
    public static Task<bool> IsTakenAsync(ShopDbContext db, ILookupNormalizer names, string userName, Guid except, CancellationToken cancellationToken)
    {
        var normalized = names.NormalizeName(userName.Trim());
        return db.Users.AnyAsync(person => person.NormalizedUserName == normalized && person.Id != except, cancellationToken);
    }

    /// <summary>Somebody of this shop; null where there is no such person.</summary>
    public static Task<Person?> FindAsync(ShopDbContext db, Guid personId, CancellationToken cancellationToken) =>
        db.Users.SingleOrDefaultAsync(person => person.Id == personId && person.ShopId == db.ShopId, cancellationToken);

    /// <summary>Whether nobody but this person can sign in as a manager.</summary>
    public static async Task<bool> IsLastManagerAsync(ShopDbContext db, Guid personId, CancellationToken cancellationToken)
    {
        var managers = await (
            from person in db.Users
            join link in db.UserRoles on person.Id equals link.UserId
            join role in db.Roles on link.RoleId equals role.Id
            where person.ShopId == db.ShopId && role.Name == Roles.Manager && person.SignInOffAt == null
            select person.Id).ToListAsync(cancellationToken);
        return managers.Count == 1 && managers[0] == personId;
    }
}

/// <summary>What can be wrong with somebody's names, password or role.</summary>
public enum PersonProblem
{
    UserNameNotAllowed = 0,
    UserNameTaken = 1,
    DisplayNameNotAllowed = 2,
    PasswordNotAllowed = 3,
    RoleNotKnown = 4,
}
