using System.Text.Json.Serialization;
using Microsoft.AspNetCore.Identity;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.People;

/// <summary>What happens when a manager writes somebody's names anew.</summary>
public sealed class RenamePerson(ShopWrites writes, ILookupNormalizer names, TimeProvider clock)
{
    public Task<RenamePersonOutcome> RunAsync(Actor actor, Guid commandId, Guid personId, string userName, string displayName, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<RenamePersonOutcome>(
            actor,
            commandId,
            nameof(RenamePerson),
            async (db, ct) =>
            {
                var person = await PersonRules.FindAsync(db, personId, ct);
                if (person is null)
                {
                    return new RenamePersonOutcome.NotHere();
                }

                var problems = PersonRules.Look(userName, displayName).ToList();
                if (await PersonRules.IsTakenAsync(db, names, userName, personId, ct))
                {
                    problems.Add(PersonProblem.UserNameTaken);
                }

                if (problems.Count > 0)
                {
                    return new RenamePersonOutcome.Invalid(problems);
                }

                foreach (var (what, before, after) in new[] { ("name", person.DisplayName, displayName.Trim()), ("sign-in-name", person.UserName, userName.Trim()) })
                {
                    if (before != after)
                    {
                        db.SettingChanges.Add(SettingChange.Of(Guid.CreateVersion7(), actor, clock.GetUtcNow(), $"{SettingPaths.People}{personId}.{what}", before, after));
                    }
                }

                person.Rename(userName, displayName, names.NormalizeName(userName.Trim()));
                return new RenamePersonOutcome.Renamed();
            },
            cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Renamed), "renamed")]
[JsonDerivedType(typeof(Invalid), "invalid")]
[JsonDerivedType(typeof(NotHere), "not-here")]
public abstract record RenamePersonOutcome
{
    private RenamePersonOutcome()
    {
    }

    public sealed record Renamed : RenamePersonOutcome;

    public sealed record Invalid(IReadOnlyList<PersonProblem> Problems) : RenamePersonOutcome, IRefusal;

    /// <summary>Nobody of this shop has that key.</summary>
    public sealed record NotHere : RenamePersonOutcome, IRefusal;
}
