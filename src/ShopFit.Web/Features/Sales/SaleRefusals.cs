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
        SellFittingOutcome.Invalid { Problem: SellProblem.Quantity } => words["of one thing 1 to {0} are sold at once.", SellFittingRequest.MostPieces].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.PadTwice } => words["a pad goes once under a foot."].Value,
        SellFittingOutcome.Invalid { Problem: SellProblem.ItemMissing } => words["something in the bag is no longer in the catalogue. Load the page afresh."].Value,
        _ => words["this pair cannot be sold at this fitting. Choose it again on the shortlist."].Value,
    };
}
