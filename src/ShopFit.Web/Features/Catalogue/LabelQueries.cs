using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>The words on a maker's labels, what they mean, and what another meaning would change. Reads only.</summary>
public sealed class LabelQueries(ShopContexts contexts)
{
    private const double Least = 0.005;

    /// <summary>The maker's words; null where there is no such maker.</summary>
    public async Task<SeenLabels?> SeeAsync(Guid makerId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var maker = await db.Makers.Where(row => row.Id == makerId).Select(row => row.Name).SingleOrDefaultAsync(cancellationToken);
        if (maker is null)
        {
            return null;
        }

        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        var numbers = FitNumbers.Over(shop.FitOverridesJson).Numbers;
        var sizes = await SizesAsync(db, makerId, cancellationToken);
        var mappings = await db.LabelMappings.AsNoTracking().Where(row => row.MakerId == makerId).ToListAsync(cancellationToken);
        var names = await ModelQueries.NamesAsync(db, mappings.Select(mapping => mapping.PersonId), cancellationToken);
        var inOrder = mappings.OrderByDescending(mapping => mapping.MappedAt).ThenByDescending(mapping => mapping.Id).ToList();
        var inForce = inOrder.Find(mapping => mapping.WithdrawnAt is null);
        return new SeenLabels(
            maker,
            inForce?.Meanings() ?? LabelMeanings.None,
            [.. sizes.GroupBy(size => size.SizeSystem, StringComparer.Ordinal).OrderByDescending(group => group.Count()).Select(group => SystemOf(group.Key, group.Count(), numbers))],
            WordsOf(sizes, size => size.Width, size => size.Form.WidthStep),
            WordsOf(sizes, size => size.Option, size => size.Form.BoxStep, size => size.Form.VampStep),
            WordsOf(sizes, size => size.ShankName, size => size.Form.ShankPoints),
            [.. inOrder.Select(mapping => new SeenMapping(mapping.Id, mapping.MappedAt, names.GetValueOrDefault(mapping.PersonId, ""), mapping.WithdrawnAt, mapping.Id == inForce?.Id))],
            numbers.Label.Parts.Single(part => part.Part is FormPart.BallGirth).PerWidthStep,
            ShopTime.Of(shop));
    }

    /// <summary>What other meanings would change inside the maker's shoes.</summary>
    public async Task<LabelPreview> PreviewAsync(Guid makerId, LabelMeanings meanings, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var overrides = await db.Shops.Where(row => row.Id == db.ShopId).Select(row => row.FitOverridesJson).SingleAsync(cancellationToken);
        var now = await FormsOnFile.ReadAsync(db, FitNumbers.Over(overrides).Numbers, cancellationToken);
        var then = now.With(makerId, meanings);
        var sizes = await SizesAsync(db, makerId, cancellationToken);
        var forms = sizes.Select(size => (Now: now.Of(makerId, size).Form, Then: then.Of(makerId, size).Form)).ToList();
        var parts = (
            from part in Enum.GetValues<FormPart>()
            let changes = forms.Select(form => form.Then[part] - form.Now[part]).Where(change => Math.Abs(change) >= Least).ToList()
            where changes.Count > 0
            select new LabelPartChange(part, changes.Count, changes.Min(), changes.Max())).ToList();
        return new LabelPreview(
            sizes.Count,
            forms.Count(form => Enum.GetValues<FormPart>().Any(part => Math.Abs(form.Then[part] - form.Now[part]) >= Least)),
            parts);
    }

    private static Task<List<ShoeSize>> SizesAsync(ShopDbContext db, Guid makerId, CancellationToken cancellationToken) => (
        from size in db.ShoeSizes.AsNoTracking()
        join model in db.ShoeModels on size.ModelId equals model.Id
        where model.MakerId == makerId
        select size).ToListAsync(cancellationToken);

