using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Web.Features.Fittings;

/// <summary>Which checks are made at a try-on.</summary>
public static class FittingChecks
{
    private const string Pointe = "pointe";

    // What a first pair, or the model that a dancer has already, is looked at for. Common practice, no source.
    private static readonly HashSet<string> Short = new(StringComparer.Ordinal) { "toes-flat", "toe-hold", "ball-sides", "drop", "heel-fabric", "sole-line" };

    /// <summary>The checks of a kind of footwear, in the order in which a dancer is seen: those whose places it has, and en pointe only where she rises that far.</summary>
    public static IReadOnlyList<Check> For(string kind, FitDefaults numbers)
    {
        var places = numbers.CriteriaOf(kind)?.Select(criterion => criterion.Id).ToHashSet(StringComparer.Ordinal) ?? [];
        return
        [
            .. numbers.Checks
                .Where(check => kind is Pointe || check is { OnlyRecorded: false, Position: not TryOnPosition.EnPointe })
                .Where(check => check.Sees.All(term => places.Contains(term.Criterion)))
                .OrderBy(check => check.Position),
        ];
    }

    /// <summary>Whether it is on the shorter list.</summary>
    public static bool IsShort(Check check) => Short.Contains(check.Id);
}
