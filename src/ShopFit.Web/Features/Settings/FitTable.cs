using ShopFit.Fitting.Defaults;

namespace ShopFit.Web.Features.Settings;

/// <summary>The fit numbers of one group as a table.</summary>
/// <param name="Group">Id of the group.</param>
/// <param name="Rows">Ids of its rows.</param>
/// <param name="Columns">Ids of its columns.</param>
public sealed record FitTable(string Group, IReadOnlyList<string> Rows, IReadOnlyList<string> Columns)
{
    private readonly Dictionary<(string Row, string Column), AdjustableNumber> _cells =
        AdjustableNumbers.All.Where(number => number.Group == Group).ToDictionary(number => (number.Row, number.Column));

    /// <summary>All tables, in the order in which they are shown.</summary>
    public static IReadOnlyList<FitTable> All { get; } =
    [
        .. AdjustableNumbers.All.GroupBy(number => number.Group, StringComparer.Ordinal).Select(group => new FitTable(
            group.Key,
            [.. group.Select(number => number.Row).Distinct(StringComparer.Ordinal)],
            [.. group.Select(number => number.Column).Distinct(StringComparer.Ordinal)])),
    ];

    /// <summary>The numbers of the table.</summary>
    public IEnumerable<AdjustableNumber> Numbers => _cells.Values;

    /// <summary>The number in a cell; null where there is none.</summary>
    public AdjustableNumber? At(string row, string column) => _cells.GetValueOrDefault((row, column));

    /// <summary>The table of that group; null where there is none.</summary>
    public static FitTable? Find(string group) => All.FirstOrDefault(table => table.Group == group);
}
