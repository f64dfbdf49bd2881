using Microsoft.Extensions.Localization;
using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.Features.Settings;

/// <summary>Categories of goods as people call them.</summary>
internal static class CategoryNames
{
    /// <summary>The name: "Shoes". A category that the shop made up itself is answered as it is.</summary>
    public static string Of(string category, IStringLocalizer<SettingsWords> words) => category switch
    {
        ItemCategories.Shoes => words["Shoes"],
        ItemCategories.Pads => words["Pads"],
        ItemCategories.Ribbon => words["Ribbon"],
        ItemCategories.Elastic => words["Elastic"],
        ItemCategories.Thread => words["Thread"],
        ItemCategories.Service => words["Sewing"],
        _ => category,
    };
}
