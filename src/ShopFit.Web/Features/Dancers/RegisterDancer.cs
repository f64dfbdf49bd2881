using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Puts a new dancer on file; a child only with whoever answers for her, and with their yes.</summary>
public sealed class RegisterDancer(ShopWrites writes, TimeProvider clock)
{
    /// <summary>Longest name, as the database keeps it.</summary>
    public const int LongestName = 200;

    /// <summary>Nobody older than this is fitted, years: a slip of the year when typing.</summary>
    public const int OldestYears = 110;

    /// <param name="actor">Who writes it down.</param>
    /// <param name="commandId">Key of the command; it becomes the key of the dancer.</param>
    /// <param name="request">What was said.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    public Task<RegisterDancerOutcome> RunAsync(Actor actor, Guid commandId, RegisterDancerRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<RegisterDancerOutcome>(actor, commandId, nameof(RegisterDancer), async (db, ct) =>
        {
            var now = clock.GetUtcNow();
            var shop = await db.Shops.SingleAsync(row => row.Id == actor.ShopId, ct);
            if (Check(request, ShopTime.Of(shop).Day(now)) is { Count: > 0 } problems)
            {
                return new RegisterDancerOutcome.Invalid(problems);
            }

            var dancer = Dancer.Of(commandId, actor.ShopId, request.Name);
            await DancerWriting.WriteAsync(db, dancer, request, now, ct);
            db.Dancers.Add(dancer);
            if (request.ConsentGiven)
            {
                db.Consents.Add(Consent.Of(Guid.CreateVersion7(now), actor, dancer.Id, dancer.GuardianId is null ? "dancer" : "guardian", now));
            }

            await DancersInMemory.RaiseVersionAsync(db, ct);
            return new RegisterDancerOutcome.Registered(dancer.Id);
        }, cancellationToken);

    /// <summary>Whether somebody born that day is answered for by somebody else.</summary>
    public static bool IsMinor(DateOnly? born, DateOnly day) => born is { } date && date <= day && Age.InYears(date, day) < Age.Grown;

    private static List<DancerProblem> Check(RegisterDancerRequest request, DateOnly today)
    {
        var problems = DancerWriting.Check(request, today);
        if (request.BirthDate is null && request.UnderAge is null)
        {
            problems.Add(DancerProblem.AgeNotSaid);
        }

        if (request.BirthDate is null ? request.UnderAge is true : IsMinor(request.BirthDate, today))
        {
            if (string.IsNullOrWhiteSpace(request.GuardianName) && request.GuardianId is null)
            {
                problems.Add(DancerProblem.GuardianMissing);
            }

            if (!request.ConsentGiven)
            {
                problems.Add(DancerProblem.ConsentMissing);
            }
        }

        return problems;
    }
}

/// <summary>How putting a dancer on file ended.</summary>
[JsonDerivedType(typeof(Registered), "registered")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record RegisterDancerOutcome
{
    private RegisterDancerOutcome()
    {
    }

    /// <summary>On file.</summary>
    public sealed record Registered(Guid DancerId) : RegisterDancerOutcome;

    /// <summary>Something is missing or cannot be.</summary>
    public sealed record Invalid(IReadOnlyList<DancerProblem> Problems) : RegisterDancerOutcome, IRefusal;
}
