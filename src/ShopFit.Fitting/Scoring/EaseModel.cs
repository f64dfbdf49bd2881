using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Fitting.Scoring;

/// <summary>The criteria of one kind of footwear with the ease that each of them judges.</summary>
internal sealed class EaseModel
{
    private EaseModel(Criterion[] criteria, EaseRow[] rows)
    {
        Criteria = criteria;
        Rows = rows;
    }

    public Criterion[] Criteria { get; }

    /// <summary>The ease of each criterion, in the same order.</summary>
    public EaseRow[] Rows { get; }

    public int Count => Criteria.Length;

    /// <exception cref="ArgumentException">There is no such kind of footwear.</exception>
    public static EaseModel Of(string kind, FitDefaults defaults)
    {
        var criteria = defaults.CriteriaOf(kind) ?? throw new ArgumentException($"There is no kind of footwear called '{kind}'.", nameof(kind));
        return new([.. criteria], [.. criteria.Select(criterion => RowOf(criterion.Id, defaults))]);
    }

    public static EaseRow RowOf(string criterion, FitDefaults defaults) =>
        defaults.Eases.FirstOrDefault(row => row.Criterion == criterion)
        ?? throw new ArgumentException($"No ease is set for the criterion '{criterion}'.", nameof(criterion));

    /// <summary>Adds <paramref name="factor"/> times the need of a foot, without its constant, to a direction over both feet.</summary>
    public static void AddNeed(Span<double> direction, EaseRow row, Side foot, double factor)
    {
        foreach (var term in row.Need)
        {
            direction[(Traits.Count * (int)foot) + (int)term.Trait] += factor * term.Factor;
        }
    }
}
