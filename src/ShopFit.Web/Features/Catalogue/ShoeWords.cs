using ShopFit.Fitting.Shoes;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Names the words of the pages of models, sizes, samples and labels: <c>ShoeWords.resx</c>.</summary>
public sealed class ShoeWords
{
    internal ShoeWords()
    {
    }

    /// <summary>What a part of the inside is called.</summary>
    internal static string NameOf(Microsoft.Extensions.Localization.IStringLocalizer<ShoeWords> words, FormPart part) => part switch
    {
        FormPart.Length => words["Length"],
        FormPart.BoxBreadth => words["Box, breadth"],
        FormPart.BallGirth => words["Ball, girth"],
        FormPart.HeelBreadth => words["Heel, breadth"],
        FormPart.CrownDepth => words["Crown, height"],
        FormPart.ToeSlope => words["Slope of the box"],
        FormPart.Vamp => words["Vamp"],
        _ => words["Shank"],
    };

    /// <summary>A number of the inside without its unit: "243.5".</summary>
    internal static string Number(double value) => value.ToString("0.#", System.Globalization.CultureInfo.CurrentCulture);

    /// <summary>A change, with its sign: "+1.2", "−3", "0".</summary>
    internal static string Change(double value) => value.ToString("+0.#;−0.#;0", System.Globalization.CultureInfo.CurrentCulture);

    /// <summary>A number with its unit: "243.5 mm", "5 points".</summary>
    internal static string WithUnit(Microsoft.Extensions.Localization.IStringLocalizer<ShoeWords> words, FormPart part, string number) =>
        part is FormPart.Shank ? words["{0} points", number] : words["{0} mm", number];
}
