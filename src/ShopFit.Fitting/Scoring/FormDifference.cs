using ShopFit.Fitting.Defaults;

namespace ShopFit.Fitting.Scoring;

/// <summary>How the inside of one shoe differs from that of another at one place.</summary>
/// <param name="CriterionId">The place, such as <c>heel</c>.</param>
/// <param name="Difference">The other shoe minus this one, mm (shank: points).</param>
public sealed record FormDifference(string CriterionId, double Difference)
{
    /// <summary>The differences at all places of a shoe that are asked about, in their order.</summary>
    /// <remarks>Of the forms on file: pads, and what is believed of the pairs, are no part of it.</remarks>
    /// <param name="from">The shoe that the other is compared with.</param>
    /// <param name="to">The other shoe, of the same kind.</param>
    /// <param name="defaults">The numbers of the shop; null: the standard ones.</param>
    public static IReadOnlyList<FormDifference> Between(PairFit from, PairFit to, FitDefaults? defaults = null)
    {
        var numbers = defaults ?? FitDefaults.Standard;
        return
        [
            .. from.Criteria.Select(fit => fit.Criterion.Id).Distinct(StringComparer.Ordinal)
                .Select(id => (Id: id, EaseModel.RowOf(id, numbers).Part))
                .Where(place => place.Part is not null)
                .Select(place => new FormDifference(place.Id, to.Shoe.Form[place.Part!.Value] - from.Shoe.Form[place.Part.Value])),
        ];
    }
}
