using Microsoft.Extensions.Localization;
using ShopFit.Web.Features.Fittings;

namespace ShopFit.Web.Features.Sales;

/// <summary>Why a sale did not happen, in a sentence.</summary>
public sealed class SaleRefusals(IStringLocalizer<BagWords> words)
{
    /// <summary>The sentence; null where it was sold.</summary>
    public string? Sentence(SellFittingOutcome outcome) => outcome switch
    {
        SellFittingOutcome.Sold => null,
        SellFittingOutcome.Gone gone => words["{0} is no longer on the shelf: somebody else took the last one. Nothing was changed.", gone.Name].Value,
        SellFittingOutcome.AlreadyClosed => words["this fitting was closed before, perhaps on another tablet."].Value,
        SellFittingOutcome.NotAllowed { Reason: SellRefusal.ForLater } => words["under {0}: no pointe shoe yet.", (int)PointeAge.Least].Value,
        SellFittingOutcome.NotAllowed => words["skin is broken. Let it heal first."].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.PriceMissing } invalid => words["{0} has no price yet. A manager can set it in the catalogue.", invalid.About].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.NoteTooLong } => words["a note is longer than {0} letters: write it shorter.", SellFittingRequest.LongestNote].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.ReasonUnknown } invalid => words["“{0}” is not one of the reasons. Tap one of them.", invalid.About].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.AskedSizeUnclear } => words["the size asked for has 1 to {0} letters.", AskedSize.LongestLabel].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.Quantity } => words["of one thing 1 to {0} are sold at once.", SellFittingRequest.MostPieces].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.PadTwice } => words["a pad goes once under a foot."].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.ItemMissing } => words["something in the bag is no longer in the catalogue. Load the page afresh."].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.DiscountOutOfRange } => words["a discount lies above nothing and takes no more than all."].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.DiscountTooMuch } invalid => words["the discount is more than the bag, which comes to {0}.", invalid.Bound!].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.DiscountOverLimit } invalid => words["that is more than you may take off: at most {0} of this bag. A manager may take off more.", invalid.Bound!].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.VoucherUnknown } invalid => words["there is no voucher “{0}”. Look at the code again.", invalid.About].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.VoucherEnded } invalid => words["voucher {0} was ended by a manager.", invalid.About].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.VoucherNotYet } invalid => words["voucher {0} is good from {1:d MMMM yyyy} on.", invalid.About, invalid.Day!].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.VoucherOver } invalid => words["voucher {0} was good until {1:d MMMM yyyy}.", invalid.About, invalid.Day!].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.VoucherUsedUp } invalid => words["voucher {0} has been used as often as it can be.", invalid.About].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.VoucherLeastTotal } invalid => words["voucher {0} needs a bag of {1} at least.", invalid.About, invalid.Bound!].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.VoucherOtherGoods } invalid => words["voucher {0} is for other goods than these.", invalid.About].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.BagEmpty } => words["there is nothing in the bag yet."].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.ShoesNeedFitting } => words["shoes are sold at a fitting: open one for the dancer."].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.DancerMissing } => words["this dancer is not on file any more. Load the page afresh."].Value,
        _ => words["this pair cannot be sold at this fitting. Choose it again on the shortlist."].Value,
    };

    /// <summary>Why goods were not sold without a fitting; null where they were.</summary>
    public string? Sentence(SellGoodsOutcome outcome) => outcome switch
    {
        SellGoodsOutcome.Gone gone => Sentence(new SellFittingOutcome.Gone(gone.Code, gone.Name)),
        SellGoodsOutcome.AlreadySold => words["this bag was sold before, perhaps on another tablet."].Value,
        SellGoodsOutcome.Invalid invalid => Sentence(new SellFittingOutcome.Invalid(invalid.Problem, invalid.About, invalid.Day, invalid.Bound)),
        _ => null,
    };
}
