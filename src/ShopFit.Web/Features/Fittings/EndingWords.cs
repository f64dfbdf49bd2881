using Microsoft.Extensions.Localization;

namespace ShopFit.Web.Features.Fittings;

/// <summary>The reasons for not today, and what is missing of an ending, in words.</summary>
internal static class EndingWords
{
    /// <summary>A reason as it stands on its key.</summary>
    public static string Reason(string reason, IStringLocalizer<FittingWords> words) => reason switch
    {
        NotTodayReasons.NotOnShelf => words["Not on the shelf"],
        NotTodayReasons.Price => words["The price"],
        NotTodayReasons.NotReady => words["Not yet ready"],
        NotTodayReasons.Sore => words["Sore today"],
        NotTodayReasons.Undecided => words["Undecided"],
        _ => reason,
    };

    /// <summary>What is missing.</summary>
    public static string Problem(DecideProblem problem, IStringLocalizer<FittingWords> words) => problem switch
    {
        DecideProblem.ReasonMissing => words["Reason: choose one of them. It is what the shop most needs to know."],
        DecideProblem.WhyMissing => words["When or what for: choose a day, or write down what for, so that whoever is here then knows."],
        DecideProblem.WhyTooLong => words["The words are longer than {0} letters: write them shorter.", DecideFitting.LongestWhy],
        DecideProblem.PairMissing => words["An order needs its pair: choose it on the shortlist."],
        _ => words["This is not one of the endings."],
    };
}
