using ShopFit.Sheets.Pdf;

namespace ShopFit.Sheets.Receipts;

/// <summary>What stands on which page of a receipt, in reading order.</summary>
internal static class ReceiptPlan
{
    // Points.
    private const double TitleSize = 22;
    private const double ShopSize = 15;
    private const double TotalSize = 15;
    private const double HeadingSize = 13;
    private const double Gap = 10;
    private const double ColumnGap = 15;

    public static IReadOnlyList<(Block Block, Block Line)> Of(Receipt receipt, ReceiptText text, Typesetter type, PaperShape paper)
    {
        var room = paper.InnerHeight - PageLine(text, receipt, 1, 1).Height(type, paper.InnerWidth) - Gap;
        var pages = new List<Block>();
        Block? left = All(receipt, text);
        while (left is not null)
        {
            var (fits, next) = left.Split(type, paper.InnerWidth, room);
            // A block that no page can hold would be lost: rows and texts break, and none of ours is higher than a page.
            pages.Add(fits ?? throw new InvalidOperationException("A part of the receipt is higher than a page."));
            left = next;
        }

        return [.. pages.Select((page, index) => (page, (Block)PageLine(text, receipt, index + 1, pages.Count)))];
    }

    private static Stack All(Receipt receipt, ReceiptText text)
    {
        var shop = new[] { receipt.Shop.Address, receipt.Shop.Contact }.Where(line => !string.IsNullOrWhiteSpace(line)).Select(line => (Block)new Paragraph(line!.Trim()));
        var back = text.ComesBack().ToList();
        return new Stack(
        [
            (Paragraph.Heading(text.Title, 1, TitleSize), 0),
            (new Paragraph(receipt.Shop.Name, bold: true, ShopSize), 6),
            .. shop.Select(line => (line, 1.0)),
            (new Rule(1.5), 6),
            (new Paragraph(text.Number, bold: true), 6),
            (new Paragraph(text.When), 1),
            (new Paragraph(text.Served), 1),
            .. new[] { text.OfNumber, text.Reason }.OfType<string>().Select(line => ((Block)new Paragraph(line), 1.0)),
            (Lines(receipt, text), Gap),
            (new Paragraph(text.PricesAre), 4),
            .. Discount(receipt, text),
            (new TableBlock([3, 2], [[new(text.TotalName, Bold: true), new(receipt.Total, TextAlign.Right, Bold: true)]], headed: false, TotalSize), 6),
            .. Taxes(receipt, text),
            .. back.Count == 0 ? Array.Empty<(Block, double)>() :
            [
                (Paragraph.Heading(text.Words["ReceiptBackHeading"], 2, HeadingSize), 14),
                (new LabelledList([.. back.Select(line => (LabelledList.Bullet, (IReadOnlyList<TextRun>)[line]))], 3), 3),
                (new Paragraph(text.Words["ReceiptLaw"]), 5),
            ],
        ]);
    }

    // The column of discounts is there only where there are any.
    private static TableBlock Lines(Receipt receipt, ReceiptText text)
    {
        var discounted = receipt.Lines.Any(line => line.Discount is not null);
        return new TableBlock(
            discounted ? [4.2, 2.3, 1.9, 1.2, 2.2] : [6, 2.3, 1.2, 2.2],
            [
                [
                    new(text.Words["ReceiptWhat"], Bold: true),
                    new(text.Words["ReceiptPrice"], TextAlign.Right, Bold: true),
                    .. Discounted(new TableCell(text.Words["ReceiptOff"], TextAlign.Right, Bold: true)),
                    new(text.Words["ReceiptTax"], TextAlign.Right, Bold: true),
                    new(text.Words["ReceiptAmount"], TextAlign.Right, Bold: true),
                ],
                .. receipt.Lines.Select(line => (IReadOnlyList<TableCell>)
                [
                    new(line.Text),
                    new(line.Quantity == 1 ? line.UnitPrice : text.Words.Filled("ReceiptQuantity", line.Quantity, line.UnitPrice), TextAlign.Right),
                    .. Discounted(new TableCell(line.Discount ?? "", TextAlign.Right)),
                    new(line.TaxRate, TextAlign.Right),
                    new(line.Total, TextAlign.Right),
                ]),
            ],
            headed: true);

        IEnumerable<TableCell> Discounted(TableCell cell) => discounted ? [cell] : [];
    }

    private static IEnumerable<(Block, double)> Discount(Receipt receipt, ReceiptText text)
    {
        if (receipt is { Discount: { } discount, BeforeDiscount: { } before })
        {
            yield return (new TableBlock([3, 2],
            [
                [new(text.Words["ReceiptBefore"]), new(before, TextAlign.Right)],
                [new(receipt.DiscountName is { Length: > 0 } name ? text.Words.Filled("ReceiptDiscountOf", name) : text.Words["ReceiptDiscount"]), new(discount, TextAlign.Right)],
            ], headed: false), 6);
        }
    }

    private static IEnumerable<(Block, double)> Taxes(Receipt receipt, ReceiptText text)
    {
        if (receipt.Taxes.Count == 0)
        {
            yield break;
        }

        yield return (Paragraph.Heading(text.Words["ReceiptTaxHeading"], 2, HeadingSize), 12);
        yield return (new TableBlock([1.2, 2, 2, 2],
        [
            [
                new(text.Words["ReceiptRate"], Bold: true), new(text.Words["ReceiptNet"], TextAlign.Right, Bold: true),
                new(text.Words["ReceiptTaxAmount"], TextAlign.Right, Bold: true), new(text.Words["ReceiptGross"], TextAlign.Right, Bold: true),
            ],
            .. receipt.Taxes.Select(tax => (IReadOnlyList<TableCell>)[new(tax.Rate), new(tax.Net, TextAlign.Right), new(tax.Tax, TextAlign.Right), new(tax.Gross, TextAlign.Right)]),
        ], headed: true), 3);
    }

    private static Columns PageLine(ReceiptText text, Receipt receipt, int page, int of) => new(
        [(new Paragraph(text.Number), 1), (new Paragraph(of == 1 ? receipt.Currency : text.Words.Filled("PageOf", page, of), align: TextAlign.Right), 1)], ColumnGap);
}
