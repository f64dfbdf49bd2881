using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Features.Dancers;

/// <summary>What a new dancer and a changed one have in common. Called from inside an action.</summary>
internal static class DancerWriting
{
    /// <summary>What is wrong with the words and the day of birth.</summary>
    public static List<DancerProblem> Check(RegisterDancerRequest request, DateOnly today)
    {
        var problems = new List<DancerProblem>();
        if (string.IsNullOrWhiteSpace(request.Name))
        {
            problems.Add(DancerProblem.NameMissing);
        }

        if (new[] { request.Name, request.KnownAs, request.Studio, request.Teacher, request.GuardianName, request.GuardianContact }.Any(text => text.Length > RegisterDancer.LongestName))
        {
            problems.Add(DancerProblem.TooLong);
        }

        if (request.BirthDate > today)
        {
            problems.Add(DancerProblem.BornInFuture);
        }

        if (request.BirthDate < today.AddYears(-RegisterDancer.OldestYears))
        {
            problems.Add(DancerProblem.BornTooLongAgo);
        }

        return problems;
    }

    /// <summary>Writes it all down: the dancer, the studio that was named, and whoever answers for her.</summary>
    public static async Task WriteAsync(ShopDbContext db, Dancer dancer, RegisterDancerRequest request, DateTimeOffset now, CancellationToken cancellationToken)
    {
        dancer.Describe(request.Name, request.KnownAs, request.BirthDate, request.Sex, request.Teacher);
        dancer.SayAge(request.BirthDate is null ? request.UnderAge : null);
        dancer.DancesAt(await StudiosByName.FindOrAddAsync(db, request.Studio, now, cancellationToken));

        var known = (request.GuardianId ?? dancer.GuardianId) is { } guardianId
            ? await db.Guardians.SingleOrDefaultAsync(row => row.Id == guardianId, cancellationToken)
            : null;
        if (known is not null)
        {
            dancer.AnsweredForBy(known.Id);
            if (!string.IsNullOrWhiteSpace(request.GuardianName))
            {
                known.Describe(request.GuardianName, request.GuardianContact);
            }
        }
        else if (!string.IsNullOrWhiteSpace(request.GuardianName))
        {
            var guardian = Guardian.Of(Guid.CreateVersion7(now), db.ShopId, request.GuardianName, request.GuardianContact);
            db.Guardians.Add(guardian);
            dancer.AnsweredForBy(guardian.Id);
        }
    }
}
