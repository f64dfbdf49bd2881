using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Features.Sales;

/// <summary>What is sold at the end of a fitting.</summary>
/// <param name="FittingId">Which fitting.</param>
/// <param name="SizeId">The pair.</param>
/// <param name="Pads">Pads that go with it, and the feet they go under.</param>
/// <param name="Extras">Ribbon, elastic, thread, sewing and whatever else goes into the bag.</param>
/// <param name="OverruleReason">Why the fitter decided otherwise than advised; null where she did not.</param>
/// <param name="AdviceNote">Advice of the fitter's own for the sheet; null where there is none.</param>
/// <param name="Why">Why this pair, in the fitter's words, for the sheet; null: the numbers say it.</param>
/// <param name="Discount">The discount that is asked for; null for none.</param>
public sealed record SellFittingRequest(
    Guid FittingId,
    Guid SizeId,
    IReadOnlyList<PadUnderFoot> Pads,
    IReadOnlyList<SaleExtra> Extras,
    string? OverruleReason = null,
    string? AdviceNote = null,
    string? Why = null,
    AskedDiscount? Discount = null)
{
    /// <summary>Longest word of the fitter's own, as the database keeps it.</summary>
    public const int LongestNote = 1000;

    /// <summary>Most pieces of one thing in a sale.</summary>
    public const int MostPieces = 99;

    /// <summary>Most minor units of any amount that is typed: far above any bag, far below what a number holds.</summary>
    public const long MostMinor = 100_000_000;
}

/// <summary>Something that is sold beside the shoes.</summary>
/// <param name="ItemId">What.</param>
/// <param name="Quantity">How many, 1 to 99.</param>
public sealed record SaleExtra(Guid ItemId, int Quantity);
