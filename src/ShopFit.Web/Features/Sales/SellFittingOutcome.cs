using System.Text.Json.Serialization;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Sales;

/// <summary>How selling at a fitting ended.</summary>
[JsonDerivedType(typeof(Sold), "sold")]
[JsonDerivedType(typeof(Gone), "gone")]
[JsonDerivedType(typeof(AlreadyClosed), "already-closed")]
[JsonDerivedType(typeof(NotAllowed), "not-allowed")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record SellFittingOutcome
{
    private SellFittingOutcome()
    {
    }

    /// <summary>Sold, taken off the shelf, the fitting closed and its sheet made.</summary>
    /// <param name="SaleId">The sale.</param>
    /// <param name="PaperId">The take-home sheet.</param>
    /// <param name="ReceiptPaperId">The receipt.</param>
    public sealed record Sold(Guid SaleId, Guid PaperId, Guid ReceiptPaperId) : SellFittingOutcome;

    /// <summary>There is not enough of something: somebody else took it. Nothing was changed.</summary>
    /// <param name="Code">Its code.</param>
    /// <param name="Name">Its name.</param>
    public sealed record Gone(string Code, string Name) : SellFittingOutcome, IRefusal;

    /// <summary>The fitting was closed before. Nothing was changed.</summary>
    public sealed record AlreadyClosed : SellFittingOutcome, IRefusal;

    /// <summary>These shoes are not sold at this fitting, for the dancer's own sake.</summary>
    public sealed record NotAllowed(SellRefusal Reason) : SellFittingOutcome, IRefusal;

    /// <summary>Something about the request cannot be.</summary>
    /// <param name="Problem">What.</param>
    /// <param name="About">Code, name or id of what it is about; empty where the problem says it all.</param>
    /// <param name="Day">The day on which a voucher begins, or on which it ended.</param>
    /// <param name="Bound">The amount that would have to be reached, or not gone over.</param>
    public sealed record Invalid(SellProblem Problem, string About = "", DateOnly? Day = null, Money? Bound = null) : SellFittingOutcome, IRefusal;
}

/// <summary>Why shoes are not sold.</summary>
public enum SellRefusal
{
    /// <summary>Pointe shoes are for later.</summary>
    ForLater,

    /// <summary>The skin of a foot is broken, so nothing was tried.</summary>
    SkinBroken,
}

/// <summary>What is wrong with a request to sell.</summary>
public enum SellProblem
{
    /// <summary>There is no such fitting.</summary>
    FittingMissing,

    /// <summary>There is no such pair.</summary>
    PairMissing,

    /// <summary>The pair is of another kind than the fitting.</summary>
    OtherKind,

    /// <summary>It has no price yet.</summary>
    PriceMissing,

    /// <summary>There is no such pad.</summary>
    PadUnknown,

    /// <summary>A pad goes once under a foot.</summary>
    PadTwice,

    /// <summary>There is no such thing to sell.</summary>
    ItemMissing,

    /// <summary>So many of one thing, or so few, are not sold at once.</summary>
    Quantity,

    /// <summary>A note is longer than is kept.</summary>
    NoteTooLong,

    /// <summary>Not one of the reasons for another pair.</summary>
    ReasonUnknown,

    /// <summary>The size that was asked for says nothing, or too much.</summary>
    AskedSizeUnclear,

    /// <summary>There is nothing in the bag.</summary>
    BagEmpty,

    /// <summary>Shoes are sold at a fitting.</summary>
    ShoesNeedFitting,

    /// <summary>The dancer is not on file.</summary>
    DancerMissing,

    /// <summary>A discount is not between nothing and all.</summary>
    DiscountOutOfRange,

    /// <summary>The discount is more than the bag comes to.</summary>
    DiscountTooMuch,

    /// <summary>The discount is more than a fitter may give without a manager.</summary>
    DiscountOverLimit,

    /// <summary>There is no voucher with that code.</summary>
    VoucherUnknown,

    /// <summary>A manager ended the voucher.</summary>
    VoucherEnded,

    /// <summary>The voucher begins on a later day.</summary>
    VoucherNotYet,

    /// <summary>The last day of the voucher is over.</summary>
    VoucherOver,

    /// <summary>The voucher has been used as often as it can be.</summary>
    VoucherUsedUp,

    /// <summary>The bag comes to less than the voucher asks for.</summary>
    VoucherLeastTotal,

    /// <summary>The voucher is given on other goods than these.</summary>
    VoucherOtherGoods,
}
