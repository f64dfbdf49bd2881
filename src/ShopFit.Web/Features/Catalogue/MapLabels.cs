using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Says what the words on a maker's labels mean, for all its models at once.</summary>
/// <remarks>What a label alone says of a shoe follows from it whenever a form is read; measured parts and the maker's own data stay as they are.</remarks>
public sealed class MapLabels(ShopWrites writes, TimeProvider clock)
{
    /// <summary>The furthest that labels can run ahead of the foot or behind it, mm *(cp)*: six sizes of a third of an inch.</summary>
    public const double FurthestAhead = 50;

    private const int LongestWord = 40;
    private const int MostWords = 1_000;

    /// <param name="actor">Who says so.</param>
    /// <param name="commandId">Key of the command; it becomes the key of the mapping.</param>
    /// <param name="makerId">Whose labels.</param>
    /// <param name="meanings">What they mean: all of it, in place of what was said before.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    /// <exception cref="NotPermittedException">The actor is no manager.</exception>
    public Task<MapLabelsOutcome> RunAsync(Actor actor, Guid commandId, Guid makerId, LabelMeanings meanings, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<MapLabelsOutcome>(actor, commandId, nameof(MapLabels), async (db, ct) =>
        {
            if (!await db.Makers.AnyAsync(maker => maker.Id == makerId, ct))
            {
                return new MapLabelsOutcome.Gone();
            }

            if (ProblemOf(meanings) is { } problem)
            {
                return new MapLabelsOutcome.Invalid(problem.Word, problem.Fault);
            }

            var inForce = await db.LabelMappings.AsNoTracking().Where(row => row.MakerId == makerId && row.WithdrawnAt == null)
                .OrderByDescending(row => row.MappedAt).ThenByDescending(row => row.Id).Select(row => row.MeaningsJson).FirstOrDefaultAsync(ct);
            if (LabelMapping.Write(meanings) == (inForce ?? LabelMapping.Write(LabelMeanings.None)))
            {
                return new MapLabelsOutcome.Unchanged();
            }

            db.LabelMappings.Add(LabelMapping.Of(commandId, actor, makerId, meanings, clock.GetUtcNow()));
            await CatalogueVersion.RaiseAsync(db, ct);
            return new MapLabelsOutcome.Mapped(commandId);
        }, cancellationToken);

    /// <summary>What is wrong with the meanings; null where nothing is.</summary>
    internal static (string Word, LabelFault Fault)? ProblemOf(LabelMeanings meanings)
    {
        var steps = meanings.Widths.Select(width => (Word: width.Key, Step: width.Value))
            .Concat(meanings.Options.Select(option => (Word: option.Key, Step: option.Value.BoxStep)))
            .Concat(meanings.Options.Select(option => (Word: option.Key, Step: option.Value.VampStep)))
            .ToList();
        if (steps.Count + meanings.Shanks.Count + meanings.Systems.Count > MostWords)
        {
            return ("", LabelFault.TooManyWords);
        }

        if (steps.Select(step => step.Word).Concat(meanings.Shanks.Keys).FirstOrDefault(word => word.Length > LongestWord) is { } tooLong)
        {
            return (tooLong, LabelFault.WordTooLong);
        }

        foreach (var (word, step) in steps)
        {
            if (!(Math.Abs(step) <= LabelMeanings.LargestStep))
            {
                return (word, LabelFault.Step);
            }
        }

        foreach (var (word, points) in meanings.Shanks)
        {
            if (!(points is >= 0 and <= 10))
            {
                return (word, LabelFault.ShankPoints);
            }
        }

        foreach (var (id, meaning) in meanings.Systems)
        {
            if (SizeSystem.Find(id) is null || SizeSystem.Find(meaning.SystemId) is not { } system)
            {
                return (id, LabelFault.System);
            }

            if (meaning.LabelLessGauge is { } sizes && !(Math.Abs(sizes * LabelMeanings.MillimetresASize(system)) <= FurthestAhead))
            {
                return (id, LabelFault.Ahead);
            }
        }

        return null;
    }
}

/// <summary>What can be wrong with the meaning of a word.</summary>
public enum LabelFault
{
    /// <summary>A step is not −2 to +2.</summary>
    Step,

    /// <summary>Shank points are not 0 to 10.</summary>
    ShankPoints,

    /// <summary>There is no such size system.</summary>
    System,

    /// <summary>Labels cannot run so far ahead.</summary>
    Ahead,

    /// <summary>A word is longer than a label's words are.</summary>
    WordTooLong,

    /// <summary>There are more words than any maker has.</summary>
    TooManyWords,
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Mapped), "mapped")]
[JsonDerivedType(typeof(Unchanged), "unchanged")]
[JsonDerivedType(typeof(Invalid), "invalid")]
[JsonDerivedType(typeof(Gone), "gone")]
public abstract record MapLabelsOutcome
{
    private MapLabelsOutcome()
    {
    }

    /// <summary>It holds from now on.</summary>
    public sealed record Mapped(Guid MappingId) : MapLabelsOutcome;

    /// <summary>It held already.</summary>
    public sealed record Unchanged : MapLabelsOutcome, IRefusal;

    /// <summary>A word cannot mean that.</summary>
    public sealed record Invalid(string Word, LabelFault Fault) : MapLabelsOutcome, IRefusal;

    /// <summary>There is no such maker.</summary>
    public sealed record Gone : MapLabelsOutcome, IRefusal;
}
