using System.Text.Json.Serialization;
using Microsoft.AspNetCore.Identity;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.People;

/// <summary>What happens when a manager lets somebody work here.</summary>
public sealed class AddPerson(ShopWrites writes, NewPerson newPerson, ILookupNormalizer names, TimeProvider clock)
{
    public Task<AddPersonOutcome> RunAsync(Actor actor, Guid commandId, string userName, string displayName, string password, string role, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<AddPersonOutcome>(
            actor,
            commandId,
            nameof(AddPerson),
            async (db, ct) =>
            {
                var problems = PersonRules.Look(userName, displayName).ToList();
                if (!PersonRules.IsPassword(password))
                {
                    problems.Add(PersonProblem.PasswordNotAllowed);
                }

                if (!Roles.All.Contains(role, StringComparer.Ordinal))
                {
                    problems.Add(PersonProblem.RoleNotKnown);
                }

                if (await PersonRules.IsTakenAsync(db, names, userName, commandId, ct))
                {
                    problems.Add(PersonProblem.UserNameTaken);
                }

                if (problems.Count > 0)
                {
                    return new AddPersonOutcome.Invalid(problems);
                }

                await newPerson.ApplyAsync(db, commandId, userName, displayName, password, role, ct);
                db.SettingChanges.Add(SettingChange.Of(Guid.CreateVersion7(), actor, clock.GetUtcNow(), $"{SettingPaths.People}{commandId}.role", before: null, role));
                return new AddPersonOutcome.Added(commandId);
            },
            cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Added), "added")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record AddPersonOutcome
{
    private AddPersonOutcome()
    {
    }

    public sealed record Added(Guid PersonId) : AddPersonOutcome;

    public sealed record Invalid(IReadOnlyList<PersonProblem> Problems) : AddPersonOutcome, IRefusal;
}
