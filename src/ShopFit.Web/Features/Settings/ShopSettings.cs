namespace ShopFit.Web.Features.Settings;

/// <summary>All that a manager can say about the shop itself, as it is shown, typed and saved in one form.</summary>
public sealed record ShopSettings
{
    public required string Name { get; init; }

    public required string Address { get; init; }

    public required string Contact { get; init; }

    /// <summary>IANA name.</summary>
    public required string TimeZone { get; init; }

    /// <summary>ISO 4217 code.</summary>
    public required string Currency { get; init; }

    /// <summary>"A4" or "Letter".</summary>
    public required string Paper { get; init; }

    /// <summary>"mm" or "in".</summary>
    public required string Units { get; init; }

    /// <summary>Id of the size system that is offered first.</summary>
    public required string SizeSystemShown { get; init; }

    public required bool PricesIncludeTax { get; init; }

    /// <summary>Days in which unworn goods may come back.</summary>
    public required int ReturnDays { get; init; }

    /// <summary>Ids of the kinds of footwear that the shop fits.</summary>
    public required IReadOnlyList<string> Kinds { get; init; }

    /// <summary>Hundredths of a per cent by category of goods; a category that is missing is not taxed.</summary>
    public required IReadOnlyDictionary<string, int> TaxRates { get; init; }

    /// <summary>The settings as they stand.</summary>
    public static ShopSettings Of(Shop shop, IEnumerable<TaxRate> rates) => new()
    {
        Name = shop.Name,
        Address = shop.Address,
        Contact = shop.Contact,
        TimeZone = shop.TimeZone,
        Currency = shop.Currency,
        Paper = shop.Paper,
        Units = shop.Units,
        SizeSystemShown = shop.SizeSystemShown,
        PricesIncludeTax = shop.PricesIncludeTax,
        ReturnDays = shop.ReturnDays,
        Kinds = shop.Kinds,
        TaxRates = rates.ToDictionary(rate => rate.Category, rate => rate.RateBasisPoints, StringComparer.Ordinal),
    };
}
