using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.TryOns;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Sales;

/// <summary>Sells the pair of a fitting with its pads and the rest of the bag, and closes the fitting with its sheet.</summary>
/// <remarks>All of it is one transaction: the shelf goes down and the sale stands, or neither happens.</remarks>
public sealed class SellFitting(ShopWrites writes, ShoesInMemory shoesInMemory, TimeProvider clock)
{
    public Task<SellFittingOutcome> RunAsync(Actor actor, Guid commandId, SellFittingRequest request, CancellationToken cancellationToken) =>
        writes.RunAsync<SellFittingOutcome>(
            actor,
            commandId,
            nameof(SellFitting),
            async (db, stop) => await ApplyAsync(db, actor, commandId, request, await shoesInMemory.SeeAsync(db, stop), clock.GetUtcNow(), stop),
            cancellationToken);

    /// <summary>Sells in the transaction of an action.</summary>
    internal static async Task<SellFittingOutcome> ApplyAsync(
        ShopDbContext db, Actor actor, Guid commandId, SellFittingRequest request, ShoesOnFile shoes, DateTimeOffset now, CancellationToken cancellationToken)
    {
        var fitting = await db.Fittings.SingleOrDefaultAsync(row => row.Id == request.FittingId, cancellationToken);
        if (fitting is null)
        {
            return new SellFittingOutcome.Invalid(SellProblem.FittingMissing);
        }

        if (!fitting.IsDraft)
        {
            return new SellFittingOutcome.AlreadyClosed();
        }

        if (shoes.Find(request.SizeId) is not { } pair)
        {
            return new SellFittingOutcome.Invalid(SellProblem.PairMissing);
        }

        if (Check(fitting, shoes, pair, request) is { } refused)
        {
            return refused;
        }

        var question = (await FittingQuestion.LoadAsync(db, shoes, fitting.Id, cancellationToken))!;

        var fit = FitAtClosing.Judge(question, shoes, pair, request.Pads);
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == actor.ShopId, cancellationToken);

        var bag = await SaleBag.PackAsync(db, actor, shop, now, pair, request, cancellationToken);
        if (bag.Refused is not null)
        {
            return Invalid(bag.Refused);
        }

        var dancer = fitting.DancerId is null ? null : await db.Dancers.AsNoTracking().SingleOrDefaultAsync(row => row.Id == fitting.DancerId, cancellationToken);
        var entry = await SaleBook.EnterAsync(db, new SaleMoment(actor, commandId, shop, now, dancer, fitting.Id), bag, request.Discount, cancellationToken);
        if (entry.Refused is not null)
        {
            return Invalid(entry.Refused);
        }

        if (entry.Gone is { Item: var gone })
        {
            return new SellFittingOutcome.Gone(gone.Code, gone.Name);
        }

        var chosen = await FittingChoice.NewestAsync(db, fitting.Id, cancellationToken);
        var padsJson = PadsAsJson.Write(request.Pads);
        db.FittingDecisions.Add(FittingDecision.Of(
            Guid.CreateVersion7(now), actor, fitting.Id, now, DecisionKinds.Sold, request.Why ?? "", pair.SizeId, padsJson, request.AdviceNote ?? "", request.OverruleReason ?? "", overruleCode: chosen?.SizeId == pair.SizeId ? chosen.OverruleCode : ""));
        db.FittingSnapshots.Add(FitAtClosing.Snapshot(actor, fitting.Id, now, shoes, fit, FitAtClosing.Suggested(question, shoes, chosen)));
        fitting.Close(now);

        var sheet = TakeHomeSheetFacts.Of(new SoldFitting
        {
            Fitting = fitting,
            Dancer = dancer,
            Studio = dancer?.StudioId is null ? "" : await db.Studios.Where(row => row.Id == dancer.StudioId).Select(row => row.Name).SingleAsync(cancellationToken),
            Shop = shop,
            Fitter = actor.Name,
            At = now,
            Pair = pair,
            Fit = fit,
            Pads = request.Pads,
            Feet = question.Belief.Now.Belief,
            PairsTried = PairsTried(question.Question.TryOns, pair),
            SewnByShop = bag.Lines.Any(line => line.Item.Category == ItemCategories.Service),
            FitterDecided = string.Join(' ', new[] { request.OverruleReason?.Trim(), request.AdviceNote?.Trim() }.Where(note => !string.IsNullOrEmpty(note))),
            Why = request.Why?.Trim() ?? "",
            Numbers = shoes.Numbers,
        });
        var paper = Paper.Of(Guid.CreateVersion7(now), actor, PaperKinds.TakeHomeSheet, fitting.Id, entry.SaleId, now, sheet.FormatVersion, JsonSerializer.Serialize(sheet));
        db.Papers.Add(paper);
        return new SellFittingOutcome.Sold(entry.SaleId, paper.Id, entry.ReceiptPaperId);
    }

    private static SellFittingOutcome.Invalid Invalid(BagRefusal refusal) => new(refusal.Problem, refusal.About, refusal.Day, refusal.Bound);

    // Where no try-on was noted, nobody knows how many there were.
    private static int PairsTried(IReadOnlyList<TryOn> tryOns, ShoeDetails pair) =>
        tryOns.Count is 0 ? 0 : tryOns.Select(tryOn => tryOn.Sku).Append(pair.Sku).Distinct(StringComparer.Ordinal).Count();

    private static SellFittingOutcome? Check(FittingRecord fitting, ShoesOnFile shoes, ShoeDetails pair, SellFittingRequest request)
    {
        if (pair.Kind != fitting.Kind)
        {
            return new SellFittingOutcome.Invalid(SellProblem.OtherKind, pair.Sku);
        }

        if (PointeAge.IsForLater(pair.Kind, fitting.AgeYears))
        {
            return new SellFittingOutcome.NotAllowed(SellRefusal.ForLater);
        }

        if (fitting.SkinBroken)
        {
            return new SellFittingOutcome.NotAllowed(SellRefusal.SkinBroken);
        }

        if (request.Pads.FirstOrDefault(pad => shoes.Numbers.FindPad(pad.Pad) is null) is { } unknown)
        {
            return new SellFittingOutcome.Invalid(SellProblem.PadUnknown, unknown.Pad);
        }

        if (request.Pads.Distinct().Count() < request.Pads.Count)
        {
            return new SellFittingOutcome.Invalid(SellProblem.PadTwice);
        }

        return new[] { request.OverruleReason, request.AdviceNote, request.Why }.Any(note => note?.Length > SellFittingRequest.LongestNote)
            ? new SellFittingOutcome.Invalid(SellProblem.NoteTooLong)
            : null;
    }
}
