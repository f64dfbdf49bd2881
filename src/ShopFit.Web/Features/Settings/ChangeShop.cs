using System.Globalization;
using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Sales;

namespace ShopFit.Web.Features.Settings;

/// <summary>What happens when a manager saves the form of the shop: all of it, unless somebody else was quicker.</summary>
public sealed class ChangeShop(ShopWrites writes, TimeProvider clock)
{
    /// <param name="actor">Who saves.</param>
    /// <param name="commandId">Key of the command.</param>
    /// <param name="version">Version of the settings that the form was filled from.</param>
    /// <param name="wanted">What they are to be.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    public Task<ChangeShopOutcome> RunAsync(Actor actor, Guid commandId, long version, ShopSettings wanted, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<ChangeShopOutcome>(
            actor,
            commandId,
            nameof(ChangeShop),
            async (db, ct) =>
            {
                if (ShopSettingsRules.Look(wanted) is { Count: > 0 } problems)
                {
                    return new ChangeShopOutcome.Invalid(problems);
                }

                var shop = await db.Shops.SingleAsync(row => row.Id == actor.ShopId, ct);
                if (shop.Version != version)
                {
                    return new ChangeShopOutcome.ChangedMeanwhile();
                }

                if (await LookAtCurrencyAsync(db, shop, wanted, ct) is { } problem)
                {
                    return new ChangeShopOutcome.Invalid([problem]);
                }

                var rates = await db.TaxRates.ToListAsync(ct);
                var before = ShopSettings.Of(shop, rates);
                shop.Rename(wanted.Name, wanted.Address, wanted.Contact);
                shop.Count(wanted.TimeZone, wanted.Currency, wanted.Paper, wanted.Units, wanted.SizeSystemShown, wanted.PricesIncludeTax, wanted.ReturnDays);
                shop.FitKinds(wanted.Kinds);
                SetRates(db, actor, rates, wanted.TaxRates);

                var after = ShopSettings.Of(shop, []) with { TaxRates = wanted.TaxRates };
                var changes = Differences(before, after).ToList();
                db.SettingChanges.AddRange(changes.Select(change =>
                    SettingChange.Of(Guid.CreateVersion7(), actor, clock.GetUtcNow(), $"{SettingPaths.Shop}{change.Name}", change.Before, change.After)));
                if (changes.Count > 0)
                {
                    shop.NoteChange();
                }

                return new ChangeShopOutcome.Saved(shop.Version, changes.Count);
            },
            cancellationToken);

    // Sales and prices are kept in the minor units of the currency: another one would make other amounts of them.
    private static async Task<ShopProblem?> LookAtCurrencyAsync(ShopDbContext db, Shop shop, ShopSettings wanted, CancellationToken cancellationToken)
    {
        if (wanted.Currency == shop.Currency)
        {
            return null;
        }

        if (await db.Sales.AnyAsync(cancellationToken))
        {
            return new ShopProblem(ShopField.Currency, ShopProblemCode.SalesExist, shop.Currency);
        }

        return Money.ExponentOf(wanted.Currency) != Money.ExponentOf(shop.Currency) && await db.Items.AnyAsync(item => item.PriceMinor != null, cancellationToken)
            ? new ShopProblem(ShopField.Currency, ShopProblemCode.PricesExist, shop.Currency)
            : null;
    }

    private static void SetRates(ShopDbContext db, Actor actor, List<TaxRate> rates, IReadOnlyDictionary<string, int> wanted)
    {
        db.TaxRates.RemoveRange(rates.Where(rate => !wanted.ContainsKey(rate.Category)));
        foreach (var (category, basisPoints) in wanted)
        {
            if (rates.Find(rate => rate.Category == category) is { } known)
            {
                known.Change(basisPoints);
            }
            else
            {
                db.TaxRates.Add(TaxRate.Of(Guid.CreateVersion7(), actor.ShopId, category, basisPoints));
            }
        }
    }

    private static IEnumerable<(string Name, string? Before, string? After)> Differences(ShopSettings before, ShopSettings after) =>
        TextsOf(before).Join(TextsOf(after), text => text.Name, text => text.Name, (was, became) => (was.Name, (string?)was.Text, (string?)became.Text))
            .Concat(before.TaxRates.Keys.Union(after.TaxRates.Keys, StringComparer.Ordinal).Order(StringComparer.Ordinal)
                .Select(category => ($"tax.{category}", PerCent(before.TaxRates, category), PerCent(after.TaxRates, category))))
            .Where(change => change.Item2 != change.Item3);

    private static (string Name, string Text)[] TextsOf(ShopSettings settings) =>
    [
        ("name", settings.Name),
        ("address", settings.Address),
        ("contact", settings.Contact),
        ("time-zone", settings.TimeZone),
        ("currency", settings.Currency),
        ("paper", settings.Paper),
        ("units", settings.Units),
        ("size-system", settings.SizeSystemShown),
        ("prices-include-tax", settings.PricesIncludeTax ? "yes" : "no"),
        ("return-days", settings.ReturnDays.ToString(CultureInfo.InvariantCulture)),
        ("kinds", string.Join(' ', settings.Kinds)),
    ];

    private static string? PerCent(IReadOnlyDictionary<string, int> rates, string category) =>
        rates.TryGetValue(category, out var basisPoints) ? (basisPoints / 100m).ToString("0.##", CultureInfo.InvariantCulture) : null;
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Saved), "saved")]
[JsonDerivedType(typeof(Invalid), "invalid")]
[JsonDerivedType(typeof(ChangedMeanwhile), "changed-meanwhile")]
public abstract record ChangeShopOutcome
{
    private ChangeShopOutcome()
    {
    }

    /// <param name="Version">Version of the settings now.</param>
    /// <param name="Changes">How many settings are others than before.</param>
    public sealed record Saved(long Version, int Changes) : ChangeShopOutcome;

    public sealed record Invalid(IReadOnlyList<ShopProblem> Problems) : ChangeShopOutcome, IRefusal;

    /// <summary>Somebody else saved after the form was filled.</summary>
    public sealed record ChangedMeanwhile : ChangeShopOutcome, IRefusal;
}
