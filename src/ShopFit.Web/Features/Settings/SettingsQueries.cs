using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.Features.Settings;

/// <summary>The settings of the shop, and who changed them. Reads only.</summary>
public sealed class SettingsQueries(ShopContexts contexts)
{
    private static readonly IReadOnlyList<string> UsualCategories =
        [ItemCategories.Shoes, ItemCategories.Pads, ItemCategories.Ribbon, ItemCategories.Elastic, ItemCategories.Thread, ItemCategories.Service];

    /// <summary>The form of the shop.</summary>
    public async Task<SeenShop> ShopAsync(CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        var rates = await db.TaxRates.AsNoTracking().ToListAsync(cancellationToken);
        var onFile = await db.Items.Select(item => item.Category).Distinct().ToListAsync(cancellationToken);
        var last = await SeeAsync(db, db.SettingChanges.Where(change => change.Path.StartsWith(SettingPaths.Shop)), skip: 0, take: 1, cancellationToken);
        return new SeenShop(
            ShopSettings.Of(shop, rates),
            shop.Version,
            await db.Sales.AnyAsync(cancellationToken),
            [.. UsualCategories, .. onFile.Concat(rates.Select(rate => rate.Category)).Distinct(StringComparer.Ordinal).Except(UsualCategories, StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            last.SingleOrDefault(),
            ShopTime.Of(shop));
    }

    /// <summary>The shop's own fit numbers, what is wrong with them, and how each came about.</summary>
    public async Task<SeenFitNumbers> FitAsync(CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        var own = OwnFitNumbers.Read(shop.FitOverridesJson).Values;
        var paths = own.Keys.ToList();
        var changes = await SeeAsync(db, db.SettingChanges.Where(change => paths.Contains(change.Path)), skip: 0, take: int.MaxValue, cancellationToken);
        var (numbers, problems) = FitNumbers.Over(shop.FitOverridesJson);
        return new SeenFitNumbers(
            own,
            numbers,
            problems,
            changes.GroupBy(change => change.Path, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal),
            ShopTime.Of(shop));
    }

    /// <summary>Who changed the fit numbers of one table, the latest first.</summary>
    public async Task<IReadOnlyList<SeenChange>> ChangesOfAsync(string group, int most, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        return await SeeAsync(db, db.SettingChanges.Where(change => change.Path.StartsWith(group + ".")), skip: 0, most, cancellationToken);
    }

    /// <summary>One page of everything that was changed, the latest first.</summary>
    public async Task<SeenChanges> ChangesAsync(int page, int pageRows, CancellationToken cancellationToken)
    {
        await using var db = await contexts.OpenAsync(cancellationToken);
        var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == db.ShopId, cancellationToken);
        return new SeenChanges(
            await db.SettingChanges.CountAsync(cancellationToken),
            await SeeAsync(db, db.SettingChanges, page * pageRows, pageRows, cancellationToken),
            ShopTime.Of(shop));
    }

    private static async Task<IReadOnlyList<SeenChange>> SeeAsync(ShopDbContext db, IQueryable<SettingChange> changes, int skip, int take, CancellationToken cancellationToken)
    {
        var rows = await changes.AsNoTracking().OrderByDescending(change => change.At).ThenByDescending(change => change.Id).Skip(skip).Take(take).ToListAsync(cancellationToken);
        var people = rows.SelectMany(row => new[] { row.PersonId, SubjectOf(row.Path) }).Distinct().ToList();
        var names = await db.Users.Where(person => person.ShopId == db.ShopId && people.Contains(person.Id))
            .ToDictionaryAsync(person => person.Id, person => person.DisplayName, cancellationToken);
        return [.. rows.Select(row => new SeenChange(
            row.Id, row.At, names.GetValueOrDefault(row.PersonId, ""), row.Path, names.GetValueOrDefault(SubjectOf(row.Path), ""), row.Before, row.After, row.Reason))];
    }

    // Whom "people.{id}.name" is about.
    private static Guid SubjectOf(string path) =>
        path.StartsWith(SettingPaths.People, StringComparison.Ordinal) && Guid.TryParse(path.Split('.')[1], out var id) ? id : Guid.Empty;
}

/// <summary>The settings of the shop as they stand.</summary>
/// <param name="Settings">All of them.</param>
/// <param name="Version">To be given back when they are saved.</param>
/// <param name="HasSold">Whether something was sold, so that the currency stays.</param>
/// <param name="Categories">Categories of goods, the usual ones first.</param>
/// <param name="LastChange">Who changed something last; null while nobody did.</param>
/// <param name="Time">The shop's clock.</param>
public sealed record SeenShop(ShopSettings Settings, long Version, bool HasSold, IReadOnlyList<string> Categories, SeenChange? LastChange, ShopTime Time);

/// <summary>The fit numbers as they stand.</summary>
/// <param name="Own">The shop's own values by path.</param>
/// <param name="Numbers">The numbers in force.</param>
/// <param name="Problems">Own values that are not in force, and why.</param>
/// <param name="LastChanges">The last change of each own value, by path.</param>
/// <param name="Time">The shop's clock.</param>
public sealed record SeenFitNumbers(
    IReadOnlyDictionary<string, double> Own,
    FitDefaults Numbers,
    IReadOnlyList<FitProblem> Problems,
    IReadOnlyDictionary<string, SeenChange> LastChanges,
    ShopTime Time);

/// <summary>One change of a setting.</summary>
/// <param name="Id">Key of the row.</param>
/// <param name="At">When.</param>
/// <param name="By">Who; empty for the command line.</param>
/// <param name="Path">Which setting.</param>
/// <param name="Subject">The name of the person it is about; empty where it is about none.</param>
/// <param name="Before">What it was; null: its default, or nothing.</param>
/// <param name="After">What it became; null: its default, or nothing.</param>
/// <param name="Reason">Why.</param>
public sealed record SeenChange(Guid Id, DateTimeOffset At, string By, string Path, string Subject, string? Before, string? After, string Reason);

/// <summary>One page of changes.</summary>
/// <param name="Count">How many there are in all.</param>
/// <param name="Rows">Those of the page, the latest first.</param>
/// <param name="Time">The shop's clock.</param>
public sealed record SeenChanges(int Count, IReadOnlyList<SeenChange> Rows, ShopTime Time);
