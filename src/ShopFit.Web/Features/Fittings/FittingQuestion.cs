using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.TryOns;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What a fitting asks of the shelf: its belief, what was tried, and every size of its kind.</summary>
/// <param name="Belief">The belief behind the question.</param>
/// <param name="Question">The question itself; a page changes what it asks for with <c>with</c>.</param>
public sealed record FittingQuestion(FittingBelief Belief, ShortlistQuestion Question)
{
    /// <summary>Reads it in an open context; null where there is no such fitting.</summary>
    public static async Task<FittingQuestion?> LoadAsync(ShopDbContext db, ShoesOnFile shoes, Guid fittingId, CancellationToken cancellationToken)
    {
        var fitting = await db.Fittings.AsNoTracking().SingleOrDefaultAsync(row => row.Id == fittingId, cancellationToken);
        if (fitting is null || await FittingEvidence.LoadAsync(db, fittingId, cancellationToken) is not { } evidence)
        {
            return null;
        }

        var tried = await db.FittingTryOns.AsNoTracking()
            .Where(row => row.FittingId == fittingId && row.WithdrawnAt == null)
            .OrderBy(row => row.TriedAt).ThenBy(row => row.Id)
            .ToListAsync(cancellationToken);
        // A pair that was only put on says nothing. What is said of a sore foot, and of a fit while one is sore, is kept and teaches nothing;
        // a pad or a check that the shop no longer has moves nothing.
        bool Teaches(CheckAnswer given) =>
            !(given.Foot is Side.Left ? fitting.SoreLeft : fitting.SoreRight) && shoes.Numbers.FindCheck(given.Check) is not null;
        var sore = fitting.SoreLeft || fitting.SoreRight;
        var tryOns = tried
            .Select(row => (Row: row, Shoe: shoes.Find(row.SizeId), Fits: sore ? null : row.Fits, Answers: row.Answers().Where(Teaches).ToList()))
            .Where(pair => pair.Shoe is not null && pair.Shoe.Kind == fitting.Kind && (pair.Fits is not null || pair.Answers.Count > 0))
            .Select(pair => new TryOn(pair.Shoe!.Sku, pair.Fits, pair.Answers, [.. PadsAsJson.Read(pair.Row.PadsJson).Where(pad => shoes.Numbers.FindPad(pad.Pad) is not null)]))
            .ToList();
        var belief = FittingBelief.Of(evidence, shoes.Numbers);
        return new FittingQuestion(belief, new ShortlistQuestion
        {
            Feet = belief.Now.Belief,
            Shoes = shoes.OfKind(fitting.Kind, tryOns.Select(tryOn => tryOn.Sku)),
            Kind = fitting.Kind,
            TryOns = tryOns,
            FirstPair = fitting.FirstPair,
            Defaults = shoes.Numbers.ForKind(fitting.Kind),
        });
    }
}
