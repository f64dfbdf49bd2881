using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Measures;

namespace ShopFit.Web.Features.Settings;

/// <summary>What is allowed in the settings of a shop.</summary>
public static class ShopSettingsRules
{
    public const int LongestName = 200;
    public const int LongestAddress = 500;
    public const int LongestContact = 200;

    /// <summary>Most days in which goods may come back.</summary>
    public const int MostReturnDays = 365;

    /// <summary>A tax of 100 %, in hundredths of a per cent.</summary>
    public const int HighestRate = 10_000;

    /// <summary>What is wrong with settings by themselves.</summary>
    public static IReadOnlyList<ShopProblem> Look(ShopSettings settings)
    {
        (bool Wrong, ShopField Field, string About)[] rules =
        [
            (settings.Name.Trim().Length is 0 or > LongestName, ShopField.Name, ""),
            (settings.Address.Trim().Length > LongestAddress, ShopField.Address, ""),
            (settings.Contact.Trim().Length > LongestContact, ShopField.Contact, ""),
            (!IsTimeZone(settings.TimeZone), ShopField.TimeZone, settings.TimeZone),
            (!Currencies.All.Contains(settings.Currency), ShopField.Currency, settings.Currency),
            (settings.Paper is not ("A4" or "Letter"), ShopField.Paper, settings.Paper),
            (settings.Units is not ("mm" or "in"), ShopField.Units, settings.Units),
            (SizeSystem.Find(settings.SizeSystemShown) is null, ShopField.SizeSystemShown, settings.SizeSystemShown),
            (settings.ReturnDays is < 0 or > MostReturnDays, ShopField.ReturnDays, ""),
            (!FitDefaults.Standard.Kinds.Any(kind => settings.Kinds.Contains(kind.Id, StringComparer.Ordinal)), ShopField.Kinds, ""),
        ];
        return
        [
            .. rules.Where(rule => rule.Wrong).Select(rule => new ShopProblem(rule.Field, ShopProblemCode.NotAllowed, rule.About)),
            .. settings.TaxRates.Where(rate => rate.Value is < 0 or > HighestRate).Select(rate => new ShopProblem(ShopField.Tax, ShopProblemCode.NotAllowed, rate.Key)),
        ];
    }

    private static bool IsTimeZone(string id) => TimeZoneInfo.TryFindSystemTimeZoneById(id, out var zone) && zone.HasIanaId;
}

/// <summary>A setting of the shop.</summary>
public enum ShopField
{
    Name = 0,
    Address = 1,
    Contact = 2,
    TimeZone = 3,
    Currency = 4,
    Paper = 5,
    Units = 6,
    SizeSystemShown = 7,
    ReturnDays = 8,
    Kinds = 9,
    Tax = 10,
}

/// <summary>What can be wrong with a setting.</summary>
public enum ShopProblemCode
{
    /// <summary>Outside of what is allowed.</summary>
    NotAllowed = 0,

    /// <summary>The currency of a shop that has sold already.</summary>
    SalesExist = 1,

    /// <summary>A currency with other decimals, in a shop that has prices.</summary>
    PricesExist = 2,
}

/// <summary>A setting that cannot be saved.</summary>
/// <param name="Field">Which setting.</param>
/// <param name="Code">Why.</param>
/// <param name="About">The value, or the category of a tax.</param>
public sealed record ShopProblem(ShopField Field, ShopProblemCode Code, string About);
