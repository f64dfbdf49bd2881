using Microsoft.Extensions.Localization;

namespace ShopFit.Web.Features.Studios;

/// <summary>Says what is wrong with what was written down of a studio.</summary>
internal static class StudioSentences
{
    public static string Of(StudioProblem problem, string name, IStringLocalizer<StudioWords> words) => problem switch
    {
        StudioProblem.NameMissing => words["Name: write down what the studio is called."],
        StudioProblem.NameTooLong => words["Name: longer than {0} letters. Write it shorter.", Studio.LongestName],
        StudioProblem.WordsTooLong => words["One of the lines is longer than {0} letters. Write it shorter.", Studio.LongestWords],
        StudioProblem.NameTaken => words["Name: “{0}” is on file already. Look for it in the list.", name.Trim()],
        _ => words["One of the models is no longer in the catalogue. Look at the list again."],
    };
}
