using Microsoft.Extensions.Localization;

namespace ShopFit.Web.Features.Fittings;

/// <summary>The reasons against the first proposal, in words.</summary>
internal static class OverruleSentences
{
    /// <summary>A reason as it stands on its key; empty for none.</summary>
    public static string Reason(string code, IStringLocalizer<OverruleWords> words) => code switch
    {
        OverruleReasons.Preferred => words["She preferred it"],
        OverruleReasons.FeltBetter => words["It felt better"],
        OverruleReasons.Teacher => words["The teacher asks for it"],
        OverruleReasons.Price => words["The price"],
        OverruleReasons.HereNow => words["It is here now"],
        _ => code,
    };
}
