using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Feet;
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
            dancer.Describe(request.Name, request.KnownAs, request.BirthDate, request.Sex, request.Teacher);
            dancer.DancesAt(await StudiosByName.FindOrAddAsync(db, request.Studio, now, ct));
            if (!string.IsNullOrWhiteSpace(request.GuardianName))
            {
                var guardian = Guardian.Of(Guid.CreateVersion7(now), actor.ShopId, request.GuardianName, request.GuardianContact);
                db.Guardians.Add(guardian);
                dancer.AnsweredForBy(guardian.Id);
            }

            db.Dancers.Add(dancer);
            if (request.ConsentGiven)
            {
                var givenBy = string.IsNullOrWhiteSpace(request.GuardianName) ? "dancer" : "guardian";
                db.Consents.Add(Consent.Of(Guid.CreateVersion7(now), actor, dancer.Id, givenBy, now));
            }

            return new RegisterDancerOutcome.Registered(dancer.Id);
        }, cancellationToken);

    /// <summary>Whether somebody born that day is answered for by somebody else.</summary>
    public static bool IsMinor(DateOnly? born, DateOnly day) => born is { } date && date <= day && Age.InYears(date, day) < Age.Grown;

    private static List<DancerProblem> Check(RegisterDancerRequest request, DateOnly today)
    {
        var problems = new List<DancerProblem>();
        void When(bool wrong, DancerProblem problem)
        {
            if (wrong)
            {
                problems.Add(problem);
            }
        }

        When(string.IsNullOrWhiteSpace(request.Name), DancerProblem.NameMissing);
        When(
            new[] { request.Name, request.KnownAs, request.Studio, request.Teacher, request.GuardianName, request.GuardianContact }.Any(text => text.Length > LongestName),
            DancerProblem.TooLong);
        When(request.BirthDate > today, DancerProblem.BornInFuture);
        When(request.BirthDate < today.AddYears(-OldestYears), DancerProblem.BornTooLongAgo);
        if (IsMinor(request.BirthDate, today))
        {
            When(string.IsNullOrWhiteSpace(request.GuardianName), DancerProblem.GuardianMissing);
            When(!request.ConsentGiven, DancerProblem.ConsentMissing);
        }

        return problems;
    }
}

/// <summary>A dancer as the fitter writes her down.</summary>
public sealed record RegisterDancerRequest
{
    public string Name { get; init; } = "";

    public string KnownAs { get; init; } = "";

    public DateOnly? BirthDate { get; init; }

    public Sex? Sex { get; init; }

    /// <summary>Name of her studio, on file or new.</summary>
    public string Studio { get; init; } = "";

    public string Teacher { get; init; } = "";

    public string GuardianName { get; init; } = "";

    public string GuardianContact { get; init; } = "";

    /// <summary>Whoever answers for her, or she herself, has agreed that her feet are measured and kept on file.</summary>
    public bool ConsentGiven { get; init; }
}

/// <summary>What is wrong with what was written down.</summary>
public enum DancerProblem
{
    NameMissing,
    TooLong,
    BornInFuture,
    BornTooLongAgo,
    GuardianMissing,
    ConsentMissing,
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
