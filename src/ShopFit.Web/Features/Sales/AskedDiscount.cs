using System.Text.Json;
using System.Text.Json.Serialization;

namespace ShopFit.Web.Features.Sales;

/// <summary>A discount as it is asked for: what it comes to is worked out from the bag.</summary>
/// <param name="Kind">Which of the three ways.</param>
/// <param name="Value">Basis points of a percentage (1,000 is 10 %), or minor units of an amount; 0 for a voucher.</param>
/// <param name="Code">The code of a voucher as it was typed; empty otherwise.</param>
public sealed record AskedDiscount(DiscountKind Kind, long Value = 0, string Code = "")
{
    /// <summary>Longest code that is looked for.</summary>
    public const int LongestCode = 40;

    /// <summary>So many hundredths of a per cent off.</summary>
    public static AskedDiscount Percent(int basisPoints) => new(DiscountKind.Percent, basisPoints);

    /// <summary>So much off, counted as the prices are.</summary>
    public static AskedDiscount Amount(long minor) => new(DiscountKind.Amount, minor);

    /// <summary>What a voucher says.</summary>
    public static AskedDiscount Voucher(string code) => new(DiscountKind.Voucher, Code: code);

    /// <summary>As it is kept with the draft.</summary>
    internal static string? ToJson(AskedDiscount? discount) => discount is null ? null : JsonSerializer.Serialize(discount, JsonSerializerOptions.Web);

    /// <summary>Back from the draft.</summary>
    internal static AskedDiscount? FromJson(string? json) => json is null ? null : JsonSerializer.Deserialize<AskedDiscount>(json, JsonSerializerOptions.Web);
}

/// <summary>How a discount is counted.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<DiscountKind>))]
public enum DiscountKind
{
    /// <summary>A share of what it is given on.</summary>
    Percent = 0,

    /// <summary>A fixed amount.</summary>
    Amount = 1,

    /// <summary>Whatever the voucher with this code says.</summary>
    Voucher = 2,
}
