using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>One size with all that its page shows. Reads only.</summary>
public sealed class SizeQueries(ShopContexts contexts, ShoesInMemory shoes, TimeProvider clock)
{
    private const int DaysLooked = 365;

    /// <summary>The size; null where there is none.</summary>
    public async Task<SeenSize?> SeeAsync(Guid sizeId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var onFile = await shoes.SeeAsync(db, cancellationToken);
        if (onFile.Find(sizeId) is not { } shoe)
        {
            return null;
        }

        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        var numbers = FitNumbers.Over(shop.FitOverridesJson).Numbers;
        var size = await db.ShoeSizes.AsNoTracking().SingleAsync(row => row.Id == sizeId, cancellationToken);
        var form = (await FormsOnFile.ReadAsync(db, numbers, cancellationToken)).Of(shoe.MakerId, size);
        var ofModel = onFile.OfModel(shoe.ModelId);
        return new SeenSize(
            shoe,
            form.Form,
            [.. Enum.GetValues<FormPart>().Select(part => PartOf(part, form, sizeId, onFile, numbers))],
            [.. (await ModelQueries.StockOfAsync(db, [sizeId], cancellationToken))[sizeId]],
            await CountsAsync(db, sizeId, cancellationToken),
            await ModelQueries.SamplesAsync(db, shoe.ModelId, ofModel, cancellationToken),
            await ModelQueries.PricesAsync(db, [sizeId], cancellationToken),
            shop.Currency,
            ShopTime.Of(shop));
    }

    private static SeenPart PartOf(FormPart part, FormOnFile form, Guid sizeId, ShoesOnFile onFile, FitDefaults numbers)
    {
        var source = form.Form.SourceOf(part);
        var sampled = form.SampledSizes[(int)part];
        var origin = (source, sampled) switch
        {
            (FormSource.Measured, { } own) when own == sizeId => PartOrigin.MeasuredHere,
            (FormSource.Measured, not null) => PartOrigin.Graded,
            (FormSource.Measured, null) => PartOrigin.MeasuredInCatalogue,
            (FormSource.Maker, _) => PartOrigin.Maker,
            _ => PartOrigin.Label,
        };
        return new SeenPart(
            part,
            form.Form[part],
            origin,
            sampled,
            sampled is { } id ? onFile.Find(id)?.Label : null,
            numbers.FormSds.Offset(part, source));
    }

    // How many, never who.
    private async Task<FittedCounts> CountsAsync(ShopDbContext db, Guid sizeId, CancellationToken cancellationToken)
    {
        var since = clock.GetUtcNow().AddDays(-DaysLooked);
        var tried = await db.FittingTryOns.Where(row => row.SizeId == sizeId && row.WithdrawnAt == null && row.TriedAt >= since)
            .GroupBy(row => row.Fits).Select(group => new { group.Key, Count = group.Count() }).ToListAsync(cancellationToken);
        var sold = await db.FittingDecisions.CountAsync(
            row => row.SizeId == sizeId && row.WithdrawnAt == null && row.Kind == DecisionKinds.Sold && row.DecidedAt >= since, cancellationToken);
        return new FittedCounts(
            tried.Sum(group => group.Count),
            tried.Where(group => group.Key == true).Sum(group => group.Count),
            tried.Where(group => group.Key == false).Sum(group => group.Count),
            sold);
    }
}

/// <summary>A size as its page shows it.</summary>
/// <param name="Shoe">What it is.</param>
/// <param name="Form">Its inside.</param>
/// <param name="Parts">The eight numbers of its inside, each with where it comes from.</param>
/// <param name="Places">Where it stands.</param>
/// <param name="Lately">How often it was tried and sold in the last year.</param>
/// <param name="Samples">Samples of its model, the latest first: the history of its form.</param>
/// <param name="Prices">Prices that were set by hand, the latest first.</param>
/// <param name="Currency">The currency of its price.</param>
/// <param name="Time">The shop's own time.</param>
public sealed record SeenSize(
    ShoeDetails Shoe,
    ShoeForm Form,
    IReadOnlyList<SeenPart> Parts,
    IReadOnlyList<SeenPlace> Places,
    FittedCounts Lately,
    IReadOnlyList<SeenSample> Samples,
    IReadOnlyList<SeenPriceChange> Prices,
    string Currency,
    ShopTime Time);

/// <summary>One number of a form.</summary>
/// <param name="Part">Which.</param>
/// <param name="Value">mm (points for the shank).</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="SampleSizeId">The size of the sample that it was graded from, where it was.</param>
/// <param name="SampleLabel">That size's label.</param>
/// <param name="OffsetSd">How far the model may be from it: SD of its offset, mm (points for the shank).</param>
public sealed record SeenPart(FormPart Part, double Value, PartOrigin Origin, Guid? SampleSizeId, string? SampleLabel, double OffsetSd);

/// <summary>Where a number of a form comes from.</summary>
public enum PartOrigin
{
    /// <summary>The shop measured this size.</summary>
    MeasuredHere,

    /// <summary>The shop measured another size of the model and graded it.</summary>
    Graded,

    /// <summary>The catalogue file says that it was measured.</summary>
    MeasuredInCatalogue,

    /// <summary>The maker's data.</summary>
    Maker,

    /// <summary>The label alone.</summary>
    Label,
}

/// <summary>What became of a size at fittings.</summary>
/// <param name="Tried">Try-ons.</param>
/// <param name="Fitted">Those at which it fitted.</param>
/// <param name="DidNotFit">Those at which it did not.</param>
/// <param name="Sold">Sold at fittings.</param>
public sealed record FittedCounts(int Tried, int Fitted, int DidNotFit, int Sold);
