using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.People;

/// <summary>What happens when another program is shut out: its key opens nothing any more, for good.</summary>
public sealed class RevokeApiKey(ShopWrites writes, TimeProvider clock)
{
    public Task<RevokeApiKeyOutcome> RunAsync(Actor actor, Guid commandId, Guid keyId, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<RevokeApiKeyOutcome>(
            actor,
            commandId,
            nameof(RevokeApiKey),
            async (db, ct) =>
            {
                var key = await db.ApiKeys.SingleOrDefaultAsync(row => row.Id == keyId, ct);
                if (key is null)
                {
                    return new RevokeApiKeyOutcome.NotHere();
                }

                if (key.RevokedAt is null)
                {
                    key.Revoke(clock.GetUtcNow());
                    db.SettingChanges.Add(SettingChange.Of(Guid.CreateVersion7(), actor, clock.GetUtcNow(), $"{SettingPaths.Keys}{keyId}", key.Name, after: null));
                }

                return new RevokeApiKeyOutcome.Revoked();
            },
            cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Revoked), "revoked")]
[JsonDerivedType(typeof(NotHere), "not-here")]
public abstract record RevokeApiKeyOutcome
{
    private RevokeApiKeyOutcome()
    {
    }

    public sealed record Revoked : RevokeApiKeyOutcome;

    /// <summary>This shop has no such key.</summary>
    public sealed record NotHere : RevokeApiKeyOutcome, IRefusal;
}
