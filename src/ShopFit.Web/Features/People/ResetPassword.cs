using System.Text.Json.Serialization;
using Microsoft.AspNetCore.Identity;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.People;

/// <summary>What happens when a manager gives somebody a new password: the old one is worth nothing, on any tablet.</summary>
public sealed class ResetPassword(ShopWrites writes, IPasswordHasher<Person> passwords, TimeProvider clock)
{
    public Task<ResetPasswordOutcome> RunAsync(Actor actor, Guid commandId, Guid personId, string password, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<ResetPasswordOutcome>(
            actor,
            commandId,
            nameof(ResetPassword),
            async (db, ct) =>
            {
                var person = await PersonRules.FindAsync(db, personId, ct);
                if (person is null)
                {
                    return new ResetPasswordOutcome.NotHere();
                }

                if (!PersonRules.IsPassword(password))
                {
                    return new ResetPasswordOutcome.PasswordNotAllowed();
                }

                person.ChangePassword(passwords.HashPassword(person, password));
                db.SettingChanges.Add(SettingChange.Of(Guid.CreateVersion7(), actor, clock.GetUtcNow(), $"{SettingPaths.People}{personId}.password", before: null, after: null));
                return new ResetPasswordOutcome.Done();
            },
            cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Done), "done")]
[JsonDerivedType(typeof(PasswordNotAllowed), "password-not-allowed")]
[JsonDerivedType(typeof(NotHere), "not-here")]
public abstract record ResetPasswordOutcome
{
    private ResetPasswordOutcome()
    {
    }

    public sealed record Done : ResetPasswordOutcome;

    public sealed record PasswordNotAllowed : ResetPasswordOutcome, IRefusal;

    /// <summary>Nobody of this shop has that key.</summary>
    public sealed record NotHere : ResetPasswordOutcome, IRefusal;
}
