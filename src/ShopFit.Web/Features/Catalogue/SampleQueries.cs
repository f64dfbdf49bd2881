using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>What measuring a sample of a model would change. Reads only.</summary>
public sealed class SampleQueries(ShopContexts contexts, ShoesInMemory shoes, TimeProvider clock)
{
    /// <summary>The model whose sample is measured, its sizes, and the shop's day; null where there is no such model.</summary>
    public async Task<SampleStart?> StartAsync(Guid modelId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var sizes = (await shoes.SeeAsync(db, cancellationToken)).OfModel(modelId);
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        return sizes.Count == 0
            ? null
            : new SampleStart(sizes[0].Maker, sizes[0].Model, ShopTime.Of(shop).Day(clock.GetUtcNow()), [.. sizes.Select(size => new SampleSize(size.SizeId, size.Label, size.OnFile.Form))]);
    }

    /// <summary>What the sample would make of every size of its model.</summary>
    /// <param name="sizeId">The size that was measured.</param>
    /// <param name="parts">What was measured, in the order of <see cref="FormPart"/>; null where it was not.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<GradedPreview> PreviewAsync(Guid sizeId, IReadOnlyList<double?> parts, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var onFile = await shoes.SeeAsync(db, cancellationToken);
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        var numbers = FitNumbers.Over(shop.FitOverridesJson).Numbers;
        if (onFile.Find(sizeId) is not { } measured || parts.All(part => part is null))
        {
            return new GradedPreview([], []);
        }

        var sizes = await db.ShoeSizes.AsNoTracking().Where(size => size.ModelId == measured.ModelId).ToDictionaryAsync(size => size.Id, cancellationToken);
        var now = await FormsOnFile.ReadAsync(db, numbers, cancellationToken);
        var then = now.With(new SampleOnFile(parts, sizes[sizeId]));
        var rows = onFile.OfModel(measured.ModelId).Select(shoe => new GradedSize(
            shoe.LabelWithoutShank, shoe.SizeId == sizeId, now.Of(shoe.MakerId, sizes[shoe.SizeId]).Form, then.Of(shoe.MakerId, sizes[shoe.SizeId]).Form));

        // Shanks of one size and width are alike inside but for the shank: one row says it for all of them.
        return new GradedPreview(
            [.. rows.GroupBy(row => row.Label, StringComparer.Ordinal).Select(group => group.FirstOrDefault(row => row.Measured) ?? group.First())],
            MeasureSample.Doubts(parts, now.LabelOf(measured.MakerId, sizes[sizeId]), numbers));
    }
}

/// <summary>What the form for a sample begins with.</summary>
/// <param name="Maker">The maker.</param>
/// <param name="Model">The model.</param>
/// <param name="Today">The shop's day.</param>
/// <param name="Sizes">Its sizes, the smallest first.</param>
public sealed record SampleStart(string Maker, string Model, DateOnly Today, IReadOnlyList<SampleSize> Sizes);

/// <summary>A size that could be the sample.</summary>
/// <param name="SizeId">Its key.</param>
/// <param name="Label">Its whole label.</param>
/// <param name="Form">Its inside as it is on file now.</param>
public sealed record SampleSize(Guid SizeId, string Label, ShoeForm Form);

/// <summary>What a sample would change.</summary>
/// <param name="Sizes">Each size of the model without its shank, now and then; empty where nothing was measured.</param>
/// <param name="Doubts">Parts that lie far from what the label says.</param>
public sealed record GradedPreview(IReadOnlyList<GradedSize> Sizes, IReadOnlyList<SampleDoubt> Doubts);

/// <summary>A size now and after the grading.</summary>
/// <param name="Label">Its label without the shank.</param>
/// <param name="Measured">Whether it is the one that was measured.</param>
/// <param name="Now">Its inside as it is on file.</param>
/// <param name="Then">Its inside as the sample would make it.</param>
public sealed record GradedSize(string Label, bool Measured, ShoeForm Now, ShoeForm Then);
