using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Fittings;

/// <summary>All that was read of a dancer's feet: today, and at the fittings before, oldest first.</summary>
/// <param name="Sex">Whom the feet are compared with; null where nobody said.</param>
/// <param name="AgeYears">Age today; null counts as grown.</param>
/// <param name="At">When today's fitting was opened.</param>
/// <param name="Today">What was read today, in the order in which it was read.</param>
/// <param name="Before">Closed fittings of the same dancer.</param>
public sealed record FittingEvidence(Sex? Sex, double? AgeYears, DateTimeOffset At, IReadOnlyList<Reading> Today, IReadOnlyList<PastReadings> Before)
{
    /// <summary>Reads it in an open context; null where there is no such fitting.</summary>
    public static async Task<FittingEvidence?> LoadAsync(ShopDbContext db, Guid fittingId, CancellationToken cancellationToken)
    {
        var fitting = await db.Fittings.AsNoTracking().SingleOrDefaultAsync(row => row.Id == fittingId, cancellationToken);
        if (fitting is null)
        {
            return null;
        }

        var before = fitting.DancerId is null
            ? []
            : await db.Fittings.AsNoTracking()
                .Where(row => row.DancerId == fitting.DancerId && row.Id != fittingId && row.ClosedAt != null && row.OpenedAt <= fitting.OpenedAt)
                .OrderBy(row => row.OpenedAt).ThenBy(row => row.Id)
                .ToListAsync(cancellationToken);
        var ids = before.Select(row => row.Id).Append(fittingId).ToList();
        var readings = await db.FittingReadings.AsNoTracking()
            .Where(row => ids.Contains(row.FittingId) && row.WithdrawnAt == null)
            .OrderBy(row => row.TakenAt).ThenBy(row => row.Id)
            .ToListAsync(cancellationToken);
        var byFitting = readings.ToLookup(row => row.FittingId, ReadingOf);

        return new(
            fitting.Sex,
            fitting.AgeYears,
            fitting.OpenedAt,
            [.. byFitting[fittingId]],
            [.. before.Select(row => new PastReadings(row.AgeYears, row.OpenedAt, [.. byFitting[row.Id]]))]);
    }

    /// <summary>A row as the fit model takes it.</summary>
    public static Reading ReadingOf(FittingReading row) => new(
        row.Foot,
        Traits.Find(row.Trait)?.Trait ?? throw new InvalidOperationException($"Reading {row.Id} is of an unknown trait."),
        row.Value,
        row.Unit,
        row.SizeSystem is null ? null : SizeSystem.Find(row.SizeSystem));
}

/// <summary>What was read at an earlier fitting.</summary>
/// <param name="AgeYears">Age then; null counts as grown.</param>
/// <param name="At">When.</param>
/// <param name="Readings">The readings that stand.</param>
public sealed record PastReadings(double? AgeYears, DateTimeOffset At, IReadOnlyList<Reading> Readings);
