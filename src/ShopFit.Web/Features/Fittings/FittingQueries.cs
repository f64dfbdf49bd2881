using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Arrival;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Fittings as the pages show them. Reads only.</summary>
public sealed class FittingQueries(ShopContexts contexts)
{
    private const double LongestDayHours = 25;

    /// <summary>One fitting with everything that was entered; null where there is none.</summary>
    public async Task<SeenFitting?> SeeAsync(Guid fittingId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var fitting = await db.Fittings.AsNoTracking().SingleOrDefaultAsync(row => row.Id == fittingId, cancellationToken);
        if (fitting is null || await FittingEvidence.LoadAsync(db, fittingId, cancellationToken) is not { } evidence)
        {
            return null;
        }

        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == fitting.ShopId, cancellationToken);
        var dancer = fitting.DancerId is null ? null : await db.Dancers.AsNoTracking().SingleOrDefaultAsync(row => row.Id == fitting.DancerId, cancellationToken);
        var studio = dancer?.StudioId is null ? null : await db.Studios.AsNoTracking().SingleOrDefaultAsync(row => row.Id == dancer.StudioId, cancellationToken);
        var arrival = await SeenArrival.LoadAsync(
            db, fitting, dancer?.Teacher ?? "", studio?.Teachers ?? "", ageToAsk: dancer is { BirthDate: null, SaidUnderAge: true }, cancellationToken);
        var readings = await db.FittingReadings.AsNoTracking()
            .Where(row => row.FittingId == fittingId)
            .OrderBy(row => row.TakenAt).ThenBy(row => row.Id)
            .ToListAsync(cancellationToken);
        var choice = await FittingChoice.NewestAsync(db, fittingId, cancellationToken);
        var tries = await SeenTries.LoadAsync(db, fittingId, cancellationToken);
        var pairsBefore = fitting.DancerId is null
            ? 0
            : await db.Sales.CountAsync(row => row.DancerId == fitting.DancerId && row.FittingId != null && row.FittingId != fittingId && row.VoidedAt == null, cancellationToken);

