using Microsoft.Extensions.Localization;
using ShopFit.Web.Features.Sales;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Puts the ways to narrow a shortlist into words.</summary>
internal static class ShortlistFilterWords
{
    /// <summary>A choice by what the teacher asks for.</summary>
    public static string Teacher(ShortlistChoice choice, IStringLocalizer<ShortlistWords> words) =>
        Teacher(choice.Option.Teacher, words);

    /// <summary>What a list is narrowed to, said of one of the ways.</summary>
    public static string Said(ShortlistFilter filter, ShortlistWish wish, ShortlistChoices choices, string currency, IStringLocalizer<ShortlistWords> words) => filter switch
    {
        ShortlistFilter.Maker => wish.Maker!,
        ShortlistFilter.Model => choices.Models.FirstOrDefault(choice => choice.Chosen)?.Name ?? words["one model"],
        ShortlistFilter.Price => words["up to {0}", new Money(wish.PriceUpToMinor!.Value, currency)],
        ShortlistFilter.Teacher => Teacher(wish.Teacher, words),
        _ => words["only on the shelf"],
    };

    private static string Teacher(TeachersWish wish, IStringLocalizer<ShortlistWords> words) =>
        words[wish is TeachersWish.AskedOnly ? "only what the teacher asks for" : "without what the teacher does not want"];
}
