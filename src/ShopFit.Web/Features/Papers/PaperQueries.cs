using System.Globalization;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ShopFit.Sheets.TakeHome;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Papers;

/// <summary>Papers drawn again from the facts that were kept.</summary>
public sealed class PaperQueries(ShopContexts contexts)
{
    /// <summary>A take-home sheet as PDF; null where the shop of whoever asks has none under that key.</summary>
    public async Task<byte[]?> DrawAsync(Guid paperId, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var facts = await db.Papers.Where(paper => paper.Id == paperId && paper.Kind == PaperKinds.TakeHomeSheet)
            .Select(paper => paper.FactsJson).SingleOrDefaultAsync(cancellationToken);
        if (facts is null)
        {
            return null;
        }

        var sheet = JsonSerializer.Deserialize<TakeHomeSheet>(facts)!;
        return TakeHomeSheetPdf.Draw(sheet, CultureInfo.GetCultureInfo(sheet.Language));
    }
}