        return new SeenFitting
        {
            Id = fitting.Id,
            DancerId = fitting.DancerId,
            DancerName = dancer?.Name ?? "",
            KnownAs = dancer is null ? "" : dancer.KnownAs is { Length: > 0 } ? dancer.KnownAs : dancer.Name.Split(' ')[0],
            Studio = studio?.Name ?? "",
            Arrival = arrival,
            SiblingDrafts = await SiblingDraftsAsync(db, dancer, cancellationToken),
            Asked = await TeacherAsks.OfStudioAsync(db, studio, cancellationToken),
            Kind = fitting.Kind,
            FirstPair = fitting.FirstPair,
            SoreLeft = fitting.SoreLeft,
            SoreRight = fitting.SoreRight,
            SkinBroken = fitting.SkinBroken,
            TeacherAgreedOn = fitting.TeacherAgreedOn,
            Version = fitting.Version,
            OpenedAt = fitting.OpenedAt,
            ClosedAt = fitting.ClosedAt,
            SavedAt = readings.Select(row => row.WithdrawnAt ?? row.TakenAt).Append(choice?.ChosenAt ?? fitting.OpenedAt).Append(tries.LastAt ?? fitting.OpenedAt).Append(arrival.SavedAt ?? fitting.OpenedAt).Append(fitting.OpenedAt).Max(),
            TimesReopened = fitting.TimesReopened,
            PairsBefore = pairsBefore,
            Readings = [.. readings.Where(row => row.WithdrawnAt is null).Select(row => new SeenReading(row.Id, row.TakenAt, FittingEvidence.ReadingOf(row)))],
            Evidence = evidence,
            Tries = tries,
            Choice = choice is null ? null : new SeenChoice(choice.Id, choice.ChosenAt, choice.Chosen()),
            Decision = await DecisionAsync(db, fittingId, cancellationToken),
            Suggested = fitting.ClosedAt is null ? null : await SuggestedAsync(db, fittingId, cancellationToken),
            Time = ShopTime.Of(shop),
            Units = shop.Units,
            SizeSystem = shop.SizeSystemShown,
        };
    }

    private static async Task<IReadOnlyList<SiblingDraft>> SiblingDraftsAsync(ShopDbContext db, Dancer? dancer, CancellationToken cancellationToken)
    {
        if (dancer?.GuardianId is null)
        {
            return [];
        }

        var rows = await (
            from fitting in db.Fittings
            join other in db.Dancers on fitting.DancerId equals other.Id
            where fitting.ClosedAt == null && other.GuardianId == dancer.GuardianId && other.Id != dancer.Id
            orderby fitting.OpenedAt
            select new { fitting.Id, other.Name, other.KnownAs }).ToListAsync(cancellationToken);
        return [.. rows.Select(row => new SiblingDraft(row.Id, DancerRow.Called(row.Name, row.KnownAs)))];
    }

    /// <summary>Fittings that are open, the latest first.</summary>
    public async Task<IReadOnlyList<FittingRow>> OpenAsync(int count, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        return await RowsAsync(db, db.Fittings.Where(row => row.ClosedAt == null), count, cancellationToken);
    }

    /// <summary>Fittings that ended on the shop's day of that moment, the latest begun first.</summary>
    public async Task<IReadOnlyList<FittingRow>> EndedOnDayOfAsync(DateTimeOffset moment, int count, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        // A day is at most 25 hours long; which of these belong to it, the shop's own calendar says.
        var (from, to) = (moment.AddHours(-LongestDayHours), moment.AddHours(LongestDayHours));
        var rows = await RowsAsync(db, db.Fittings.Where(row => row.ClosedAt > from && row.ClosedAt < to), count, cancellationToken);
        return [.. rows.Where(row => row.Time.Day(row.ClosedAt!.Value) == row.Time.Day(moment))];
    }

    /// <summary>Fittings that ended in a wish for an order, the latest first.</summary>
    public async Task<IReadOnlyList<FittingRow>> WishesAsync(int count, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var wished = db.FittingDecisions.Where(decision => decision.Kind == DecisionKinds.Order && decision.WithdrawnAt == null).Select(decision => decision.FittingId);
        return await RowsAsync(db, db.Fittings.Where(row => wished.Contains(row.Id)), count, cancellationToken);
    }

    /// <summary>Fittings that ended with a day to come back on from that moment's day on, the nearest first.</summary>
    public async Task<IReadOnlyList<FittingRow>> ComingBackAsync(DateTimeOffset moment, int count, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var today = ShopTime.Of(await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken)).Day(moment);
        var next = await db.FittingDecisions
            .Where(decision => decision.Kind == DecisionKinds.ComeBack && decision.WithdrawnAt == null && decision.DueOn >= today)
            .OrderBy(decision => decision.DueOn)
            .Select(decision => decision.FittingId)
            .Take(count)
            .ToListAsync(cancellationToken);
        return [.. (await RowsAsync(db, db.Fittings.Where(row => next.Contains(row.Id)), count, cancellationToken)).OrderBy(row => row.Decision?.DueOn)];
    }

    /// <summary>The fittings of one dancer, the latest first.</summary>
    public async Task<IReadOnlyList<FittingRow>> OfDancerAsync(Guid dancerId, int count, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        return await RowsAsync(db, db.Fittings.Where(row => row.DancerId == dancerId), count, cancellationToken);
    }

    private static async Task<IReadOnlyList<FittingRow>> RowsAsync(ShopDbContext db, IQueryable<FittingRecord> fittings, int count, CancellationToken cancellationToken)
    {
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        var rows = await fittings.AsNoTracking().OrderByDescending(row => row.OpenedAt).Take(count).ToListAsync(cancellationToken);
        var ids = rows.Select(row => row.Id).ToList();
        var names = await db.Dancers.Where(row => rows.Select(fitting => fitting.DancerId).Contains(row.Id)).ToDictionaryAsync(row => row.Id, row => row.Name, cancellationToken);
        var readings = await db.FittingReadings
            .Where(row => ids.Contains(row.FittingId) && row.WithdrawnAt == null)
            .GroupBy(row => row.FittingId)
            .ToDictionaryAsync(group => group.Key, group => group.Count(), cancellationToken);
        var result = new List<FittingRow>();
        foreach (var row in rows)
        {
            result.Add(new FittingRow(
                row.Id,
                row.DancerId is { } dancerId ? names.GetValueOrDefault(dancerId, "") : "",
                row.Kind,
                row.OpenedAt,
                row.ClosedAt,
                readings.GetValueOrDefault(row.Id),
                row.ClosedAt is null ? null : await DecisionAsync(db, row.Id, cancellationToken),
                ShopTime.Of(shop)));
        }

        return result;
    }

    private static async Task<SeenSuggestion?> SuggestedAsync(ShopDbContext db, Guid fittingId, CancellationToken cancellationToken)
    {
        var newest = await db.FittingSnapshots.AsNoTracking().Where(row => row.FittingId == fittingId).OrderByDescending(row => row.Id).FirstOrDefaultAsync(cancellationToken);
        return newest is { SuggestedSizeId: { } sizeId, SuggestedChance: { } chance }
            ? new SeenSuggestion(await db.Items.Where(row => row.Id == sizeId).Select(row => row.Name).SingleAsync(cancellationToken), chance)
            : null;
    }

    private static async Task<SeenDecision?> DecisionAsync(ShopDbContext db, Guid fittingId, CancellationToken cancellationToken)
    {
        var decision = await db.FittingDecisions.AsNoTracking()
            .Where(row => row.FittingId == fittingId && row.WithdrawnAt == null)
            .OrderByDescending(row => row.DecidedAt)
            .FirstOrDefaultAsync(cancellationToken);
        if (decision is null)
        {
            return null;
        }

        var pair = decision.SizeId is null ? null : await db.Items.Where(row => row.Id == decision.SizeId).Select(row => row.Name).SingleOrDefaultAsync(cancellationToken);
        var paper = await db.Papers.Where(row => row.FittingId == fittingId && row.Kind == PaperKinds.TakeHomeSheet && db.Sales.Any(sale => sale.Id == row.SaleId && sale.VoidedAt == null)).OrderByDescending(row => row.MadeAt).Select(row => (Guid?)row.Id).FirstOrDefaultAsync(cancellationToken);
        return new SeenDecision(decision.Kind, decision.Reason, decision.Why, decision.DecidedAt, pair ?? "", paper) { DueOn = decision.DueOn };
    }
}

/// <summary>One line of a list of fittings.</summary>
public sealed record FittingRow(
    Guid Id, string DancerName, string Kind, DateTimeOffset OpenedAt, DateTimeOffset? ClosedAt, int Readings, SeenDecision? Decision, ShopTime Time);
