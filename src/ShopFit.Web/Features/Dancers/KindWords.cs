using Microsoft.Extensions.Localization;

namespace ShopFit.Web.Features.Dancers;

/// <summary>Kinds of footwear, as the shop says them.</summary>
internal static class KindWords
{
    /// <summary>A kind, as it stands on a key.</summary>
    public static string Of(string kind, IStringLocalizer<DancerWords> words) => kind switch
    {
        "pointe" => words["Pointe"],
        "demi-pointe" => words["Demi-pointe"],
        "soft" => words["Soft ballet"],
        "jazz" => words["Jazz"],
        "character" => words["Character"],
        "tap" => words["Tap"],
        _ => kind,
    };
}
