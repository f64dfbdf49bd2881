using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Writes down that whoever answers for a child has said yes, with their name if it was not on file.</summary>
public sealed class RecordConsent(ShopWrites writes, TimeProvider clock)
{
    public Task<RecordConsentOutcome> RunAsync(Actor actor, Guid commandId, Guid dancerId, string guardianName, string guardianContact, CancellationToken cancellationToken) =>
        writes.RunAsync<RecordConsentOutcome>(actor, commandId, nameof(RecordConsent), async (db, ct) =>
        {
            var dancer = await db.Dancers.SingleOrDefaultAsync(row => row.Id == dancerId, ct);
            if (dancer is null || (dancer.GuardianId is null && string.IsNullOrWhiteSpace(guardianName)))
            {
                return new RecordConsentOutcome.GuardianMissing();
            }

            if (guardianName.Length > RegisterDancer.LongestName || guardianContact.Length > RegisterDancer.LongestName)
            {
                return new RecordConsentOutcome.TooLong();
            }

            var now = clock.GetUtcNow();
            if (!string.IsNullOrWhiteSpace(guardianName))
            {
                var guardian = Guardian.Of(Guid.CreateVersion7(now), actor.ShopId, guardianName, guardianContact);
                db.Guardians.Add(guardian);
                dancer.AnsweredForBy(guardian.Id);
            }

            await DancersInMemory.RaiseVersionAsync(db, ct);
            db.Consents.Add(Consent.Of(commandId, actor, dancerId, "guardian", now));
            return new RecordConsentOutcome.Recorded();
        }, cancellationToken);
}

/// <summary>How writing it down ended.</summary>
[JsonDerivedType(typeof(Recorded), "recorded")]
[JsonDerivedType(typeof(GuardianMissing), "guardian-missing")]
[JsonDerivedType(typeof(TooLong), "too-long")]
public abstract record RecordConsentOutcome
{
    private RecordConsentOutcome()
    {
    }

    /// <summary>It is on file.</summary>
    public sealed record Recorded : RecordConsentOutcome;

    /// <summary>Nobody is named who could say yes.</summary>
    public sealed record GuardianMissing : RecordConsentOutcome, IRefusal;

    /// <summary>A name or address is longer than <see cref="RegisterDancer.LongestName"/>.</summary>
    public sealed record TooLong : RecordConsentOutcome, IRefusal;
}
