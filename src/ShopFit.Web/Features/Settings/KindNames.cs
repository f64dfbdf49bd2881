using Microsoft.Extensions.Localization;

namespace ShopFit.Web.Features.Settings;

/// <summary>The kinds of footwear as people call them.</summary>
internal static class KindNames
{
    /// <summary>The name: "Soft ballet shoes".</summary>
    public static string Of(string kind, IStringLocalizer<FitNumberWords> words) => kind switch
    {
        "pointe" => words["Pointe shoes"],
        "demi-pointe" => words["Demi-pointe shoes"],
        "soft" => words["Soft ballet shoes"],
        "jazz" => words["Jazz shoes"],
        "tap" => words["Tap shoes"],
        "character" => words["Character shoes"],
        _ => kind,
    };
}
