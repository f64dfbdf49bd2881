using ShopFit.Sheets.Words;

namespace ShopFit.Sheets.Receipts;

/// <summary>The sentences of a receipt.</summary>
internal sealed class ReceiptText(Receipt receipt, SheetWords words)
{
    public SheetWords Words => words;

    public string Title => words[receipt.Kind switch { ReceiptKind.Void => "ReceiptVoid", ReceiptKind.Return => "ReceiptReturn", ReceiptKind.Undone => "ReceiptUndone", _ => "ReceiptSale" }];

    public string DocumentTitle => words.Filled("ReceiptDocumentTitle", Title, receipt.Number, receipt.Shop.Name);

    public string Number => words.Filled("ReceiptNumber", receipt.Number);

    public string When => words.Filled("ReceiptWhen", words.FullDay(receipt.Date), receipt.Time);

    public string Served => words.Filled("ReceiptServed", receipt.ServedBy);

    public string? OfNumber => receipt.OfNumber is { } number ? words.Filled(receipt.Kind switch { ReceiptKind.Void => "ReceiptVoidOf", ReceiptKind.Undone => "ReceiptUndoneOf", _ => "ReceiptReturnOf" }, number) : null;

    public string? Reason => string.IsNullOrWhiteSpace(receipt.Reason) ? null : words.Filled("ReceiptReason", receipt.Reason.Trim());

    public string PricesAre => words[receipt.PricesIncludeTax ? "ReceiptPricesWith" : "ReceiptPricesWithout"];

    public string TotalName => words[receipt.Kind is ReceiptKind.Sale or ReceiptKind.Undone ? "ReceiptTotal" : "ReceiptGivenBack"];

    public IEnumerable<string> ComesBack()
    {
        if (receipt is { Kind: ReceiptKind.Sale, ReturnUntil: { } until })
        {
            var day = words.FullDay(until);
            if (receipt.WithShoes)
            {
                yield return words.Filled("ReceiptBackShoes", day);
            }

            if (receipt.WithPads)
            {
                yield return words.Filled("ReceiptBackPads", day);
            }

            if (receipt.WithOtherGoods)
            {
                yield return words.Filled("ReceiptBackGoods", day);
            }

            if (receipt.WithWork)
            {
                yield return words["ReceiptBackWork"];
            }
        }
    }
}
