using System.Text.Json.Serialization;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.People;

/// <summary>What happens when a manager shuts somebody out who works here no longer, or lets them in again.</summary>
public sealed class SwitchSignIn(ShopWrites writes, TimeProvider clock)
{
    /// <param name="actor">Who does it.</param>
    /// <param name="commandId">Key of the command.</param>
    /// <param name="personId">Whom.</param>
    /// <param name="on">Whether they may sign in.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    public Task<SwitchSignInOutcome> RunAsync(Actor actor, Guid commandId, Guid personId, bool on, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<SwitchSignInOutcome>(
            actor,
            commandId,
            nameof(SwitchSignIn),
            async (db, ct) =>
            {
                var person = await PersonRules.FindAsync(db, personId, ct);
                if (person is null)
                {
                    return new SwitchSignInOutcome.NotHere();
                }

                if (!on && await PersonRules.IsLastManagerAsync(db, personId, ct))
                {
                    return new SwitchSignInOutcome.LastManager();
                }

                if (person.MaySignIn != on)
                {
                    person.SwitchSignIn(on ? null : clock.GetUtcNow());
                    db.SettingChanges.Add(SettingChange.Of(
                        Guid.CreateVersion7(), actor, clock.GetUtcNow(), $"{SettingPaths.People}{personId}.sign-in", on ? "no" : "yes", on ? "yes" : "no"));
                }

                return new SwitchSignInOutcome.Done();
            },
            cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Done), "done")]
[JsonDerivedType(typeof(LastManager), "last-manager")]
[JsonDerivedType(typeof(NotHere), "not-here")]
public abstract record SwitchSignInOutcome
{
    private SwitchSignInOutcome()
    {
    }

    public sealed record Done : SwitchSignInOutcome;

    /// <summary>Without them nobody could change anything in the shop any more.</summary>
    public sealed record LastManager : SwitchSignInOutcome, IRefusal;

    /// <summary>Nobody of this shop has that key.</summary>
    public sealed record NotHere : SwitchSignInOutcome, IRefusal;
}
