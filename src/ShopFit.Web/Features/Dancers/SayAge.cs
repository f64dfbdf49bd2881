using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Keeps the answer to "under age, or grown?" for a dancer whose day of birth is not known.</summary>
public sealed class SayAge(ShopWrites writes)
{
    public Task<SayAgeOutcome> RunAsync(Actor actor, Guid commandId, Guid dancerId, bool underAge, CancellationToken cancellationToken) =>
        writes.RunAsync<SayAgeOutcome>(actor, commandId, nameof(SayAge), async (db, ct) =>
        {
            var dancer = await db.Dancers.SingleOrDefaultAsync(row => row.Id == dancerId, ct);
            if (dancer is not { BirthDate: null })
            {
                return new SayAgeOutcome.KnownBetter();
            }

            dancer.SayAge(underAge);
            return new SayAgeOutcome.Kept();
        }, cancellationToken);
}

/// <summary>How keeping it ended.</summary>
[JsonDerivedType(typeof(Kept), "kept")]
[JsonDerivedType(typeof(KnownBetter), "known-better")]
public abstract record SayAgeOutcome
{
    private SayAgeOutcome()
    {
    }

    /// <summary>It is kept.</summary>
    public sealed record Kept : SayAgeOutcome;

    /// <summary>The day of birth is known, or the dancer is no longer on file.</summary>
    public sealed record KnownBetter : SayAgeOutcome, IRefusal;
}
