using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.TryOns;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What was fetched and tried on at a fitting.</summary>
/// <param name="Walks">The walks that stand, in their order.</param>
/// <param name="TryOns">The pairs that were tried on, in the order in which each was first put on.</param>
/// <param name="LastAt">When something of it was last entered or taken back; null while nothing was.</param>
public sealed record SeenTries(IReadOnlyList<SeenWalk> Walks, IReadOnlyList<SeenTryOn> TryOns, DateTimeOffset? LastAt)
{
    /// <summary>Nothing fetched, nothing tried.</summary>
    public static SeenTries None { get; } = new([], [], null);

    /// <summary>Pairs that were fetched and wait to be tried on, in the order in which they were fetched.</summary>
    public IReadOnlyList<Guid> Waiting => [.. Walks.SelectMany(walk => walk.SizeIds).Distinct().Where(sizeId => Of(sizeId) is null)];

    /// <summary>What was seen of a pair; null where it was not tried on.</summary>
    public SeenTryOn? Of(Guid sizeId) => TryOns.FirstOrDefault(tryOn => tryOn.SizeId == sizeId);

    /// <summary>Reads it in an open context.</summary>
    public static async Task<SeenTries> LoadAsync(ShopDbContext db, Guid fittingId, CancellationToken cancellationToken)
    {
        var walks = await db.FittingWalks.AsNoTracking()
            .Where(row => row.FittingId == fittingId)
            .OrderBy(row => row.WalkedAt).ThenBy(row => row.Id)
            .ToListAsync(cancellationToken);
        var rows = await db.FittingTryOns.AsNoTracking()
            .Where(row => row.FittingId == fittingId)
            .OrderBy(row => row.TriedAt).ThenBy(row => row.Id)
            .ToListAsync(cancellationToken);
        var firstPutOn = rows.GroupBy(row => row.SizeId).ToDictionary(pair => pair.Key, pair => pair.First());
        var tryOns = rows.Where(row => row.WithdrawnAt is null)
            .GroupBy(row => row.SizeId)
            .Select(pair => pair.Last())
            .OrderBy(row => firstPutOn[row.SizeId].TriedAt).ThenBy(row => firstPutOn[row.SizeId].Id)
            .Select(row => new SeenTryOn(row.Id, row.SizeId, firstPutOn[row.SizeId].TriedAt, row.TriedAt, row.Fits, PadsAsJson.Read(row.PadsJson), row.Tags(), row.Note, row.Answers()));
        return new(
            [.. walks.Where(row => row.WithdrawnAt is null).Select(row => new SeenWalk(row.Id, row.WalkedAt, row.SizeIds()))],
            [.. tryOns],
            walks.Select(row => row.WithdrawnAt ?? row.WalkedAt).Concat(rows.Select(row => row.WithdrawnAt ?? row.TriedAt)).Select(at => (DateTimeOffset?)at).Max());
    }
}

/// <summary>One walk with its key.</summary>
public sealed record SeenWalk(Guid Id, DateTimeOffset At, IReadOnlyList<Guid> SizeIds);

/// <summary>What was seen of one pair on two feet.</summary>
/// <param name="Id">Key of the row that stands.</param>
/// <param name="SizeId">Which pair.</param>
/// <param name="FirstAt">When it was first put on.</param>
/// <param name="At">When something was last said of it.</param>
/// <param name="Fits">True: with these pads. False: with no allowed set. Null: nobody has said.</param>
/// <param name="Pads">Pads that were under the feet.</param>
/// <param name="Tags">Codes of <see cref="TryOnTags"/>.</param>
/// <param name="Note">In the fitter's words; may be empty.</param>
/// <param name="Answers">Answers to the checks.</param>
public sealed record SeenTryOn(Guid Id, Guid SizeId, DateTimeOffset FirstAt, DateTimeOffset At, bool? Fits, IReadOnlyList<PadUnderFoot> Pads, IReadOnlyList<string> Tags, string Note, IReadOnlyList<CheckAnswer> Answers);
