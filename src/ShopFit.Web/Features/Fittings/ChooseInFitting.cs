using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Scoring;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Sales;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Keeps what was chosen so far, so that a reload or another tablet goes on from there.</summary>
public sealed class ChooseInFitting(ShopWrites writes, ShoesInMemory shoesInMemory, TimeProvider clock)
{
    public Task<ChooseInFittingOutcome> RunAsync(Actor actor, Guid commandId, ChosenForFitting chosen, CancellationToken cancellationToken) =>
        writes.RunAsync<ChooseInFittingOutcome>(actor, commandId, nameof(ChooseInFitting), async (db, ct) =>
        {
            if (chosen.OverruleReason.Length > SellFittingRequest.LongestNote || chosen.AdviceNote.Length > SellFittingRequest.LongestNote)
            {
                return new ChooseInFittingOutcome.Invalid(SellProblem.NoteTooLong);
            }

            if (chosen.OverruleCode.Length > 0 && !OverruleReasons.All.Contains(chosen.OverruleCode))
            {
                return new ChooseInFittingOutcome.Invalid(SellProblem.ReasonUnknown, chosen.OverruleCode);
            }

            if (chosen.Asked is { IsClear: false })
            {
                return new ChooseInFittingOutcome.Invalid(SellProblem.AskedSizeUnclear);
            }

            if (chosen.Discount is { Code.Length: > AskedDiscount.LongestCode } or { Value: < 0 or > SellFittingRequest.MostMinor })
            {
                return new ChooseInFittingOutcome.Invalid(SellProblem.DiscountOutOfRange);
            }

            var fitting = await db.Fittings.AsNoTracking().SingleOrDefaultAsync(row => row.Id == chosen.FittingId, ct);
            if (fitting is not { ClosedAt: null })
            {
                return new ChooseInFittingOutcome.NotOpen();
            }

            var shoes = await shoesInMemory.SeeAsync(db, ct);
            if (shoes.Find(chosen.SizeId) is not { } pair || pair.Kind != fitting.Kind)
            {
                return new ChooseInFittingOutcome.Invalid(SellProblem.PairMissing);
            }

            if (chosen.SuggestedSizeId is { } suggested && shoes.Find(suggested)?.Kind != fitting.Kind)
            {
                return new ChooseInFittingOutcome.Invalid(SellProblem.PairMissing);
            }

            if (chosen.Pads?.FirstOrDefault(pad => shoes.Numbers.FindPad(pad.Pad) is null) is { } unknown)
            {
                return new ChooseInFittingOutcome.Invalid(SellProblem.PadUnknown, unknown.Pad);
            }

            if (chosen.Pads is { } pads && pads.Distinct().Count() < pads.Count)
            {
                return new ChooseInFittingOutcome.Invalid(SellProblem.PadTwice);
            }

            if (chosen.Extras.Any(extra => extra.Quantity is < 1 or > SellFittingRequest.MostPieces))
            {
                return new ChooseInFittingOutcome.Invalid(SellProblem.Quantity);
            }

            var items = chosen.Extras.Select(extra => extra.ItemId).Distinct().ToList();
            if (await db.Items.CountAsync(item => items.Contains(item.Id), ct) < items.Count)
            {
                return new ChooseInFittingOutcome.Invalid(SellProblem.ItemMissing);
            }

            db.FittingChoices.Add(FittingChoice.Of(commandId, actor, clock.GetUtcNow(), chosen));
            return new ChooseInFittingOutcome.Kept();
        }, cancellationToken);
}

/// <summary>What lies ready to be decided on.</summary>
/// <param name="FittingId">In which fitting.</param>
/// <param name="SizeId">The pair.</param>
/// <param name="Pads">The pads that the fitter put under the feet; null while those that are proposed will do.</param>
/// <param name="Extras">What else goes into the bag.</param>
/// <param name="OverruleReason">Why another pair than advised; may be empty.</param>
/// <param name="AdviceNote">Advice for the sheet; may be empty.</param>
/// <param name="Discount">The discount that was asked for; null for none.</param>
public sealed record ChosenForFitting(
    Guid FittingId, Guid SizeId, IReadOnlyList<PadUnderFoot>? Pads, IReadOnlyList<SaleExtra> Extras, string OverruleReason = "", string AdviceNote = "", AskedDiscount? Discount = null)
{
    /// <summary>One of <see cref="OverruleReasons"/>; empty where none was tapped.</summary>
    public string OverruleCode { get; init; } = "";

    /// <summary>The smaller size that was asked for; null where none was.</summary>
    public AskedSize? Asked { get; init; }

    /// <summary>The first of the proposals when it was chosen; null where there was none.</summary>
    public Guid? SuggestedSizeId { get; init; }
}

/// <summary>How keeping it ended.</summary>
[JsonDerivedType(typeof(Kept), "kept")]
[JsonDerivedType(typeof(NotOpen), "not-open")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record ChooseInFittingOutcome
{
    private ChooseInFittingOutcome()
    {
    }

    /// <summary>It is kept.</summary>
    public sealed record Kept : ChooseInFittingOutcome;

    /// <summary>The fitting is closed, or there is none.</summary>
    public sealed record NotOpen : ChooseInFittingOutcome, IRefusal;

    /// <summary>Something in it cannot be sold.</summary>
    public sealed record Invalid(SellProblem Problem, string About = "") : ChooseInFittingOutcome, IRefusal;
}
