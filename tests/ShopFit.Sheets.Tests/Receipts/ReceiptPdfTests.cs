using System.Globalization;
using System.Text.Json;
using ShopFit.Sheets.Support;
using ShopFit.Sheets.TakeHome;

namespace ShopFit.Sheets.Receipts;

/// <summary>What is on a receipt.</summary>
/// <remarks><c>SHEETS_OUT=/tmp/sheets dotnet run --project tests/ShopFit.Sheets.Tests -- -method "*Every_fact_of_a_receipt*"</c> writes the PDFs that it judges.</remarks>
public sealed class ReceiptPdfTests : IDisposable
{
    private static readonly string LongName = string.Join(' ', Enumerable.Repeat("Wrenbeck-Österholm", 9)) + " " + new string('W', 120);

    private readonly string _file = Path.Combine(Path.GetTempPath(), $"receipt-{Guid.CreateVersion7()}.pdf");

    public static TheoryData<string> Everything => [.. Variants().Keys];

    [Theory]
    [MemberData(nameof(Everything))]
    public void Every_fact_of_a_receipt_is_inside_its_margins_and_can_be_read(string variant)
    {
        var receipt = Variants()[variant];

        var drawn = DrawnSheet.Of(receipt);
        if (Environment.GetEnvironmentVariable("SHEETS_OUT") is { Length: > 0 } folder)
        {
            File.WriteAllBytes(Path.Combine(Directory.CreateDirectory(folder).FullName, $"receipt-{variant}.pdf"), drawn.Bytes);
        }

        Laws.Hold(drawn);
        Assert.Equal(variant is "many lines" or "long names", drawn.Pages.Count > 1);
        Assert.All(Facts(receipt), drawn.Says);
    }

    [Fact]
    public void It_says_what_may_come_back_and_defers_to_the_law()
    {
        var drawn = DrawnSheet.Of(Sale());

        drawn.Says("Shoes may come back until 28 March 2026, unworn and unsewn, with this receipt.");
        drawn.Says("Pads may come back until 28 March 2026 in their unopened packet. Once opened they may not.");
        drawn.Says("Work that was done, such as sewing, is not given back.");
        drawn.Says("where the two differ, the law holds.");
    }

    [Fact]
    public void Of_what_is_not_in_it_nothing_is_said()
    {
        var drawn = DrawnSheet.Of(Sale() with { WithPads = false, WithShoes = false, WithWork = false });

        drawn.DoesNotSay("unopened packet");
        drawn.DoesNotSay("unworn");
        drawn.DoesNotSay("sewing, is not");
        drawn.Says("uncut and unused");
    }

    [Fact]
    public void An_undo_names_the_receipt_that_it_undoes_and_gives_nothing_back()
    {
        var drawn = DrawnSheet.Of(Undone());

        drawn.Says("Receipt: it stays sold");
        drawn.Says("Undoes receipt 2026-000042: nothing was given back");
        drawn.DoesNotSay("Given back");
        drawn.DoesNotSay("may come back until");
    }

    [Fact]
    public void A_void_names_the_receipt_that_it_takes_back_and_why()
    {
        var drawn = DrawnSheet.Of(Void());

        drawn.Says("Receipt of a sale taken back");
        drawn.Says("Takes back the whole of receipt 2026-000017");
        drawn.Says("Because: the wrong size");
        drawn.Says("Given back");
        drawn.DoesNotSay("What may come back");
    }

    [Fact]
    public void It_is_the_same_when_it_is_drawn_from_what_was_kept()
    {
        var kept = JsonSerializer.Deserialize<Receipt>(JsonSerializer.Serialize(Sale()))!;

        Assert.Equal(DrawnSheet.Of(Sale()).Text, DrawnSheet.Of(kept).Text);
    }

    [Fact]
    public void A_receipt_of_a_later_format_is_not_guessed_at() =>
        Assert.Throws<NotSupportedException>(() => ReceiptPdf.Draw(Sale() with { FormatVersion = Receipt.CurrentFormatVersion + 1 }, CultureInfo.GetCultureInfo("en-GB")));

