namespace ShopFit.Web.Features.Papers;

/// <summary>The papers that are kept as facts and drawn again.</summary>
public static class PaperKinds
{
    public const string TakeHomeSheet = "take-home-sheet";

    public const string Receipt = "receipt";
}
