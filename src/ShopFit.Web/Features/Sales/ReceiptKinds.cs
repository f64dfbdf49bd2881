using ShopFit.Sheets.Receipts;

namespace ShopFit.Web.Features.Sales;

/// <summary>What a receipt is of.</summary>
public static class ReceiptKinds
{
    public const string Sale = "sale";

    public const string Void = "void";

    public const string Return = "return";

    /// <summary>Of an undo: what a void or a return gave back is paid as it was.</summary>
    public const string Undone = "undone";

    /// <summary>The kind as it is kept.</summary>
    public static string Of(ReceiptKind kind) => kind switch
    {
        ReceiptKind.Void => Void,
        ReceiptKind.Return => Return,
        ReceiptKind.Undone => Undone,
        _ => Sale,
    };
}
