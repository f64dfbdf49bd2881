using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Papers;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Sales;

/// <summary>Sales as their page shows them. Reads only.</summary>
public sealed class SaleQueries(ShopContexts contexts)
{
    /// <summary>One page of sales, the latest first.</summary>
    public async Task<SalesPageRows> ListAsync(int page, int pageRows, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var count = await db.Sales.CountAsync(cancellationToken);
        var sales = await db.Sales.AsNoTracking().OrderByDescending(sale => sale.SoldAt).ThenByDescending(sale => sale.Id)
            .Skip(page * pageRows).Take(pageRows).ToListAsync(cancellationToken);
        var ids = sales.Select(sale => sale.Id).ToList();
        var dancerIds = sales.Select(sale => sale.DancerId).OfType<Guid>().Distinct().ToList();
        var personIds = sales.Select(sale => sale.PersonId).Distinct().ToList();
        var lines = (await db.SaleLines.AsNoTracking().Where(line => ids.Contains(line.SaleId)).OrderBy(line => line.Id).ToListAsync(cancellationToken)).ToLookup(line => line.SaleId);
        var papers = await db.Papers.Where(paper => paper.SaleId != null && ids.Contains(paper.SaleId.Value) && paper.Kind == PaperKinds.TakeHomeSheet)
            .Select(paper => new { SaleId = paper.SaleId!.Value, paper.Id }).ToListAsync(cancellationToken);
        var dancers = await db.Dancers.Where(dancer => dancerIds.Contains(dancer.Id)).ToDictionaryAsync(dancer => dancer.Id, dancer => dancer.Name, cancellationToken);
        var people = await db.Users.Where(person => person.ShopId == db.ShopId && personIds.Contains(person.Id)).ToDictionaryAsync(person => person.Id, person => person.DisplayName, cancellationToken);
        var time = ShopTime.Of(await db.Shops.AsNoTracking().SingleAsync(shop => shop.Id == db.ShopId, cancellationToken));
        return new SalesPageRows(count, time, [.. sales.Select(sale => new SaleRow(
            sale.Id,
            sale.SoldAt,
            sale.DancerId is { } dancerId ? dancers.GetValueOrDefault(dancerId, "") : "",
            [.. lines[sale.Id].Select(line => new SoldThing(line.Quantity, line.Text))],
            new Money(sale.TotalMinor, sale.Currency),
            new Money(sale.TaxMinor, sale.Currency),
            people.GetValueOrDefault(sale.PersonId, ""),
            papers.FirstOrDefault(paper => paper.SaleId == sale.Id)?.Id,
            sale.VoidedAt is not null))]);
    }
}

/// <summary>One page of sales.</summary>
public sealed record SalesPageRows(int Count, ShopTime Time, IReadOnlyList<SaleRow> Rows);

/// <summary>One sale as the list shows it.</summary>
public sealed record SaleRow(Guid Id, DateTimeOffset SoldAt, string Dancer, IReadOnlyList<SoldThing> Things, Money Total, Money Tax, string Person, Guid? PaperId, bool Voided);

/// <summary>So many of something.</summary>
public sealed record SoldThing(int Quantity, string Text);
