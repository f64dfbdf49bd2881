using ShopFit.Sheets.Receipts;
using ShopFit.Sheets.TakeHome;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Sales;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Papers;

/// <summary>Turns what was sold, or came back, into the facts of its receipt.</summary>
internal sealed record ReceiptFacts
{
    private const int NumberDigits = 6;

    public required Shop Shop { get; init; }

    /// <summary>Whose language is spoken; null where nobody is on file.</summary>
    public required Dancer? Dancer { get; init; }

    public required string ServedBy { get; init; }

    public required DateTimeOffset At { get; init; }

    public required ReceiptKind Kind { get; init; }

    public required string Number { get; init; }

    public string? OfNumber { get; init; }

    public string? Reason { get; init; }

    /// <summary>ISO 4217 code of the sale, whatever the shop counts in later.</summary>
    public required string Currency { get; init; }

    public required bool PricesIncludeTax { get; init; }

    public required IReadOnlyList<ReceiptGood> Goods { get; init; }

    /// <summary>What was asked for, where a discount was given.</summary>
    public AskedDiscount? Discount { get; init; }

    /// <summary>A number as it is written: year, and the count in it.</summary>
    public static string NumberOf(int year, int number) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{year:0000}-{number.ToString($"D{NumberDigits}", System.Globalization.CultureInfo.InvariantCulture)}");

    /// <summary>The facts.</summary>
    public Receipt Write() => PaperLanguage.In(Dancer, Shop, language =>
    {
        var time = ShopTime.Of(Shop);
        var day = time.Day(At);
        var discount = Goods.Sum(good => good.DiscountMinor);
        return new Receipt
        {
            Language = language.Name,
            Paper = Shop.Paper == "Letter" ? PaperSize.Letter : PaperSize.A4,
            Kind = Kind,
            Number = Number,
            OfNumber = OfNumber,
            Shop = new SheetShop { Name = Shop.Name, Address = NullIfEmpty(Shop.Address), Contact = NullIfEmpty(Shop.Contact) },
            Date = day,
            Time = time.Clock(At),
            ServedBy = ServedBy,
            Currency = Currency,
            Lines = [.. Goods.Select(good => new ReceiptLine(
                good.Text, good.Quantity, Written(good.UnitPriceMinor), good.DiscountMinor == 0 ? null : Signed(-good.DiscountMinor), Rate(good.RateBasisPoints), Signed(good.Amount.TotalMinor)))],
            BeforeDiscount = discount == 0 || Kind is not ReceiptKind.Sale ? null : Written(Goods.Sum(good => good.Quantity * good.UnitPriceMinor)),
            DiscountName = Discount switch
            {
                { Kind: DiscountKind.Percent } => Rate((int)Discount.Value),
                { Kind: DiscountKind.Voucher } => PaperWords.Say("Receipt.Voucher", Voucher.CodeOf(Discount.Code)),
                _ => null,
            },
            Discount = discount == 0 || Kind is not ReceiptKind.Sale ? null : Written(-discount),
            PricesIncludeTax = PricesIncludeTax,
            Taxes = [.. Goods.GroupBy(good => good.RateBasisPoints).OrderByDescending(rate => rate.Key).Select(rate =>
            {
                var (gross, tax) = (rate.Sum(good => good.Amount.TotalMinor), rate.Sum(good => good.Amount.TaxMinor));
                return new ReceiptTax(Rate(rate.Key), Signed(gross - tax), Signed(tax), Signed(gross));
            })],
            Total = Signed(Goods.Sum(good => good.Amount.TotalMinor)),
            Reason = NullIfEmpty(Reason),
            ReturnUntil = Kind is ReceiptKind.Sale ? day.AddDays(Shop.ReturnDays) : null,
            WithShoes = Goods.Any(good => good.Category == ItemCategories.Shoes),
            WithPads = Goods.Any(good => good.Category == ItemCategories.Pads),
            WithOtherGoods = Goods.Any(good => good.Category is not (ItemCategories.Shoes or ItemCategories.Pads or ItemCategories.Service)),
            WithWork = Goods.Any(good => good.Category == ItemCategories.Service),
        };
    });

    private string Signed(long minor) => Written(Kind is ReceiptKind.Sale or ReceiptKind.Undone ? minor : -minor);

    private string Written(long minor) => new Money(minor, Currency).ToString();

    private static string Rate(int basisPoints) => PaperWords.Say("Receipt.Percent", basisPoints / 100m);

    private static string? NullIfEmpty(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}

/// <summary>One line of a receipt in numbers. Minor units.</summary>
internal sealed record ReceiptGood(string Text, string Category, int Quantity, long UnitPriceMinor, long DiscountMinor, int RateBasisPoints, LineAmount Amount);
