namespace ShopFit.Web.Features.Sales;

/// <summary>What a receipt is of.</summary>
public static class ReceiptKinds
{
    public const string Sale = "sale";

    public const string Void = "void";

    public const string Return = "return";
}