    [Fact]
    public async Task A_checker_of_pdf_files_finds_nothing_to_warn_of_and_it_is_tagged_as_a_table()
    {
        await File.WriteAllBytesAsync(_file, ReceiptPdf.Draw(Sale(), CultureInfo.GetCultureInfo("en-GB")), TestContext.Current.CancellationToken);

        var (code, output) = await Tool.RunAsync("qpdf", "--check", _file);
        var (_, about) = await Tool.RunAsync("pdfinfo", _file);
        var (_, structure) = await Tool.RunAsync("pdfinfo", "-struct-text", _file);
        var (_, fonts) = await Tool.RunAsync("pdffonts", _file);

        Assert.True(code == 0, output);
        Assert.DoesNotContain("WARNING", output, StringComparison.OrdinalIgnoreCase);
        Assert.Matches("Title: +Receipt 2026-000017, Larkrise Dancewear", about);
        Assert.Matches("Tagged: +yes", about);
        Assert.Matches("H1 \\(block\\)\\s+\"Receipt\"", structure);
        Assert.Matches("TH \\(inline\\)|TH", structure);
        Assert.Contains("Satin ribbon", structure, StringComparison.Ordinal);
        Assert.All(fonts.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2), font => Assert.Matches(@"^[A-Z]{6}\+Inter .* yes yes yes ", font));
    }

    public void Dispose() => File.Delete(_file);

    private static Dictionary<string, Receipt> Variants() => new()
    {
        ["sale"] = Sale(),
        ["letter"] = Sale() with { Paper = PaperSize.Letter, Language = "en-US" },
        ["no discount"] = Sale() with { BeforeDiscount = null, DiscountName = null, Discount = null, PricesIncludeTax = false },
        ["void"] = Void(),
        ["undone"] = Undone(),
        ["return"] = Void() with { Kind = ReceiptKind.Return, Reason = null },
        ["long names"] = Sale() with
        {
            Shop = new SheetShop { Name = LongName, Address = LongName, Contact = LongName },
            ServedBy = LongName,
            DiscountName = LongName,
            Total = "KWD 1,234,567,890.123",
            Lines = [.. Sale().Lines.Select(line => line with { Text = LongName, UnitPrice = "KWD 1,234,567.890", Discount = "-KWD 1,234,567.890", Total = "KWD 1,234,567,890.123", TaxRate = "99.99%" })],
            Taxes = [new ReceiptTax("99.99%", "KWD 1,234,567,890.123", "KWD 1,234,567,890.123", "KWD 1,234,567,890.123")],
        },
        ["many lines"] = Sale() with { Lines = [.. Enumerable.Range(1, 70).Select(number => new ReceiptLine($"Thing number {number}", number, "£1.00", null, "20%", $"£{number}.00"))] },
    };

    private static Receipt Sale() => new()
    {
        Language = "en-GB",
        Number = "2026-000017",
        Shop = new SheetShop { Name = "Larkrise Dancewear", Address = "4 Tanner’s Row, Mallowby", Contact = "01632 960 555" },
        Date = new DateOnly(2026, 3, 14),
        Time = "15:09",
        ServedBy = "Orla Thistlewood",
        Currency = "GBP",
        Lines =
        [
            new ReceiptLine("Thistlefen Lastworks Moorlace 38 two-bar", 1, "£59.50", "-£5.95", "20%", "£53.55"),
            new ReceiptLine("Heel cushion", 1, "£6.50", "-£0.65", "5%", "£5.85"),
            new ReceiptLine("Satin ribbon", 2, "£4.80", "-£0.96", "0%", "£8.64"),
            new ReceiptLine("Sewing", 1, "£15.00", "-£1.50", "20%", "£13.50"),
        ],
        BeforeDiscount = "£90.60",
        DiscountName = "voucher SPRING",
        Discount = "-£9.06",
        PricesIncludeTax = true,
        Taxes = [new ReceiptTax("20%", "£55.87", "£11.18", "£67.05"), new ReceiptTax("5%", "£5.57", "£0.28", "£5.85"), new ReceiptTax("0%", "£8.64", "£0.00", "£8.64")],
        Total = "£81.54",
        ReturnUntil = new DateOnly(2026, 3, 28),
        WithShoes = true,
        WithPads = true,
        WithOtherGoods = true,
        WithWork = true,
    };

    private static Receipt Undone() => Sale() with { Kind = ReceiptKind.Undone, Number = "2026-000043", OfNumber = "2026-000042", ReturnUntil = null };

    private static Receipt Void() => Sale() with
    {
        Kind = ReceiptKind.Void,
        Number = "2026-000018",
        OfNumber = "2026-000017",
        Reason = "the wrong size",
        BeforeDiscount = null,
        DiscountName = null,
        Discount = null,
        Total = "-£81.54",
        ReturnUntil = null,
    };

    private static IEnumerable<string> Facts(Receipt receipt)
    {
        string?[] facts =
        [
            receipt.Number, receipt.OfNumber, receipt.Shop.Name, receipt.Shop.Address, receipt.Shop.Contact, receipt.Time, receipt.ServedBy, receipt.Reason, receipt.BeforeDiscount,
            receipt.DiscountName, receipt.Discount, receipt.Total, receipt.Paper is PaperSize.Letter ? "2026" : "14 March 2026",
            receipt.PricesIncludeTax ? "Prices include tax." : "Prices are without tax.",
            .. receipt.Lines.SelectMany(line => new[] { line.Text, line.UnitPrice, line.Discount, line.TaxRate, line.Total }),
            .. receipt.Taxes.SelectMany(tax => new[] { tax.Rate, tax.Net, tax.Tax, tax.Gross }),
        ];
        return facts.OfType<string>();
    }
}
