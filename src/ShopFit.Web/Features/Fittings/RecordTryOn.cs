using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Scoring;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Writes down that a pair was tried on, and whether it fits.</summary>
public sealed class RecordTryOn(ShopWrites writes, TimeProvider clock)
{
    /// <param name="actor">Who saw it.</param>
    /// <param name="commandId">Key of the command; it becomes the key of the row.</param>
    /// <param name="request">What was seen.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    public Task<RecordTryOnOutcome> RunAsync(Actor actor, Guid commandId, RecordTryOnRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<RecordTryOnOutcome>(actor, commandId, nameof(RecordTryOn), async (db, ct) =>
        {
            if (!await db.Fittings.AnyAsync(row => row.Id == request.FittingId && row.ClosedAt == null, ct))
            {
                return new RecordTryOnOutcome.NotOpen();
            }

            if (!await db.ShoeSizes.AnyAsync(row => row.Id == request.SizeId, ct))
            {
                return new RecordTryOnOutcome.NoSuchPair();
            }

            db.FittingTryOns.Add(FittingTryOn.Of(commandId, actor, request.FittingId, request.SizeId, clock.GetUtcNow(), request.Fits, PadsAsJson.Write(request.Pads)));
            return new RecordTryOnOutcome.Recorded();
        }, cancellationToken);
}

/// <summary>A pair on two feet.</summary>
/// <param name="FittingId">At which fitting.</param>
/// <param name="SizeId">Which pair.</param>
/// <param name="Fits">True: with these pads. False: with no allowed set. Null: nobody has said.</param>
/// <param name="Pads">Pads that were under the feet.</param>
public sealed record RecordTryOnRequest(Guid FittingId, Guid SizeId, bool? Fits, IReadOnlyList<PadUnderFoot> Pads);

/// <summary>How writing it down ended.</summary>
[JsonDerivedType(typeof(Recorded), "recorded")]
[JsonDerivedType(typeof(NotOpen), "not-open")]
[JsonDerivedType(typeof(NoSuchPair), "no-such-pair")]
public abstract record RecordTryOnOutcome
{
    private RecordTryOnOutcome()
    {
    }

    /// <summary>It is kept.</summary>
    public sealed record Recorded : RecordTryOnOutcome;

    /// <summary>The fitting is closed, or there is none.</summary>
    public sealed record NotOpen : RecordTryOnOutcome, IRefusal;

    /// <summary>There is no such pair.</summary>
    public sealed record NoSuchPair : RecordTryOnOutcome, IRefusal;
}
