using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Features.Demo;

/// <summary>The settings of the demo shop.</summary>
internal sealed record DemoShopSettings(
    string Name,
    string Address,
    string Contact,
    string TimeZone,
    string Currency,
    string Paper,
    string Units,
    string SizeSystemShown,
    bool PricesIncludeTax,
    int ReturnDays,
    IReadOnlyList<DemoTaxRate> TaxRates);

internal sealed record DemoTaxRate(string Category, int RateBasisPoints);

/// <summary>Who comes to the demo shop, and what happened there up to a day.</summary>
internal sealed record DemoHistory(DateOnly AsOf, IReadOnlyList<DemoGuardian> Guardians, IReadOnlyList<DemoDancer> Dancers, IReadOnlyList<DemoFitting> Fittings);

internal sealed record DemoGuardian(string Key, string Name, string Contact);

internal sealed record DemoDancer(string Key, string Name, string KnownAs, DateOnly BirthDate, Sex Sex, string Studio, string Teacher, string? Guardian, DemoConsent Consent);

internal sealed record DemoConsent(string GivenBy, DateTimeOffset GivenAt);

internal sealed record DemoFitting(
    string Key,
    string Dancer,
    string Kind,
    bool FirstPair,
    DateOnly? TeacherAgreedOn,
    DateTimeOffset OpenedAt,
    DateTimeOffset ClosedAt,
    IReadOnlyList<Side> Sore,
    IReadOnlyList<DemoReading> Readings,
    IReadOnlyList<DemoTryOn> TryOns,
    DemoDecision Decision);

internal sealed record DemoReading(Side Foot, string Trait, double Value, string Unit, string? Method);

internal sealed record DemoTryOn(string Sku, bool? Fits, IReadOnlyList<PadUnderFoot>? Pads);

internal sealed record DemoDecision(string Kind, string? Reason, string Why, string? Sku, IReadOnlyList<PadUnderFoot> Pads);
