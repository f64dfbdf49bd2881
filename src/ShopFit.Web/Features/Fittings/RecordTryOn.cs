using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.TryOns;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Writes down that a pair was put on, and what was seen of it: one row stands for each pair.</summary>
/// <remarks>
/// Each further thing that is said withdraws the row that stands and appends a whole one, so that nothing is edited and two tablets
/// add to the same pair. What is null in the request stays as it was said before.
/// </remarks>
public sealed class RecordTryOn(ShopWrites writes, ShoesInMemory shoesInMemory, TimeProvider clock)
{
    /// <summary>Longest note, letters.</summary>
    public const int LongestNote = 1_000;

    /// <param name="actor">Who saw it.</param>
    /// <param name="commandId">Key of the command; it becomes the key of the row.</param>
    /// <param name="request">What was seen.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    public Task<RecordTryOnOutcome> RunAsync(Actor actor, Guid commandId, RecordTryOnRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<RecordTryOnOutcome>(
            actor,
            commandId,
            nameof(RecordTryOn),
            async (db, stop) => await ApplyAsync(db, actor, commandId, request, await shoesInMemory.SeeAsync(db, stop), clock.GetUtcNow(), stop),
            cancellationToken);

    /// <summary>Writes it down in the transaction of an action.</summary>
    internal static async Task<RecordTryOnOutcome> ApplyAsync(
        ShopDbContext db, Actor actor, Guid commandId, RecordTryOnRequest request, ShoesOnFile shoes, DateTimeOffset now, CancellationToken cancellationToken)
    {
        var fitting = await db.Fittings.AsNoTracking().SingleOrDefaultAsync(row => row.Id == request.FittingId, cancellationToken);
        if (fitting is not { ClosedAt: null })
        {
            return new RecordTryOnOutcome.NotOpen();
        }

        if (shoes.Find(request.SizeId)?.Kind != fitting.Kind)
        {
            return new RecordTryOnOutcome.NoSuchPair();
        }

        if (request.Pads is { } pads && (pads.Distinct().Count() < pads.Count || pads.Any(pad => shoes.Numbers.FindPad(pad.Pad) is null)))
        {
            return new RecordTryOnOutcome.Invalid(TryOnProblem.Pads);
        }

        if (!(request.Tags ?? []).All(TryOnTags.Known))
        {
            return new RecordTryOnOutcome.Invalid(TryOnProblem.Tag);
        }

        if (request.Answers is { } answers
            && (answers.DistinctBy(given => (given.Foot, given.Check)).Count() < answers.Count
                || answers.Any(given => given.Answer is < 0 or > 2 || !Enum.IsDefined(given.Foot) || shoes.Numbers.FindCheck(given.Check) is null)))
        {
            return new RecordTryOnOutcome.Invalid(TryOnProblem.Answer);
        }

        if (request.Note?.Trim().Length > LongestNote)
        {
            return new RecordTryOnOutcome.Invalid(TryOnProblem.NoteTooLong);
        }

        var standing = await db.FittingTryOns
            .Where(row => row.FittingId == request.FittingId && row.SizeId == request.SizeId && row.WithdrawnAt == null)
            .OrderBy(row => row.TriedAt).ThenBy(row => row.Id)
            .ToListAsync(cancellationToken);

        // What is on the feet already may still be told; nothing new is put on.
        if (standing.Count is 0 && TryOnToday.Bars(fitting) is { } bar)
        {
            return new RecordTryOnOutcome.NotToday(bar);
        }

        if (standing is [.., var before])
        {
            if (request.SaysNothing)
            {
                return new RecordTryOnOutcome.Recorded();
            }

            standing.ForEach(row => row.Withdraw(now));
            db.FittingTryOns.Add(before.Then(commandId, actor, now, request));
        }
        else
        {
            db.FittingTryOns.Add(FittingTryOn.Of(
                commandId, actor, request.FittingId, request.SizeId, now, request.Fits, PadsAsJson.Write(request.Pads ?? []), request.Note ?? "", request.Tags ?? [], request.Answers));
        }

        return new RecordTryOnOutcome.Recorded();
    }
}

/// <summary>A pair on two feet. What is null, or not named, stays as it was said before.</summary>
/// <param name="FittingId">At which fitting.</param>
/// <param name="SizeId">Which pair.</param>
/// <param name="Fits">True: with these pads. False: with no allowed set. Null: nobody says just now.</param>
/// <param name="Pads">Pads that are under the feet.</param>
/// <param name="Tags">Tags that are set, codes of <see cref="TryOnTags"/>.</param>
/// <param name="TagsTakenBack">Tags that are taken back.</param>
/// <param name="Note">The fitter's own words.</param>
/// <param name="Answers">Answers to checks; one of a check and foot takes the place of the earlier.</param>
/// <param name="AnswersTakenBack">Checks of a foot whose answer is taken back.</param>
public sealed record RecordTryOnRequest(
    Guid FittingId,
    Guid SizeId,
    bool? Fits = null,
    IReadOnlyList<PadUnderFoot>? Pads = null,
    IReadOnlyList<string>? Tags = null,
    IReadOnlyList<string>? TagsTakenBack = null,
    string? Note = null,
    IReadOnlyList<CheckAnswer>? Answers = null,
    IReadOnlyList<CheckOfFoot>? AnswersTakenBack = null)
{
    /// <summary>Whether it only says that the pair was put on.</summary>
    public bool SaysNothing => Fits is null && Pads is null && Note is null && Tags is not { Count: > 0 } && TagsTakenBack is not { Count: > 0 }
        && Answers is not { Count: > 0 } && AnswersTakenBack is not { Count: > 0 };
}

/// <summary>What is wrong with what was said of a pair.</summary>
public enum TryOnProblem
{
    /// <summary>A pad that the shop does not have, or one twice under a foot.</summary>
    Pads,

    /// <summary>A tag that does not exist.</summary>
    Tag,

    /// <summary>An answer to a check that does not exist, twice, or outside 0 to 2.</summary>
    Answer,

    /// <summary>The note is too long.</summary>
    NoteTooLong,
}

/// <summary>How writing it down ended.</summary>
[JsonDerivedType(typeof(Recorded), "recorded")]
[JsonDerivedType(typeof(NotOpen), "not-open")]
[JsonDerivedType(typeof(NoSuchPair), "no-such-pair")]
[JsonDerivedType(typeof(NotToday), "not-today")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record RecordTryOnOutcome
{
    private RecordTryOnOutcome()
    {
    }

    /// <summary>It is kept.</summary>
    public sealed record Recorded : RecordTryOnOutcome;

    /// <summary>The fitting is closed, or there is none.</summary>
    public sealed record NotOpen : RecordTryOnOutcome, IRefusal;

    /// <summary>There is no such pair of this kind.</summary>
    public sealed record NoSuchPair : RecordTryOnOutcome, IRefusal;

    /// <summary>Nothing is put on today.</summary>
    public sealed record NotToday(NoTryOn Why) : RecordTryOnOutcome, IRefusal;

    /// <summary>Something in it cannot be.</summary>
    public sealed record Invalid(TryOnProblem Problem) : RecordTryOnOutcome, IRefusal;
}
