using Microsoft.AspNetCore.WebUtilities;
using System.Security.Cryptography;
using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.People;

/// <summary>What happens when another program is let in: a key is made, shown once and never kept.</summary>
public sealed class AddApiKey(ShopWrites writes, TimeProvider clock)
{
    private const int KeyBytes = 32;

    public async Task<AddApiKeyOutcome> RunAsync(Actor actor, Guid commandId, string name, CancellationToken cancellationToken)
    {
        if (string.IsNullOrWhiteSpace(name) || name.Trim().Length > ApiKey.LongestName)
        {
            return new AddApiKeyOutcome.NameNotAllowed();
        }

        var key = WebEncoders.Base64UrlEncode(RandomNumberGenerator.GetBytes(KeyBytes));
        var outcome = await writes.RunAsManagerAsync<AddApiKeyOutcome>(
            actor,
            commandId,
            nameof(AddApiKey),
            async (db, innerCancellationToken) =>
            {
                if (await db.ApiKeys.AnyAsync(known => known.Name == name.Trim() && known.RevokedAt == null, innerCancellationToken))
                {
                    return new AddApiKeyOutcome.NameTaken();
                }

                db.SettingChanges.Add(SettingChange.Of(Guid.CreateVersion7(), actor, clock.GetUtcNow(), $"{SettingPaths.Keys}{commandId}", before: null, name.Trim()));
                db.ApiKeys.Add(ApiKey.Of(commandId, actor.ShopId, name, ApiKeyScheme.HashOf(key), clock.GetUtcNow()));
                return new AddApiKeyOutcome.Added(key);
            },
            cancellationToken);

        return outcome;
    }
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Added), "added")]
[JsonDerivedType(typeof(NameTaken), "name-taken")]
[JsonDerivedType(typeof(NameNotAllowed), "name-not-allowed")]
public abstract record AddApiKeyOutcome
{
    private AddApiKeyOutcome()
    {
    }

    /// <param name="Key">The key itself. The record of the command leaves it out: there it reads null.</param>
    public sealed record Added([property: JsonIgnore] string? Key) : AddApiKeyOutcome
    {
        [JsonConstructor]
        public Added()
            : this(Key: null)
        {
        }
    }

    public sealed record NameTaken : AddApiKeyOutcome, IRefusal;

    public sealed record NameNotAllowed : AddApiKeyOutcome, IRefusal;
}
