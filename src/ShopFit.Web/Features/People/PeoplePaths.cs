namespace ShopFit.Web.Features.People;

/// <summary>Where people sign in and out.</summary>
public static class PeoplePaths
{
    public const string SignIn = "/sign-in";

    public const string SignOut = "/sign-out";

    public const string FirstManager = "/first-manager";

    public const string NotPermitted = "/not-permitted";

    /// <summary>An address to go back to, held to this site: anything else becomes the first page.</summary>
    public static string Local(string? returnUrl) =>
        returnUrl is ['/', ..] && !returnUrl.StartsWith("//", StringComparison.Ordinal) && !returnUrl.Contains('\\', StringComparison.Ordinal) && !returnUrl.Any(char.IsControl)
            ? returnUrl
            : "/";
}
