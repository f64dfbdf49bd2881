namespace ShopFit.Web.Features.Catalogue;

/// <summary>What importing a file would do, or what is in the way.</summary>
/// <param name="IsTable">Whether the file could be read as a table; if not, no row of it can be taken.</param>
/// <param name="New">Codes that the shop does not have.</param>
/// <param name="Changed">Codes whose row says something new.</param>
/// <param name="Unchanged">Codes whose row says what is on file.</param>
/// <param name="Skipped">Rows with a problem.</param>
/// <param name="Problems">The first problems, by line.</param>
/// <param name="ProblemCount">How many problems there are in all.</param>
public sealed record CatalogueReport(
    bool IsTable,
    int New,
    int Changed,
    int Unchanged,
    int Skipped,
    IReadOnlyList<CatalogueProblem> Problems,
    int ProblemCount)
{
    /// <summary>Rows that can be taken.</summary>
    public int Good => New + Changed + Unchanged;

    /// <summary>Whether the file is taken: as a whole, or its good rows where skipping the bad ones was asked for.</summary>
    public bool IsTaken(bool skipBad) => IsTable && (ProblemCount == 0 || (skipBad && Good > 0));
}
