using System.Globalization;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Measures;

namespace ShopFit.Web.Features.Settings;

/// <summary>The form of the shop as it is typed: a text for every field. What was typed stays, whatever somebody else saves meanwhile.</summary>
public sealed class ShopForm
{
    public const string Name = "name";
    public const string Address = "address";
    public const string Contact = "contact";
    public const string TimeZone = "time-zone";
    public const string Currency = "currency";
    public const string Paper = "paper";
    public const string Units = "units";
    public const string SizeSystem = "size-system";
    public const string PricesIncludeTax = "prices-include-tax";
    public const string ReturnDays = "return-days";
    public const string Yes = "yes";
    public const string No = "no";

    private readonly Dictionary<string, string> _typed = new(StringComparer.Ordinal);
    private readonly HashSet<string> _contested = new(StringComparer.Ordinal);
    private Dictionary<string, string> _saved = new(StringComparer.Ordinal);

    /// <summary>The text in a field.</summary>
    public string this[string field]
    {
        get => _typed.GetValueOrDefault(field, "");
        set => _typed[field] = value;
    }

    /// <summary>The field of a kind of footwear.</summary>
    public static string Kind(string id) => $"kind.{id}";

    /// <summary>The field of the tax on a category.</summary>
    public static string Tax(string category) => $"tax.{category}";

    /// <summary>Fills the form with what is saved, and keeps what was typed since the last time.</summary>
    public void Fill(SeenShop seen)
    {
        var now = TextsOf(seen);
        _contested.Clear();
        foreach (var (field, text) in now)
        {
            if (!_typed.TryGetValue(field, out var typed) || typed == _saved.GetValueOrDefault(field, ""))
            {
                _typed[field] = text;
            }
            else if (text != _saved.GetValueOrDefault(field, "") && text != typed)
            {
                _contested.Add(field);
            }
        }

        _saved = now;
    }

    /// <summary>What somebody else saved in a field in which something else is typed; null where nobody did.</summary>
    public string? Theirs(string field) => _contested.Contains(field) ? _saved[field] : null;

    /// <summary>The settings as typed; null where a number cannot be read.</summary>
    public ShopSettings? Read(IReadOnlyList<string> categories, out IReadOnlyList<ShopProblem> unread)
    {
        var problems = new List<ShopProblem>();
        if (!TypedNumber.TryRead(this[ReturnDays], out var days) || days != Math.Floor(days) || Math.Abs(days) > int.MaxValue)
        {
            problems.Add(new ShopProblem(ShopField.ReturnDays, ShopProblemCode.NotAllowed, ""));
        }

        var rates = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var category in categories.Where(category => !string.IsNullOrWhiteSpace(this[Tax(category)])))
        {
            if (TypedNumber.TryRead(this[Tax(category)], out var perCent) && perCent is >= 0 and <= 100 && IsWhole(perCent * 100))
            {
                rates[category] = (int)Math.Round(perCent * 100);
            }
            else
            {
                problems.Add(new ShopProblem(ShopField.Tax, ShopProblemCode.NotAllowed, category));
            }
        }

        unread = problems;
        return problems.Count > 0 ? null : new ShopSettings
        {
            Name = this[Name],
            Address = this[Address],
            Contact = this[Contact],
            TimeZone = this[TimeZone],
            Currency = this[Currency],
            Paper = this[Paper],
            Units = this[Units],
            SizeSystemShown = this[SizeSystem],
            PricesIncludeTax = this[PricesIncludeTax] == Yes,
            ReturnDays = (int)days,
            Kinds = [.. FitDefaults.Standard.Kinds.Select(kind => kind.Id).Where(kind => this[Kind(kind)] == Yes)],
            TaxRates = rates,
        };
    }

    // 19.99 · 100 is not quite 1999 in a double.
    private static bool IsWhole(double value) => Math.Abs(value - Math.Round(value)) < 1e-6;

    private static Dictionary<string, string> TextsOf(SeenShop seen)
    {
        var settings = seen.Settings;
        var texts = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            [Name] = settings.Name,
            [Address] = settings.Address,
            [Contact] = settings.Contact,
            [TimeZone] = settings.TimeZone,
            [Currency] = settings.Currency,
            [Paper] = settings.Paper,
            [Units] = settings.Units,
            [SizeSystem] = settings.SizeSystemShown,
            [PricesIncludeTax] = settings.PricesIncludeTax ? Yes : No,
            [ReturnDays] = settings.ReturnDays.ToString(CultureInfo.CurrentCulture),
        };
        foreach (var kind in FitDefaults.Standard.Kinds)
        {
            texts[Kind(kind.Id)] = settings.Kinds.Contains(kind.Id, StringComparer.Ordinal) ? Yes : No;
        }

        foreach (var category in seen.Categories)
        {
            texts[Tax(category)] = settings.TaxRates.TryGetValue(category, out var rate) ? (rate / 100m).ToString("0.##", CultureInfo.CurrentCulture) : "";
        }

        return texts;
    }
}
