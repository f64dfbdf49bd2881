using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Takes back the yes of whoever answers for a dancer: until there is another, no fitting is opened for a child.</summary>
public sealed class WithdrawConsent(ShopWrites writes, TimeProvider clock)
{
    public Task<WithdrawConsentOutcome> RunAsync(Actor actor, Guid commandId, Guid dancerId, CancellationToken cancellationToken) =>
        writes.RunAsync<WithdrawConsentOutcome>(actor, commandId, nameof(WithdrawConsent), async (db, ct) =>
        {
            var standing = await db.Consents.Where(row => row.DancerId == dancerId && row.WithdrawnAt == null).ToListAsync(ct);
            if (standing.Count is 0)
            {
                return new WithdrawConsentOutcome.NothingStands();
            }

            var now = clock.GetUtcNow();
            standing.ForEach(row => row.Withdraw(now));
            return new WithdrawConsentOutcome.Withdrawn([.. standing.Select(row => row.Id)]);
        }, cancellationToken);
}

/// <summary>How taking it back ended.</summary>
[JsonDerivedType(typeof(Withdrawn), "withdrawn")]
[JsonDerivedType(typeof(NothingStands), "nothing-stands")]
public abstract record WithdrawConsentOutcome
{
    private WithdrawConsentOutcome()
    {
    }

    /// <summary>It holds no longer; these rows held until now.</summary>
    public sealed record Withdrawn(IReadOnlyList<Guid> ConsentIds) : WithdrawConsentOutcome;

    /// <summary>There was no yes to take back.</summary>
    public sealed record NothingStands : WithdrawConsentOutcome, IRefusal;
}
