using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Ends a fitting without a sale: come back, not today, or a pair to be ordered. A sale ends it by itself.</summary>
public sealed class DecideFitting(ShopWrites writes, ShoesInMemory shoesInMemory, TimeProvider clock)
{
    /// <summary>Longest word of the fitter's own, as the database keeps it.</summary>
    public const int LongestWhy = 1000;

    private const int MostYearsAhead = 2;

    /// <summary>The latest day to come back on, or to wait for a pair.</summary>
    public static DateOnly Latest(DateOnly today) => today.AddYears(MostYearsAhead);

    public Task<DecideFittingOutcome> RunAsync(Actor actor, Guid commandId, DecideFittingRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<DecideFittingOutcome>(
            actor,
            commandId,
            nameof(DecideFitting),
            async (db, stop) => await ApplyAsync(db, actor, commandId, request, await shoesInMemory.SeeAsync(db, stop), clock.GetUtcNow(), stop),
            cancellationToken);

    /// <summary>Ends it in the transaction of an action.</summary>
    internal static async Task<DecideFittingOutcome> ApplyAsync(
        ShopDbContext db, Actor actor, Guid commandId, DecideFittingRequest request, ShoesOnFile shoes, DateTimeOffset now, CancellationToken cancellationToken)
    {
        if (Check(request) is { } problem)
        {
            return new DecideFittingOutcome.Invalid(problem);
        }

        var fitting = await db.Fittings.SingleOrDefaultAsync(row => row.Id == request.FittingId, cancellationToken);
        if (fitting is not { ClosedAt: null })
        {
            return new DecideFittingOutcome.NotOpen();
        }

        if (request.SizeId is { } sizeId && !await db.ShoeSizes.AnyAsync(row => row.Id == sizeId, cancellationToken))
        {
            return new DecideFittingOutcome.Invalid(DecideProblem.PairMissing);
        }

        var today = ShopTime.Of(await db.Shops.AsNoTracking().SingleAsync(row => row.Id == actor.ShopId, cancellationToken)).Day(now);
        if (request.DueOn < today || request.DueOn > Latest(today))
        {
            return new DecideFittingOutcome.Invalid(DecideProblem.DayOutOfRange);
        }

        db.FittingDecisions.Add(FittingDecision.Of(
            commandId, actor, request.FittingId, now, request.Kind, request.Why, request.SizeId, reason: request.Reason ?? "", dueOn: request.Kind is DecisionKinds.NotToday ? null : request.DueOn));
        fitting.Close(now);
        await KeepFitAsync(db, actor, request, shoes, now, cancellationToken);
        return new DecideFittingOutcome.Decided();
    }

    // A pair that was chosen and not bought says as much about the advice as one that was.
    private static async Task KeepFitAsync(
        ShopDbContext db, Actor actor, DecideFittingRequest request, ShoesOnFile shoes, DateTimeOffset now, CancellationToken cancellationToken)
    {
        var chosen = await FittingChoice.NewestAsync(db, request.FittingId, cancellationToken);
        if ((request.SizeId ?? chosen?.SizeId) is not { } sizeId
            || shoes.Find(sizeId) is not { } pair
            || await FittingQuestion.LoadAsync(db, shoes, request.FittingId, cancellationToken) is not { } question)
        {
            return;
        }

        var pads = chosen?.SizeId == sizeId ? chosen.Chosen().Pads : null;
        db.FittingSnapshots.Add(FitAtClosing.Snapshot(actor, request.FittingId, now, shoes, FitAtClosing.Judge(question, shoes, pair, pads), FitAtClosing.Suggested(question, shoes, chosen)));
    }

    private static DecideProblem? Check(DecideFittingRequest request) => request switch
    {
        { Kind: not (DecisionKinds.ComeBack or DecisionKinds.NotToday or DecisionKinds.Order) } => DecideProblem.KindUnknown,
        { Kind: DecisionKinds.NotToday, Reason: null or "" } => DecideProblem.ReasonMissing,
        { Kind: DecisionKinds.NotToday, Reason: var reason } when !NotTodayReasons.All.Contains(reason) => DecideProblem.ReasonMissing,
        { Kind: DecisionKinds.ComeBack, DueOn: null } when string.IsNullOrWhiteSpace(request.Why) => DecideProblem.WhyMissing,
        { Kind: DecisionKinds.Order, SizeId: null } => DecideProblem.PairMissing,
        { Why.Length: > LongestWhy } => DecideProblem.WhyTooLong,
        _ => null,
    };
}

/// <summary>An ending as the fitter chose it.</summary>
/// <param name="FittingId">Which fitting.</param>
/// <param name="Kind">One of <see cref="DecisionKinds"/>, but not a sale.</param>
/// <param name="Reason">One of <see cref="NotTodayReasons"/> where nothing was bought.</param>
/// <param name="Why">In the fitter's words: what to come back for, which changes the maker is asked for.</param>
/// <param name="SizeId">The pair to be ordered.</param>
/// <param name="DueOn">The day to come back on, or until which the pair is wished for; null where none was said.</param>
public sealed record DecideFittingRequest(Guid FittingId, string Kind, string? Reason, string Why, Guid? SizeId = null, DateOnly? DueOn = null);

/// <summary>What is wrong with an ending.</summary>
public enum DecideProblem
{
    /// <summary>Not one of the endings.</summary>
    KindUnknown,

    /// <summary>Not today needs its reason.</summary>
    ReasonMissing,

    /// <summary>Come back needs its day, or what for.</summary>
    WhyMissing,

    /// <summary>The words are too long.</summary>
    WhyTooLong,

    /// <summary>The day lies behind, or too far ahead.</summary>
    DayOutOfRange,

    /// <summary>An order needs its pair.</summary>
    PairMissing,
}

/// <summary>How ending it ended.</summary>
[JsonDerivedType(typeof(Decided), "decided")]
[JsonDerivedType(typeof(NotOpen), "not-open")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record DecideFittingOutcome
{
    private DecideFittingOutcome()
    {
    }

    /// <summary>The fitting is closed.</summary>
    public sealed record Decided : DecideFittingOutcome;

    /// <summary>It was closed before, or there is none.</summary>
    public sealed record NotOpen : DecideFittingOutcome, IRefusal;

    /// <summary>Something is missing.</summary>
    public sealed record Invalid(DecideProblem Problem) : DecideFittingOutcome, IRefusal;
}
