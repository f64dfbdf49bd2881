using Microsoft.Extensions.Localization;

namespace ShopFit.Web.Features.Settings;

/// <summary>What the rows of changed settings are about, in words.</summary>
public sealed class SettingNames(FitNumberNames fitNumbers, IStringLocalizer<SettingsWords> words)
{
    private const string Tax = "shop.tax.";

    /// <summary>What was changed: "Currency", "Wren: password", "Pointe shoes: Length, weight".</summary>
    public string Of(SeenChange change)
    {
        var person = change.Subject.Length > 0 ? change.Subject : words["somebody"].Value;
        return change.Path switch
        {
            "shop.name" => words["Name of the shop"],
            "shop.address" => words["Address"],
            "shop.contact" => words["How to reach it"],
            "shop.time-zone" => words["Time zone"],
            "shop.currency" => words["Currency"],
            "shop.paper" => words["Paper"],
            "shop.units" => words["Lengths"],
            "shop.size-system" => words["Sizes offered first"],
            "shop.prices-include-tax" => words["Prices with tax"],
            "shop.return-days" => words["Days in which unworn goods may come back"],
            "shop.kinds" => words["What the shop fits"],
            _ when change.Path.StartsWith(Tax, StringComparison.Ordinal) => words["Tax on {0}, per cent", CategoryNames.Of(change.Path[Tax.Length..], words)],
            _ when change.Path.StartsWith(SettingPaths.Keys, StringComparison.Ordinal) => words["Key of a program"],
            _ when change.Path.StartsWith(SettingPaths.People, StringComparison.Ordinal) => change.Path.Split('.')[^1] switch
            {
                "role" => words["{0}: works here", person],
                "name" => words["{0}: name", person],
                "sign-in-name" => words["{0}: name to sign in with", person],
                "password" => words["{0}: a new password", person],
                _ => words["{0}: may sign in", person],
            },
            _ => fitNumbers.Of(change.Path),
        };
    }

    /// <summary>What it was or became.</summary>
    public string Value(string path, string? kept) => (path, kept) switch
    {
        (_, "yes") => words["yes"],
        (_, "no") => words["no"],
        (_, People.Roles.Manager) when path.StartsWith(SettingPaths.People, StringComparison.Ordinal) => words["manager"],
        (_, People.Roles.Fitter) when path.StartsWith(SettingPaths.People, StringComparison.Ordinal) => words["fitter"],
        ("shop.kinds", { } all) => string.Join(", ", all.Split(' ').Select(fitNumbers.Kind)),
        ("shop.size-system", { } id) => fitNumbers.SizeSystem(id),
        _ => fitNumbers.Kept(path, kept),
    };
}
