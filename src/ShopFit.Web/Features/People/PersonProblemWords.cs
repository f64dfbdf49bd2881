using Microsoft.Extensions.Localization;

namespace ShopFit.Web.Features.People;

/// <summary>What is wrong with somebody's names or password, as a sentence.</summary>
internal static class PersonProblemWords
{
    public static string Of(PersonProblem problem, string userName, IStringLocalizer<StaffWords> words) => problem switch
    {
        PersonProblem.UserNameNotAllowed => words["Name to sign in with: 1 to {0} letters.", Person.LongestName],
        PersonProblem.UserNameTaken => words["Name to sign in with: somebody signs in as “{0}” already. Choose another.", userName.Trim()],
        PersonProblem.DisplayNameNotAllowed => words["Name: 1 to {0} letters, as colleagues say it.", Person.LongestName],
        PersonProblem.PasswordNotAllowed => words["Password: {0} to 200 characters. A few words in a row are good.", NewPerson.ShortestPassword],
        _ => words["Choose fitter or manager."],
    };
}
