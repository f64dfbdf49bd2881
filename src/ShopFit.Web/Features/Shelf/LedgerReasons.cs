namespace ShopFit.Web.Features.Shelf;

/// <summary>Why a stock level changed.</summary>
public static class LedgerReasons
{
    /// <summary>What stood there when the shop began to count.</summary>
    public const string Opening = "opening";

    public const string Sold = "sold";
}