    private static SeenSystem SystemOf(string id, int sizes, FitDefaults numbers)
    {
        var perSize = LabelMeanings.MillimetresASize(SizeSystem.Find(id)!);
        return new SeenSystem(id, sizes, numbers.Label.AllowanceOf(id) / perSize);
    }

    private static List<SeenWord> WordsOf(List<ShoeSize> sizes, Func<ShoeSize, string> word, params IReadOnlyList<Func<ShoeSize, double?>> given)
    {
        var words = sizes.GroupBy(word, StringComparer.Ordinal)
            .Select(group => new SeenWord(group.Key, group.Count(), [.. given.Select(step => Agreed(group.Select(step)))]))
            .OrderBy(found => found.CatalogueSteps[0] ?? 0).ThenBy(found => found.Word, StringComparer.Ordinal)
            .ToList();

        // A maker that never fills the column has no word to be asked about.
        return words is [{ Word: "" }] ? [] : words;
    }

    // What the catalogue gives for a word, where it always gives the same.
    private static double? Agreed(IEnumerable<double?> steps) => steps.Distinct().Take(2).ToList() is [var only] ? only : null;
}

/// <summary>A maker's labels as their page shows them.</summary>
/// <param name="Maker">The maker.</param>
/// <param name="Meanings">What the shop has said of them.</param>
/// <param name="Systems">The size systems that its rows use.</param>
/// <param name="Widths">Its words for widths.</param>
/// <param name="Options">Its words for any further choice.</param>
/// <param name="Shanks">Its words for shanks.</param>
/// <param name="History">What was said before, the latest first.</param>
/// <param name="GirthAWidthStep">mm of girth that one width step is.</param>
/// <param name="Time">The shop's own time.</param>
public sealed record SeenLabels(
    string Maker,
    LabelMeanings Meanings,
    IReadOnlyList<SeenSystem> Systems,
    IReadOnlyList<SeenWord> Widths,
    IReadOnlyList<SeenWord> Options,
    IReadOnlyList<SeenWord> Shanks,
    IReadOnlyList<SeenMapping> History,
    double GirthAWidthStep,
    ShopTime Time);

/// <summary>A size system that a maker's rows use.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Sizes">Rows that use it.</param>
/// <param name="UsualLabelLessGauge">How many sizes labels of it run ahead by the shop's numbers.</param>
public sealed record SeenSystem(string Id, int Sizes, double UsualLabelLessGauge);

/// <summary>A word on a maker's labels.</summary>
/// <param name="Word">The word; empty for labels without one.</param>
/// <param name="Sizes">Rows that use it.</param>
/// <param name="CatalogueSteps">The steps (points) that the catalogue gives for it; null where it gives several or none.</param>
public sealed record SeenWord(string Word, int Sizes, IReadOnlyList<double?> CatalogueSteps);

/// <summary>What was once said of a maker's labels.</summary>
/// <param name="Id">Its key.</param>
/// <param name="MappedAt">When.</param>
/// <param name="Person">By whom.</param>
/// <param name="WithdrawnAt">When it was taken back; null where it was not.</param>
/// <param name="InForce">Whether it holds now.</param>
public sealed record SeenMapping(Guid Id, DateTimeOffset MappedAt, string Person, DateTimeOffset? WithdrawnAt, bool InForce);

/// <summary>What other meanings would change.</summary>
/// <param name="Sizes">All sizes of the maker.</param>
/// <param name="Changed">Those whose inside would change.</param>
/// <param name="Parts">The parts that would change.</param>
public sealed record LabelPreview(int Sizes, int Changed, IReadOnlyList<LabelPartChange> Parts);

/// <summary>What would change of one part.</summary>
/// <param name="Part">Which.</param>
/// <param name="Sizes">In how many sizes.</param>
/// <param name="Least">The least change, mm (points for the shank); negative: smaller than now.</param>
/// <param name="Most">The greatest change.</param>
public sealed record LabelPartChange(FormPart Part, int Sizes, double Least, double Most);
