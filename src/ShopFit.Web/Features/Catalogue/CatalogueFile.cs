namespace ShopFit.Web.Features.Catalogue;

/// <summary>A catalogue file after reading: the rows that are good and everything that is not.</summary>
public sealed record CatalogueFile
{
    /// <summary>How many problems are kept to be shown; the rest are only counted.</summary>
    public const int ProblemsShown = 200;

    /// <summary>Whether the file could be read as a table at all. If not, it has no rows and no row can be skipped.</summary>
    public required bool IsTable { get; init; }

    /// <summary>The columns that the file has. A column that is missing leaves what is on file alone.</summary>
    public required IReadOnlySet<string> Columns { get; init; }

    /// <summary>The good rows, in the order of the file.</summary>
    public required IReadOnlyList<CatalogueRow> Rows { get; init; }

    /// <summary>Rows that have a problem.</summary>
    public required int BadRows { get; init; }

    /// <summary>The first problems, by line.</summary>
    public required IReadOnlyList<CatalogueProblem> Problems { get; init; }

    /// <summary>How many problems there are in all.</summary>
    public required int ProblemCount { get; init; }
}
