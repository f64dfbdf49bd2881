using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Studios;

/// <summary>Changes what is known of a studio, and which models its teachers ask for or do not want.</summary>
public sealed class DescribeStudio(ShopWrites writes, TimeProvider clock)
{
    public Task<DescribeStudioOutcome> RunAsync(Actor actor, Guid commandId, DescribeStudioRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<DescribeStudioOutcome>(actor, commandId, nameof(DescribeStudio), async (db, ct) =>
        {
            var studio = await db.Studios.SingleOrDefaultAsync(row => row.Id == request.StudioId, ct);
            if (studio is null || studio.Version != request.Version)
            {
                return new DescribeStudioOutcome.ChangedMeanwhile();
            }

            var wishes = request.AskedModelIds.Select(model => (model, IsAsked: true)).Concat(request.UnwantedModelIds.Select(model => (model, IsAsked: false))).ToList();
            if (await CheckAsync(db, request, [.. wishes.Select(wish => wish.model)], ct) is { } problem)
            {
                return new DescribeStudioOutcome.Invalid(problem);
            }

            studio.Describe(request.Name, request.Teachers, request.Colour, request.Ribbon, request.OtherWishes);
            await db.StudioModelWishes.Where(row => row.StudioId == studio.Id).ExecuteDeleteAsync(ct);
            var now = clock.GetUtcNow();
            db.StudioModelWishes.AddRange(wishes.Select(wish => StudioModelWish.Of(Guid.CreateVersion7(now), actor.ShopId, studio.Id, wish.model, wish.IsAsked)));
            await DancersInMemory.RaiseVersionAsync(db, ct);
            return new DescribeStudioOutcome.Kept();
        }, cancellationToken);

    private static async Task<StudioProblem?> CheckAsync(ShopDbContext db, DescribeStudioRequest request, IReadOnlyList<Guid> models, CancellationToken cancellationToken)
    {
        if (string.IsNullOrWhiteSpace(request.Name))
        {
            return StudioProblem.NameMissing;
        }

        if (request.Name.Length > Studio.LongestName)
        {
            return StudioProblem.NameTooLong;
        }

        if (new[] { request.Teachers, request.Colour, request.Ribbon, request.OtherWishes }.Any(words => words.Length > Studio.LongestWords))
        {
            return StudioProblem.WordsTooLong;
        }

        var key = Studio.KeyOf(request.Name);
        if (await db.Studios.AnyAsync(row => row.NameKey == key && row.Id != request.StudioId, cancellationToken))
        {
            return StudioProblem.NameTaken;
        }

        // A model is asked for or not wanted, not both, and it is one of the shop's.
        var known = await db.ShoeModels.CountAsync(row => models.Contains(row.Id), cancellationToken);
        return known == models.Count ? null : StudioProblem.NoSuchModel;
    }
}

/// <summary>A studio as it is written down.</summary>
/// <param name="StudioId">Which studio.</param>
/// <param name="Version">The version that was on the screen.</param>
/// <param name="Name">Its name.</param>
/// <param name="Teachers">Who teaches there, with commas between.</param>
/// <param name="Colour">The colour that is asked for.</param>
/// <param name="Ribbon">The ribbon and elastic that are asked for.</param>
/// <param name="OtherWishes">What else is asked for.</param>
/// <param name="AskedModelIds">Models that are asked for.</param>
/// <param name="UnwantedModelIds">Models that are not wanted.</param>
public sealed record DescribeStudioRequest(
    Guid StudioId, int Version, string Name, string Teachers, string Colour, string Ribbon, string OtherWishes,
    IReadOnlyList<Guid> AskedModelIds, IReadOnlyList<Guid> UnwantedModelIds);

/// <summary>How changing it ended.</summary>
[JsonDerivedType(typeof(Kept), "kept")]
[JsonDerivedType(typeof(Invalid), "invalid")]
[JsonDerivedType(typeof(ChangedMeanwhile), "changed-meanwhile")]
public abstract record DescribeStudioOutcome
{
    private DescribeStudioOutcome()
    {
    }

    /// <summary>It is kept.</summary>
    public sealed record Kept : DescribeStudioOutcome;

    /// <summary>Something is missing or cannot be.</summary>
    public sealed record Invalid(StudioProblem Problem) : DescribeStudioOutcome, IRefusal;

    /// <summary>Another tablet changed it since it was shown, or it is no longer on file.</summary>
    public sealed record ChangedMeanwhile : DescribeStudioOutcome, IRefusal;
}
