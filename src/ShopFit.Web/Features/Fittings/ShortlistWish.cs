using System.Globalization;
using ShopFit.Fitting.Scoring;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.Studios;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What the list is narrowed to by what the teacher asks for.</summary>
public enum TeachersWish
{
    /// <summary>Not at all.</summary>
    Any,

    /// <summary>Only models that she asks for.</summary>
    AskedOnly,

    /// <summary>No model that she does not want.</summary>
    WithoutUnwanted,
}

/// <summary>One of the ways to narrow a shortlist.</summary>
public enum ShortlistFilter
{
    Maker,
    Model,
    Price,
    Teacher,
    Shelf,
}

/// <summary>Which pairs a fitter wants to see.</summary>
public sealed record ShortlistWish
{
    private const string All = "all";
    private const string Asked = "asked";
    private const string NoUnwanted = "not-unwanted";

    /// <summary>Only what stands on the shelf, or all that can be had.</summary>
    public ShortlistFrom From { get; init; } = ShortlistFrom.Shelf;

    /// <summary>Name of the only maker; null: any.</summary>
    public string? Maker { get; init; }

    /// <summary>The only model; null: any.</summary>
    public Guid? ModelId { get; init; }

    /// <summary>Highest price, minor units; null: any. What has no price passes.</summary>
    public long? PriceUpToMinor { get; init; }

    /// <summary>What the teacher asks for.</summary>
    public TeachersWish Teacher { get; init; }

    /// <summary>Whether anything is left out beside what does not stand on the shelf.</summary>
    public bool IsNarrowed => Narrowing.Any();

    /// <summary>The ways in which it is narrowed, beside the shelf.</summary>
    public IEnumerable<ShortlistFilter> Narrowing
    {
        get
        {
            (ShortlistFilter Filter, bool On)[] filters =
            [
                (ShortlistFilter.Maker, Maker is not null), (ShortlistFilter.Model, ModelId is not null),
                (ShortlistFilter.Price, PriceUpToMinor is not null), (ShortlistFilter.Teacher, Teacher is not TeachersWish.Any),
            ];
            return filters.Where(filter => filter.On).Select(filter => filter.Filter);
        }
    }

    /// <summary>Reads it from an address. What cannot be read is as if it were not there: an address is no place for a refusal.</summary>
    public static ShortlistWish Of(string? from, string? maker, string? model, string? upTo, string? teacher) => new()
    {
        From = from is All ? ShortlistFrom.Catalogue : ShortlistFrom.Shelf,
        Maker = string.IsNullOrWhiteSpace(maker) ? null : maker,
        ModelId = Guid.TryParse(model, out var id) ? id : null,
        PriceUpToMinor = long.TryParse(upTo, NumberStyles.None, CultureInfo.InvariantCulture, out var minor) ? minor : null,
        Teacher = teacher switch
        {
            Asked => TeachersWish.AskedOnly,
            NoUnwanted => TeachersWish.WithoutUnwanted,
            _ => TeachersWish.Any,
        },
    };

    /// <summary>The same as parts of an address; null where nothing is to stand there.</summary>
    public IReadOnlyDictionary<string, object?> InAddress() => new Dictionary<string, object?>(StringComparer.Ordinal)
    {
        ["from"] = From is ShortlistFrom.Catalogue ? All : null,
        ["maker"] = Maker,
        ["model"] = ModelId?.ToString(),
        ["upto"] = PriceUpToMinor?.ToString(CultureInfo.InvariantCulture),
        ["teacher"] = Teacher switch
        {
            TeachersWish.AskedOnly => Asked,
            TeachersWish.WithoutUnwanted => NoUnwanted,
            _ => null,
        },
    };

    /// <summary>Without one of the ways in which it is narrowed.</summary>
    public ShortlistWish Without(ShortlistFilter filter) => filter switch
    {
        ShortlistFilter.Maker => this with { Maker = null },
        ShortlistFilter.Model => this with { ModelId = null },
        ShortlistFilter.Price => this with { PriceUpToMinor = null },
        ShortlistFilter.Teacher => this with { Teacher = TeachersWish.Any },
        _ => this with { From = ShortlistFrom.Catalogue },
    };

    /// <summary>The same of all pairs, on the shelf or all.</summary>
    public ShortlistWish Cleared() => new() { From = From };

    /// <summary>Whether a pair is wanted, wherever it stands.</summary>
    public bool Allows(ShoeDetails shoe, TeacherAsks asks) =>
        (Maker is null || shoe.Maker == Maker)
        && (ModelId is null || shoe.ModelId == ModelId)
        && (PriceUpToMinor is null || shoe.PriceMinor is null || shoe.PriceMinor <= PriceUpToMinor)
        && Teacher switch
        {
            TeachersWish.AskedOnly => asks.AskedModelIds.Contains(shoe.ModelId),
            TeachersWish.WithoutUnwanted => !asks.UnwantedModelIds.Contains(shoe.ModelId),
            _ => true,
        };

    /// <summary>Whether a pair is wanted and stands where it is looked for.</summary>
    public bool Finds(ShoeDetails shoe, TeacherAsks asks) => (From is ShortlistFrom.Catalogue || shoe.OnShelf > 0) && Allows(shoe, asks);
}
