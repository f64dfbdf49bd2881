using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Studios;

/// <summary>Puts a studio on file, by its name; what its teachers ask for is written down on its page.</summary>
public sealed class AddStudio(ShopWrites writes)
{
    /// <param name="actor">Who writes it down.</param>
    /// <param name="commandId">Key of the command; it becomes the key of the studio.</param>
    /// <param name="name">Its name.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    public Task<AddStudioOutcome> RunAsync(Actor actor, Guid commandId, string name, CancellationToken cancellationToken) =>
        writes.RunAsync<AddStudioOutcome>(actor, commandId, nameof(AddStudio), async (db, ct) =>
        {
            if (string.IsNullOrWhiteSpace(name))
            {
                return new AddStudioOutcome.Invalid(StudioProblem.NameMissing);
            }

            if (name.Length > Studio.LongestName)
            {
                return new AddStudioOutcome.Invalid(StudioProblem.NameTooLong);
            }

            var key = Studio.KeyOf(name);
            if (await db.Studios.AnyAsync(row => row.NameKey == key, ct))
            {
                return new AddStudioOutcome.Invalid(StudioProblem.NameTaken);
            }

            db.Studios.Add(Studio.Of(commandId, actor.ShopId, name));
            return new AddStudioOutcome.Added(commandId);
        }, cancellationToken);
}

/// <summary>How putting it on file ended.</summary>
[JsonDerivedType(typeof(Added), "added")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record AddStudioOutcome
{
    private AddStudioOutcome()
    {
    }

    /// <summary>On file.</summary>
    public sealed record Added(Guid StudioId) : AddStudioOutcome;

    /// <summary>It cannot be.</summary>
    public sealed record Invalid(StudioProblem Problem) : AddStudioOutcome, IRefusal;
}
