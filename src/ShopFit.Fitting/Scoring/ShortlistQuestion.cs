using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Learning;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Fitting.Scoring;

/// <summary>One size of one model as the shop knows it.</summary>
/// <param name="Sku">The shop's own code of it; unique.</param>
/// <param name="Maker">Key of the maker, shared by its models.</param>
/// <param name="Model">Key of the model, shared by its sizes.</param>
/// <param name="Form">Its inside.</param>
/// <param name="OnShelf">Whether a pair stands where it can be sold now.</param>
public sealed record ShoeOnFile(string Sku, string Maker, string Model, ShoeForm Form, bool OnShelf);

/// <summary>Which pairs are wanted.</summary>
public enum ShortlistFrom
{
    /// <summary>Only what stands on the shelf.</summary>
    Shelf,

    /// <summary>All that can be had.</summary>
    Catalogue,
}

/// <summary>A question put to the belief: which pairs are likely to fit both feet?</summary>
public sealed record ShortlistQuestion
{
    /// <summary>What is believed of the feet.</summary>
    public required FeetBelief Feet { get; init; }

    /// <summary>Every size of this kind on file.</summary>
    public required IReadOnlyList<ShoeOnFile> Shoes { get; init; }

    /// <summary>The kind of footwear, such as <c>pointe</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Which of them may be answered.</summary>
    public ShortlistFrom From { get; init; } = ShortlistFrom.Shelf;

    /// <summary>Which of the shoes may be answered besides, such as those of one maker; null: all.</summary>
    /// <remarks>Asked before anything is ranked, so that what is left out takes nobody's place. Pairs that were tried on tell of the feet all the same.</remarks>
    public Predicate<ShoeOnFile>? Allows { get; init; }

    /// <summary>How many pairs are wanted, 1 to 100.</summary>
    public int Limit { get; init; } = 10;

    /// <summary>What was tried on already, in order.</summary>
    public IReadOnlyList<TryOn> TryOns { get; init; } = [];

    /// <summary>First pair: answers at try-ons count for less.</summary>
    public bool FirstPair { get; init; }

    /// <summary>What earlier fittings have told of the shop's makers and models.</summary>
    public LearntOffsets Learnt { get; init; } = LearntOffsets.None;

    /// <summary>The numbers of the shop.</summary>
    public FitDefaults Defaults { get; init; } = FitDefaults.Standard;
}
