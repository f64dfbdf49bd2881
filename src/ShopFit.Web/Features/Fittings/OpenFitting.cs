using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Starts a fitting for a dancer, or goes on with the one that is open.</summary>
public sealed class OpenFitting(ShopWrites writes, TimeProvider clock)
{
    /// <param name="actor">Who starts it.</param>
    /// <param name="commandId">Key of the command; it becomes the key of the fitting.</param>
    /// <param name="dancerId">For whom.</param>
    /// <param name="kind">Kind of footwear, such as "pointe".</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    public Task<OpenFittingOutcome> RunAsync(Actor actor, Guid commandId, Guid dancerId, string kind, CancellationToken cancellationToken) =>
        writes.RunAsync<OpenFittingOutcome>(
            actor,
            commandId,
            nameof(OpenFitting),
            (db, stop) => ApplyAsync(db, actor, commandId, dancerId, kind, clock.GetUtcNow(), stop),
            cancellationToken);

    /// <summary>Starts it in the transaction of an action.</summary>
    internal static async Task<OpenFittingOutcome> ApplyAsync(
        ShopDbContext db, Actor actor, Guid commandId, Guid dancerId, string kind, DateTimeOffset now, CancellationToken cancellationToken)
    {
        var dancer = await db.Dancers.SingleOrDefaultAsync(row => row.Id == dancerId, cancellationToken);
        if (dancer is null)
        {
            return new OpenFittingOutcome.NoSuchDancer();
        }

        var shop = await db.Shops.SingleAsync(row => row.Id == actor.ShopId, cancellationToken);
        var today = ShopTime.Of(shop).Day(now);
        var age = dancer.BirthDate is { } born ? Age.InYears(born, today) : (double?)null;

        // The feet of a child are measured only when whoever answers for her has said yes.
        switch (dancer.IsMinorOn(today))
        {
            case null:
                return new OpenFittingOutcome.AgeNotSaid();
            case true when !await db.Consents.AnyAsync(row => row.DancerId == dancerId && row.WithdrawnAt == null, cancellationToken):
                return new OpenFittingOutcome.ConsentMissing();
        }

        var open = await db.Fittings
            .Where(row => row.DancerId == dancerId && row.Kind == kind && row.ClosedAt == null)
            .OrderByDescending(row => row.OpenedAt)
            .Select(row => (Guid?)row.Id)
            .FirstOrDefaultAsync(cancellationToken);
        if (open is { } already)
        {
            return new OpenFittingOutcome.Opened(already);
        }

        db.Fittings.Add(FittingRecord.Of(commandId, actor, dancerId, kind, now, age, dancer.Sex));
        return new OpenFittingOutcome.Opened(commandId);
    }
}

/// <summary>How the attempt to start a fitting ended.</summary>
[JsonDerivedType(typeof(Opened), "opened")]
[JsonDerivedType(typeof(NoSuchDancer), "no-such-dancer")]
[JsonDerivedType(typeof(AgeNotSaid), "age-not-said")]
[JsonDerivedType(typeof(ConsentMissing), "consent-missing")]
public abstract record OpenFittingOutcome
{
    private OpenFittingOutcome()
    {
    }

    /// <summary>It is open; it may have been open before.</summary>
    public sealed record Opened(Guid FittingId) : OpenFittingOutcome;

    /// <summary>The dancer is not on file.</summary>
    public sealed record NoSuchDancer : OpenFittingOutcome, IRefusal;

    /// <summary>Neither the day of birth is known, nor whether the dancer is grown: nobody can tell whose yes is needed.</summary>
    public sealed record AgeNotSaid : OpenFittingOutcome, IRefusal;

    /// <summary>A child without a recorded yes.</summary>
    public sealed record ConsentMissing : OpenFittingOutcome, IRefusal;
}
