using System.Security.Claims;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace ShopFit.Web.Features.People;

/// <summary>What happens when somebody signs in or out. Only for the sign-in pages, which are drawn without a circuit.</summary>
public sealed class SignIn(SignInManager<Person> signIns, UserManager<Person> people, IPasswordHasher<Person> passwords)
{
    private static readonly Person Nobody = Person.Of(Guid.Empty, Guid.Empty, "nobody", "nobody");

    // Made once; only its cost matters.
    private static string? s_nobodysHash;

    /// <summary>Signs in by name and password on a tablet.</summary>
    public async Task<SignInOutcome> RunAsync(string userName, string password, string tablet)
    {
        var person = await people.FindByNameAsync(userName.Trim());
        if (person is null)
        {
            SpendTheTimeOf(password);
            return SignInOutcome.NotKnown;
        }

        if (!person.MaySignIn || await people.IsLockedOutAsync(person))
        {
            SpendTheTimeOf(password);
            return SignInOutcome.NotKnown;
        }

        var result = await signIns.CheckPasswordSignInAsync(person, password, lockoutOnFailure: true);
        if (!result.Succeeded)
        {
            return SignInOutcome.NotKnown;
        }

        await EnterAsync(person, tablet);
        return SignInOutcome.SignedIn;
    }

    /// <summary>Signs in somebody who has just been made.</summary>
    public async Task EnterAsync(Guid personId, string tablet) =>
        await EnterAsync(await people.Users.SingleAsync(person => person.Id == personId), tablet);

    /// <summary>Signs out.</summary>
    public Task LeaveAsync() => signIns.SignOutAsync();

    // As slow as a known name with a wrong password, so that names cannot be found out by the clock.
    private void SpendTheTimeOf(string password) =>
        passwords.VerifyHashedPassword(Nobody, s_nobodysHash ??= passwords.HashPassword(Nobody, "not a password"), password);

    private Task EnterAsync(Person person, string tablet) =>
        signIns.SignInWithClaimsAsync(person, isPersistent: false, [new Claim(ShopClaims.Tablet, tablet)]);
}

/// <summary>How signing in ended.</summary>
public enum SignInOutcome
{
    /// <summary>They are in.</summary>
    SignedIn,

    /// <summary>No such name and password, or too many wrong ones before it; which of them is not said, since it would tell which names there are.</summary>
    NotKnown,
}
