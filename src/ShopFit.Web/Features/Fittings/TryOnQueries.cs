using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.TryOns;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.Features.Fittings;

/// <summary>The pairs in hand at a fitting, and the pair behind a code. Reads only.</summary>
public sealed class TryOnQueries(ShopContexts contexts, CatalogueQueries catalogue)
{
    // Digits under a barcode, with and without the zeros that one length has before another (GS1 General Specifications).
    private static readonly int[] GtinLengths = [8, 12, 13, 14];

    /// <summary>Tried pairs in the order in which they were put on, then those that wait.</summary>
    public async Task<IReadOnlyList<PairInHand>> InHandAsync(SeenFitting fitting, CancellationToken cancellationToken)
    {
        var shoes = await catalogue.ShoesOnFileAsync(cancellationToken);
        return
        [
            .. fitting.Tries.TryOns.Select(tryOn => tryOn.SizeId).Concat(fitting.Tries.Waiting)
                .Select(sizeId => (Shoe: shoes.Find(sizeId), Seen: fitting.Tries.Of(sizeId)))
                .Where(pair => pair.Shoe is not null)
                .Select(pair => new PairInHand(pair.Shoe!, pair.Seen)),
        ];
    }

    /// <summary>The checks that are made of a kind of footwear here.</summary>
    public async Task<IReadOnlyList<Check>> ChecksAsync(string kind, CancellationToken cancellationToken) =>
        FittingChecks.For(kind, (await catalogue.ShoesOnFileAsync(cancellationToken)).Numbers);

    /// <summary>The pair of a kind that has a code: the shop's own, large and small letters alike, or the digits under the barcode.</summary>
    public async Task<PairByCode> FindAsync(string kind, string typed, CancellationToken cancellationToken)
    {
        var code = typed.Trim();
        var shoes = await catalogue.ShoesOnFileAsync(cancellationToken);
        await using var db = await contexts.OpenAsync(cancellationToken);
        var alike = code.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("%", "\\%", StringComparison.Ordinal).Replace("_", "\\_", StringComparison.Ordinal);
        var found = await db.Items.AsNoTracking().Where(row => row.Code == code || EF.Functions.Like(row.Code, alike, "\\")).ToListAsync(cancellationToken);
        if (found.Count is 0 && Gtin.HasALength(code))
        {
            if (!Gtin.TryRead(code, out _))
            {
                return new PairByCode.Misread();
            }

            var digits = code.TrimStart('0');
            var written = GtinLengths.Where(length => length >= digits.Length).Select(length => digits.PadLeft(length, '0')).ToList();
            found = await db.Items.AsNoTracking().Where(row => row.Gtin != null && written.Contains(row.Gtin)).ToListAsync(cancellationToken);
        }

        // A code as it was typed comes before one that only sounds alike; a pair of this kind before anything else.
        var inOrder = found.OrderByDescending(row => row.Code == code).ThenBy(row => row.Code, StringComparer.Ordinal).ToList();
        return inOrder.Select(row => shoes.Find(row.Id)).FirstOrDefault(shoe => shoe?.Kind == kind) is { } pair ? new PairByCode.Found(pair)
            : inOrder is [var other, ..] ? new PairByCode.Other(other.Name)
            : new PairByCode.Unknown();
    }
}

/// <summary>A pair that was fetched or tried on.</summary>
/// <param name="Shoe">Which pair.</param>
/// <param name="Seen">What was seen of it; null while it waits.</param>
public sealed record PairInHand(ShoeDetails Shoe, SeenTryOn? Seen)
{
    /// <summary>Model and size, as a fitter calls it.</summary>
    public string Name => $"{Shoe.Model} {Shoe.LabelWithoutShank}";
}
