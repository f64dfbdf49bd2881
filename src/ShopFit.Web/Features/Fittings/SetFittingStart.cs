using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Keeps what is asked before the first reading: a first pair or not, what is sore, what the teacher said.</summary>
public sealed class SetFittingStart(ShopWrites writes)
{
    public Task<SetFittingStartOutcome> RunAsync(Actor actor, Guid commandId, SetFittingStartRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<SetFittingStartOutcome>(actor, commandId, nameof(SetFittingStart), async (db, ct) =>
        {
            var fitting = await db.Fittings.SingleOrDefaultAsync(row => row.Id == request.FittingId, ct);
            if (fitting is not { ClosedAt: null })
            {
                return new SetFittingStartOutcome.NotOpen();
            }

            if (fitting.Version != request.Version)
            {
                return new SetFittingStartOutcome.ChangedMeanwhile();
            }

            fitting.Start(request.FirstPair, request.SoreLeft, request.SoreRight, request.SkinBroken, request.TeacherAgreedOn);
            return new SetFittingStartOutcome.Kept(fitting.Version);
        }, cancellationToken);
}

/// <summary>The start of a fitting as the fitter sees it.</summary>
/// <param name="FittingId">Which fitting.</param>
/// <param name="Version">The version that was on the screen.</param>
/// <param name="FirstPair">Her first pair of this kind.</param>
/// <param name="SoreLeft">Something on the left foot is sore today.</param>
/// <param name="SoreRight">Something on the right foot is sore today.</param>
/// <param name="SkinBroken">Skin is broken somewhere.</param>
/// <param name="TeacherAgreedOn">When the teacher said yes to a first pair.</param>
public sealed record SetFittingStartRequest(
    Guid FittingId, int Version, bool FirstPair, bool SoreLeft, bool SoreRight, bool SkinBroken, DateOnly? TeacherAgreedOn);

/// <summary>How keeping it ended.</summary>
[JsonDerivedType(typeof(Kept), "kept")]
[JsonDerivedType(typeof(NotOpen), "not-open")]
[JsonDerivedType(typeof(ChangedMeanwhile), "changed-meanwhile")]
public abstract record SetFittingStartOutcome
{
    private SetFittingStartOutcome()
    {
    }

    /// <summary>It is kept.</summary>
    public sealed record Kept(int Version) : SetFittingStartOutcome;

    /// <summary>The fitting is closed, or there is none.</summary>
    public sealed record NotOpen : SetFittingStartOutcome, IRefusal;

    /// <summary>Another tablet changed it since it was shown.</summary>
    public sealed record ChangedMeanwhile : SetFittingStartOutcome, IRefusal;
}
