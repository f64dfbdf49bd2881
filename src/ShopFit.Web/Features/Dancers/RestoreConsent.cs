using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Undoes a slip: a yes that was taken back a moment ago holds again. Later it must be given anew.</summary>
public sealed class RestoreConsent(ShopWrites writes, TimeProvider clock)
{
    // The way back stands open for ten seconds; the rest is for a slow line, and for a hand that stays at the key.
    private static readonly TimeSpan LongestSlip = TimeSpan.FromMinutes(5);

    public Task<RestoreConsentOutcome> RunAsync(Actor actor, Guid commandId, Guid dancerId, IReadOnlyList<Guid> consentIds, CancellationToken cancellationToken) =>
        writes.RunAsync<RestoreConsentOutcome>(actor, commandId, nameof(RestoreConsent), async (db, ct) =>
        {
            var since = clock.GetUtcNow() - LongestSlip;
            var rows = await db.Consents.Where(row => row.DancerId == dancerId && consentIds.Contains(row.Id) && row.WithdrawnAt != null).ToListAsync(ct);
            if (rows.Count is 0 || rows.Exists(row => row.WithdrawnAt < since))
            {
                return new RestoreConsentOutcome.TooLate();
            }

            rows.ForEach(row => row.Restore());
            return new RestoreConsentOutcome.Restored();
        }, cancellationToken);
}

/// <summary>How undoing it ended.</summary>
[JsonDerivedType(typeof(Restored), "restored")]
[JsonDerivedType(typeof(TooLate), "too-late")]
public abstract record RestoreConsentOutcome
{
    private RestoreConsentOutcome()
    {
    }

    /// <summary>It holds again.</summary>
    public sealed record Restored : RestoreConsentOutcome;

    /// <summary>It was taken back too long ago: whoever answers for the dancer is asked anew.</summary>
    public sealed record TooLate : RestoreConsentOutcome, IRefusal;
}
