using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Says how a model is made and whether its maker still makes it.</summary>
/// <remarks>A model that is made no longer is proposed only while a pair of it stands on the shelf.</remarks>
public sealed class DescribeModel(ShopWrites writes)
{
    /// <summary>The ways in which shoes are made.</summary>
    public static readonly IReadOnlyList<string> Constructions = ["paste", "moulded", "soft"];

    /// <param name="actor">Who says so.</param>
    /// <param name="commandId">Key of the command.</param>
    /// <param name="modelId">Which model.</param>
    /// <param name="construction">One of <see cref="Constructions"/>; null where nobody knows.</param>
    /// <param name="discontinued">Whether it is made no longer.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    /// <exception cref="NotPermittedException">The actor is no manager.</exception>
    public Task<DescribeModelOutcome> RunAsync(Actor actor, Guid commandId, Guid modelId, string? construction, bool discontinued, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<DescribeModelOutcome>(actor, commandId, nameof(DescribeModel), async (db, ct) =>
        {
            if (construction is not null && !Constructions.Contains(construction, StringComparer.Ordinal))
            {
                return new DescribeModelOutcome.UnknownConstruction(construction);
            }

            if (await db.ShoeModels.SingleOrDefaultAsync(row => row.Id == modelId, ct) is not { } model)
            {
                return new DescribeModelOutcome.Gone();
            }

            model.Describe(construction, discontinued);
            await CatalogueVersion.RaiseAsync(db, ct);
            return new DescribeModelOutcome.Described();
        }, cancellationToken);
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Described), "described")]
[JsonDerivedType(typeof(UnknownConstruction), "unknown-construction")]
[JsonDerivedType(typeof(Gone), "gone")]
public abstract record DescribeModelOutcome
{
    private DescribeModelOutcome()
    {
    }

    /// <summary>It is on file.</summary>
    public sealed record Described : DescribeModelOutcome;

    /// <summary>Shoes are not made like that.</summary>
    public sealed record UnknownConstruction(string Construction) : DescribeModelOutcome, IRefusal;

    /// <summary>There is no such model.</summary>
    public sealed record Gone : DescribeModelOutcome, IRefusal;
}
