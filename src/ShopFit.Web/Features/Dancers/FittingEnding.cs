using Microsoft.Extensions.Localization;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Dancers;

/// <summary>How a fitting ended, in a few words.</summary>
internal static class FittingEnding
{
    /// <summary>The words for one line of a list.</summary>
    public static string Of(FittingRow row, IStringLocalizer<DancerWords> words) => row switch
    {
        { ClosedAt: null } => words["open since {0}", row.Time.Clock(row.OpenedAt)],
        { Decision.Kind: DecisionKinds.Sold } => words["fitted: {0}", row.Decision.Pair],
        { Decision.Kind: DecisionKinds.Order } => words["to be ordered: {0}", row.Decision.Pair],
        { Decision.Kind: DecisionKinds.ComeBack } => words["to come back: {0}", ComeBack(row.Decision, row.Time)],
        { Decision.Reason: NotTodayReasons.NotOnShelf } => words["not today: not on the shelf"],
        { Decision.Reason: NotTodayReasons.Price } => words["not today: the price"],
        { Decision.Reason: NotTodayReasons.NotReady } => words["not yet: still growing into it"],
        { Decision.Reason: NotTodayReasons.Sore } => words["not today: sore"],
        { Decision.Reason: NotTodayReasons.Undecided } => words["not today: undecided"],
        _ => words["closed"],
    };

    private static string ComeBack(SeenDecision decision, ShopTime time) =>
        string.Join(", ", new[] { decision.DueOn is { } day ? time.Date(day) : "", decision.Why }.Where(part => part.Length > 0));
}
