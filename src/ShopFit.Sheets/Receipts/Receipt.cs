using System.Text.Json.Serialization;
using ShopFit.Sheets.TakeHome;

namespace ShopFit.Sheets.Receipts;

/// <summary>Everything a receipt says, already decided: drawing it adds no facts.</summary>
/// <remarks>
/// Plain properties without logic, so that a receipt is kept as JSON (System.Text.Json, default options) and drawn again
/// years later. Amounts and rates are kept as they were written on the day, in <see cref="Language"/>.
/// </remarks>
public sealed record Receipt
{
    /// <summary>The format that new receipts are written in.</summary>
    public const int CurrentFormatVersion = 1;

    /// <summary>The format this receipt was written in; a later format must still be able to draw it.</summary>
    public int FormatVersion { get; init; } = CurrentFormatVersion;

    /// <summary>The language of its words as a BCP 47 tag, such as <c>en-GB</c>.</summary>
    public string Language { get; init; } = "en";

    /// <summary>The paper it is drawn for.</summary>
    public PaperSize Paper { get; init; } = PaperSize.A4;

    /// <summary>What it is a receipt of.</summary>
    public ReceiptKind Kind { get; init; } = ReceiptKind.Sale;

    /// <summary>Its number, such as <c>2026-000017</c>.</summary>
    public required string Number { get; init; }

    /// <summary>The number of the sale's receipt, where this one takes it back; null otherwise.</summary>
    public string? OfNumber { get; init; }

    /// <summary>The shop.</summary>
    public required SheetShop Shop { get; init; }

    /// <summary>The day, by the shop's calendar.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The time on the shop's clock, as it is written.</summary>
    public required string Time { get; init; }

    /// <summary>Who served.</summary>
    public required string ServedBy { get; init; }

    /// <summary>ISO 4217 code of all its amounts.</summary>
    public required string Currency { get; init; }

    /// <summary>What was sold, or came back.</summary>
    public required IReadOnlyList<ReceiptLine> Lines { get; init; }

    /// <summary>What the lines come to before the discount; null where there is none.</summary>
    public string? BeforeDiscount { get; init; }

    /// <summary>What the discount was, such as "10 %" or "voucher SPRING"; null where there is none.</summary>
    public string? DiscountName { get; init; }

    /// <summary>What the discount comes to; null where there is none.</summary>
    public string? Discount { get; init; }

    /// <summary>Whether prices have the tax in them.</summary>
    public required bool PricesIncludeTax { get; init; }

    /// <summary>Tax, one row a rate.</summary>
    public required IReadOnlyList<ReceiptTax> Taxes { get; init; }

    /// <summary>Paid, or given back; tax included.</summary>
    public required string Total { get; init; }

    /// <summary>Why it was taken back; null for a sale.</summary>
    public string? Reason { get; init; }

    /// <summary>Last day on which goods may come back; null where nothing is said.</summary>
    public DateOnly? ReturnUntil { get; init; }

    /// <summary>Whether there are shoes in it.</summary>
    public bool WithShoes { get; init; }

    /// <summary>Whether there are pads in it.</summary>
    public bool WithPads { get; init; }

    /// <summary>Whether there are other goods in it, such as ribbon.</summary>
    public bool WithOtherGoods { get; init; }

    /// <summary>Whether there is work in it, such as sewing.</summary>
    public bool WithWork { get; init; }
}

/// <summary>What a receipt is of.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ReceiptKind>))]
public enum ReceiptKind
{
    /// <summary>A sale.</summary>
    Sale = 0,

    /// <summary>A sale taken back as a whole, because it was a mistake.</summary>
    Void = 1,

    /// <summary>Goods that came back.</summary>
    Return = 2,

    /// <summary>A void or a return that was a slip and was undone: everything is sold and paid as it was.</summary>
    Undone = 3,
}

/// <summary>One line of a receipt.</summary>
/// <param name="Text">What.</param>
/// <param name="Quantity">How many.</param>
/// <param name="UnitPrice">Price of one.</param>
/// <param name="Discount">Taken off the line; null where nothing.</param>
/// <param name="TaxRate">Tax rate, such as "20 %".</param>
/// <param name="Total">What the line comes to, tax included.</param>
public sealed record ReceiptLine(string Text, int Quantity, string UnitPrice, string? Discount, string TaxRate, string Total);

/// <summary>The tax at one rate.</summary>
/// <param name="Rate">The rate, such as "20 %".</param>
/// <param name="Net">What it is counted on, without the tax.</param>
/// <param name="Tax">The tax.</param>
/// <param name="Gross">Both together.</param>
public sealed record ReceiptTax(string Rate, string Net, string Tax, string Gross);
