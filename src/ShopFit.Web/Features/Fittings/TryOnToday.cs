namespace ShopFit.Web.Features.Fittings;

/// <summary>Whether anything may be put on a foot today. Everything that fetches a pair or tries one on asks here.</summary>
public static class TryOnToday
{
    /// <summary>What speaks against it; null where nothing does. It clears nobody: whoever is there still looks.</summary>
    /// <param name="kind">Kind of footwear, such as "pointe".</param>
    /// <param name="ageYears">Age on the day, years; null where it is not known.</param>
    /// <param name="skinBroken">Skin is broken somewhere.</param>
    public static NoTryOn? Bars(string kind, double? ageYears, bool skinBroken) =>
        skinBroken ? NoTryOn.SkinBroken : PointeAge.IsForLater(kind, ageYears) ? NoTryOn.ForLater : null;

    /// <inheritdoc cref="Bars(string, double?, bool)"/>
    public static NoTryOn? Bars(FittingRecord fitting) => Bars(fitting.Kind, fitting.AgeYears, fitting.SkinBroken);
}

/// <summary>Why nothing is tried on today.</summary>
public enum NoTryOn
{
    /// <summary>Skin is broken: it heals first.</summary>
    SkinBroken,

    /// <summary>Too young for this kind of shoe.</summary>
    ForLater,
}
