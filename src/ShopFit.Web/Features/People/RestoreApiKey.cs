using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.People;

/// <summary>Undoes the revoking of a key that was a slip: the program goes on with it. Later it needs a new one.</summary>
public sealed class RestoreApiKey(ShopWrites writes, TimeProvider clock)
{
    // The way back stands open for ten seconds; the rest is for a slow line, and for a hand that stays at the key.
    private static readonly TimeSpan LongestSlip = TimeSpan.FromMinutes(5);

    public Task<RestoreApiKeyOutcome> RunAsync(Actor actor, Guid commandId, Guid keyId, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<RestoreApiKeyOutcome>(actor, commandId, nameof(RestoreApiKey), async (db, ct) =>
        {
            var now = clock.GetUtcNow();
            if (await db.ApiKeys.SingleOrDefaultAsync(row => row.Id == keyId, ct) is not { RevokedAt: { } revokedAt } key || now - revokedAt > LongestSlip)
            {
                return new RestoreApiKeyOutcome.TooLate();
            }

            key.Restore();
            db.SettingChanges.Add(SettingChange.Of(Guid.CreateVersion7(), actor, now, $"{SettingPaths.Keys}{keyId}", before: null, key.Name));
            return new RestoreApiKeyOutcome.Restored();
        }, cancellationToken);
}

/// <summary>How undoing it ended.</summary>
[JsonDerivedType(typeof(Restored), "restored")]
[JsonDerivedType(typeof(TooLate), "too-late")]
public abstract record RestoreApiKeyOutcome
{
    private RestoreApiKeyOutcome()
    {
    }

    /// <summary>The key opens again.</summary>
    public sealed record Restored : RestoreApiKeyOutcome;

    /// <summary>It was revoked too long ago, or not at all.</summary>
    public sealed record TooLate : RestoreApiKeyOutcome, IRefusal;
}
