using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Scoring;

/// <summary>What shares a part of a shoe's difference from its form on file.</summary>
internal enum ShoeLevel
{
    /// <summary>All models of a maker.</summary>
    Maker = 0,

    /// <summary>All sizes of a model.</summary>
    Model = 1,

    /// <summary>The pair alone, both its shoes.</summary>
    Pair = 2,
}

/// <summary>A maker, a model or a pair.</summary>
/// <param name="Level">Which of them.</param>
/// <param name="Key">Its key.</param>
internal readonly record struct ShoeKey(ShoeLevel Level, string Key);

/// <summary>The three levels of a shoe.</summary>
internal static class ShoeLevels
{
    public const int Count = 3;

    public static IReadOnlyList<ShoeLevel> All { get; } = [ShoeLevel.Maker, ShoeLevel.Model, ShoeLevel.Pair];

    public static string KeyOf(ShoeOnFile shoe, ShoeLevel level) => level switch
    {
        ShoeLevel.Maker => shoe.Maker,
        ShoeLevel.Model => shoe.Model,
        _ => shoe.Sku,
    };

    public static double SdOf(ShoeForm form, FormPart part, ShoeLevel level, FitDefaults defaults) => level switch
    {
        ShoeLevel.Maker => defaults.FormSds.MakersPart(part, form.SourceOf(part)),
        ShoeLevel.Model => defaults.FormSds.ModelsPart(part, form.SourceOf(part)),
        _ => defaults.FormSds.PairScatter[(int)part],
    };
}
