using static ShopFit.Web.Features.Catalogue.CatalogueWords;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>A catalogue file beside what is on file: which rows are new, which change something, and which contradict it.</summary>
internal sealed class CatalogueComparison
{
    private readonly List<CatalogueProblem> _problems;
    private readonly HashSet<string> _skusInFile;

    private CatalogueComparison(CatalogueFile file, CatalogueOnFile onFile)
    {
        _problems = [.. file.Problems];
        _skusInFile = file.Rows.Select(row => row.Sku).ToHashSet(StringComparer.Ordinal);
        ProblemCount = file.ProblemCount;
        Skipped = file.BadRows;

        foreach (var row in file.Rows)
        {
            if (ProblemOf(row, onFile) is { } problem)
            {
                Skipped++;
                ProblemCount++;
                if (_problems.Count < CatalogueFile.ProblemsShown)
                {
                    _problems.Add(problem);
                }
            }
            else if (!onFile.Items.TryGetValue(row.Sku, out var item))
            {
                New.Add(row);
            }
            else if (MergedRow.Of(row, file.Columns, item, onFile.Sizes[item.Id]) is var merged && merged.Changes(item, onFile.Sizes[item.Id], ModelIdOf(row, onFile)))
            {
                Changed.Add((item.Id, merged));
            }
            else
            {
                Unchanged++;
            }
        }
    }

    public List<CatalogueRow> New { get; } = [];

    public List<(Guid ItemId, MergedRow Row)> Changed { get; } = [];

    public int Unchanged { get; private set; }

    public int Skipped { get; private set; }

    public int ProblemCount { get; private set; }

    public static CatalogueComparison Of(CatalogueFile file, CatalogueOnFile onFile) => new(file, onFile);

    public CatalogueReport ToReport(CatalogueFile file) =>
        new(file.IsTable, New.Count, Changed.Count, Unchanged, Skipped, [.. _problems.OrderBy(problem => problem.Line)], ProblemCount);

    private static Guid? ModelIdOf(CatalogueRow row, CatalogueOnFile onFile) =>
        onFile.Makers.TryGetValue(row.Maker, out var maker) && onFile.Models.TryGetValue((maker.Id, row.Model), out var model) ? model.Id : null;

    private CatalogueProblem? ProblemOf(CatalogueRow row, CatalogueOnFile onFile)
    {
        if (onFile.Items.TryGetValue(row.Sku, out var item) && !onFile.Sizes.ContainsKey(item.Id))
        {
            return new CatalogueProblem(row.Line, CatalogueColumns.Sku, Say(CatalogueWord.SkuOfOtherGoods, row.Sku, item.Name));
        }

        // On a label and in a scanner a code is a code, however it is written.
        if (item is null && onFile.CodesWhateverCase[row.Sku].FirstOrDefault() is { } written)
        {
            return new CatalogueProblem(row.Line, CatalogueColumns.Sku, Say(CatalogueWord.SkuOnFileByCase, row.Sku, written));
        }

        // A number may move from one code to another when both stand in the file; the file itself has each number once.
        if (row.Gtin is not null && onFile.CodeOfGtin.TryGetValue(row.Gtin, out var holder) && holder != row.Sku && !_skusInFile.Contains(holder))
        {
            return new CatalogueProblem(row.Line, CatalogueColumns.Gtin, Say(CatalogueWord.GtinOnFile, row.Gtin, holder));
        }

        return onFile.Makers.TryGetValue(row.Maker, out var maker) && onFile.Models.TryGetValue((maker.Id, row.Model), out var model) && model.Kind != row.Kind
            ? new CatalogueProblem(row.Line, CatalogueColumns.Kind, Say(CatalogueWord.ModelOnFileOfOtherKind, row.Maker, row.Model, model.Kind, row.Kind))
            : null;
    }
}
