namespace ShopFit.Web.Features.Sales;

/// <summary>What a voucher gives, and when.</summary>
/// <param name="Code">Its code; capitals and spaces make no difference.</param>
/// <param name="PercentBasisPoints">Hundredths of a per cent, 1 to 10,000; null where it gives an amount.</param>
/// <param name="AmountMinor">Minor units, above 0; null where it gives a percentage. What the goods do not use of it is lost.</param>
/// <param name="ValidFrom">First business day; null: at once.</param>
/// <param name="ValidTo">Last business day; null: until it is ended.</param>
/// <param name="MostUses">How often in all; null: as often as wanted.</param>
/// <param name="LeastTotalMinor">Least that the whole bag must come to before the discount.</param>
/// <param name="Categories">Categories it is given on; empty: all.</param>
public sealed record VoucherTerms(
    string Code,
    int? PercentBasisPoints,
    long? AmountMinor,
    DateOnly? ValidFrom,
    DateOnly? ValidTo,
    int? MostUses,
    long LeastTotalMinor,
    IReadOnlyList<string> Categories);
