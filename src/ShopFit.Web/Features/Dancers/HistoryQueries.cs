using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Arrival;
using ShopFit.Web.Features.Fittings;

namespace ShopFit.Web.Features.Dancers;

/// <summary>What the fittings of a dancer told, one after the other. Reads only.</summary>
public sealed class HistoryQueries(ShopContexts contexts, FittingQueries fittings)
{
    // What is shown of a foot through the years; the rest stands with its fitting.
    private static readonly Trait[] Shown = [Trait.Length, Trait.HeelToBall, Trait.BallBreadth, Trait.BallGirth, Trait.HeelBreadth];

    /// <summary>The fittings of one dancer, the latest first.</summary>
    public async Task<IReadOnlyList<Visit>> OfDancerAsync(Guid dancerId, int count, CancellationToken cancellationToken)
    {
        var rows = await fittings.OfDancerAsync(dancerId, count, cancellationToken);
        var ids = rows.Select(row => row.Id).ToList();
        await using var db = await contexts.OpenAsync(cancellationToken);
        var readings = (await db.FittingReadings.AsNoTracking().Where(row => ids.Contains(row.FittingId) && row.WithdrawnAt == null).ToListAsync(cancellationToken))
            .ToLookup(row => row.FittingId, FittingEvidence.ReadingOf);
        var tried = (await (
            from tryOn in db.FittingTryOns
            join item in db.Items on tryOn.SizeId equals item.Id
            where ids.Contains(tryOn.FittingId) && tryOn.WithdrawnAt == null
            orderby tryOn.TriedAt, tryOn.Id
            select new { tryOn.FittingId, item.Name, tryOn.Fits, tryOn.Note }).ToListAsync(cancellationToken))
            .ToLookup(row => row.FittingId, row => new TriedPair(row.Name, row.Fits, row.Note));
        var decisions = (await db.FittingDecisions.AsNoTracking()
            .Where(row => ids.Contains(row.FittingId) && row.WithdrawnAt == null)
            .OrderBy(row => row.DecidedAt)
            .Select(row => new { row.FittingId, row.Why, row.AdviceNote, row.OverruleReason })
            .ToListAsync(cancellationToken))
            .ToLookup(row => row.FittingId);
        var answers = (await db.ArrivalAnswers.AsNoTracking()
            .Where(row => ids.Contains(row.FittingId) && row.WithdrawnAt == null)
            .OrderBy(row => row.SaidAt).ThenBy(row => row.Id)
            .Select(row => new { row.FittingId, row.Question, row.Answer })
            .ToListAsync(cancellationToken))
            .ToLookup(row => row.FittingId);

        // Oldest first, so that each number meets the one before it.
        var last = new Dictionary<(Side, Trait), double>();
        var visits = new List<Visit>();
        foreach (var row in rows.Reverse())
        {
            var decision = decisions[row.Id].LastOrDefault();
            visits.Add(new Visit(
                row,
                decision?.Why ?? "",
                string.Join(" · ", new[] { decision?.AdviceNote, decision?.OverruleReason }.Where(words => !string.IsNullOrEmpty(words))),
                [.. answers[row.Id].Where(answer => answer.Question == ArrivalQuestions.LastPair.Id).Select(answer => answer.Answer)],
                answers[row.Id].LastOrDefault(answer => answer.Question == ArrivalQuestions.LastPairNote.Id)?.Answer ?? "",
                [.. tried[row.Id]],
                Numbers([.. readings[row.Id]], last)));
        }

        visits.Reverse();
        return visits;
    }

    private static List<VisitNumber> Numbers(IReadOnlyList<Reading> readings, Dictionary<(Side, Trait), double> last)
    {
        var numbers = new List<VisitNumber>();
        foreach (var trait in Shown)
        {
            foreach (var foot in new[] { Side.Left, Side.Right })
            {
                var read = readings.Where(reading => reading.Foot == foot && reading.Trait == trait && reading.Unit is not ReadingUnit.Word)
                    .Select(reading => reading.InTraitUnit()).OfType<double>().ToList();
                if (read.Count > 0)
                {
                    var mean = read.Average();
                    numbers.Add(new VisitNumber(foot, trait, mean, last.TryGetValue((foot, trait), out var before) ? mean - before : null));
                    last[(foot, trait)] = mean;
                }
            }
        }

        return numbers;
    }
}
