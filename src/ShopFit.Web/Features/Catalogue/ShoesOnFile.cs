using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Every size that can be had, as it was at one moment. Immutable, and shared by all who ask.</summary>
public sealed class ShoesOnFile
{
    private readonly IReadOnlyList<ShoeDetails> _shoes;
    private readonly Dictionary<string, IReadOnlyList<ShoeOnFile>> _byKind;
    private readonly Dictionary<string, ShoeDetails> _bySku;
    private readonly Dictionary<Guid, ShoeDetails> _bySize;
    private readonly Lazy<CatalogueIndex> _index;

    internal ShoesOnFile(long version, string? fitOverridesJson, FitDefaults numbers, IReadOnlyList<ShoeDetails> shoes)
        : this(version, fitOverridesJson, numbers, shoes, new Lazy<CatalogueIndex>(() => new CatalogueIndex(shoes)))
    {
    }

    private ShoesOnFile(long version, string? fitOverridesJson, FitDefaults numbers, IReadOnlyList<ShoeDetails> shoes, Lazy<CatalogueIndex> index)
    {
        Version = version;
        FitOverridesJson = fitOverridesJson;
        Numbers = numbers;
        _bySku = shoes.ToDictionary(shoe => shoe.Sku, StringComparer.Ordinal);
        _bySize = shoes.ToDictionary(shoe => shoe.SizeId);
        _index = index;
        _shoes = shoes;

        // A model that is made no longer can be fitted while a pair of it stands here.
        _byKind = shoes.Where(shoe => !shoe.Discontinued || shoe.OnShelf > 0)
            .GroupBy(shoe => shoe.Kind, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => (IReadOnlyList<ShoeOnFile>)[.. group.Select(shoe => shoe.OnFile)], StringComparer.Ordinal);
    }

    /// <summary>The fit numbers by which their forms were worked out.</summary>
    public FitDefaults Numbers { get; }

    internal long Version { get; }

    internal string? FitOverridesJson { get; }

    /// <summary>All sizes of a kind that can be had, by code.</summary>
    public IReadOnlyList<ShoeOnFile> OfKind(string kind) => _byKind.GetValueOrDefault(kind, []);

    /// <summary>The same with pairs that were tried on, since one of them may have left the catalogue meanwhile.</summary>
    public IReadOnlyList<ShoeOnFile> OfKind(string kind, IEnumerable<string> triedSkus)
    {
        var shoes = OfKind(kind);
        var tried = triedSkus.Select(Find).OfType<ShoeDetails>()
            .Where(shoe => shoe.Kind == kind && shoe.Discontinued && shoe.OnShelf == 0)
            .DistinctBy(shoe => shoe.Sku)
            .Select(shoe => shoe.OnFile)
            .ToList();
        return tried.Count == 0 ? shoes : [.. shoes, .. tried];
    }

    /// <summary>The size with that code, whether it can still be had or not; null where there is none.</summary>
    public ShoeDetails? Find(string sku) => _bySku.GetValueOrDefault(sku);

    /// <summary>The size with that key; null where there is none.</summary>
    public ShoeDetails? Find(Guid sizeId) => _bySize.GetValueOrDefault(sizeId);

    /// <summary>All sizes of a model, whether they can still be had or not, in the order of the catalogue.</summary>
    internal IReadOnlyList<ShoeDetails> OfModel(Guid modelId) => [.. _index.Value.OfModel(modelId).Select(size => _bySize[size])];

    /// <summary>The sizes that match a search, in the order of the catalogue.</summary>
    internal IEnumerable<ShoeDetails> Search(CatalogueSearch search) => _index.Value.Find(search).Select(size => _bySize[size]);

    /// <summary>The same catalogue when other pairs stand there.</summary>
    internal ShoesOnFile With(long version, ILookup<Guid, PairsAtPlace> places) =>
        new(version, FitOverridesJson, Numbers, [.. _shoes.Select(shoe => shoe.StandingAt([.. places[shoe.SizeId]]))], _index);
}
