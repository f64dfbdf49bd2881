namespace ShopFit.Web.Features.Shelf;

/// <summary>Why a stock level changed.</summary>
public static class LedgerReasons
{
    /// <summary>What stood there when the shop began to count.</summary>
    public const string Opening = "opening";

    /// <summary>A maker delivered it.</summary>
    public const string Delivered = "delivered";

    public const string Sold = "sold";

    /// <summary>A sale was a mistake and was taken back as a whole.</summary>
    public const string TakenBack = "taken-back";

    /// <summary>Goods came back to be sold again.</summary>
    public const string Returned = "returned";

    /// <summary>Taking it back was a slip and was undone: it is sold as it was.</summary>
    public const string Undone = "undone";
}
