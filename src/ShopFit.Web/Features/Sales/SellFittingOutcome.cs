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
    public sealed record Sold(Guid SaleId, Guid PaperId) : SellFittingOutcome;

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
    public sealed record Invalid(SellProblem Problem, string About = "") : SellFittingOutcome, IRefusal;
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
}
